/** A real HTTP server with the live part on any free port, people of every role on one board, and clients. */
import { randomUUID } from 'node:crypto';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import * as decoding from 'lib0/decoding';
import * as encoding from 'lib0/encoding';
import { WebSocket } from 'ws';
import * as sync from 'y-protocols/sync';
import { WebsocketProvider } from 'y-websocket';
import * as Y from 'yjs';
import { startSession } from '#server/access/session.ts';
import type { MemberRole } from '#server/core/contract/roles.ts';
import { declareRoots } from '#server/core/live/document.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import {
  MESSAGE_ANNOUNCE,
  MESSAGE_AWARENESS,
  MESSAGE_EPOCH,
  MESSAGE_REFUSED,
  MESSAGE_SYNC,
  MESSAGE_TIME,
  Refusal,
} from '#server/core/live/wire.ts';
import { createLive, type Live } from '#server/live/live.ts';
import { addBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { putMember } from '#server/store/members.ts';
import { addPerson } from '#server/store/people.ts';

// Every client listens for the end of the process, and tests open many of them.
process.setMaxListeners(0);

export interface Somebody {
  id: string;
  name: string;
  cookie: string;
}

export interface LiveServer {
  live: Live;
  port: number;
  /** Rooms whose changes were reported, as "boardId/room". */
  changed: string[];
  /** What the live part reported as trouble. */
  trouble: unknown[];
  stop(): Promise<void>;
}

/** Starts the live part on the store that is open. @param port 0 = any free one. */
export async function startLive(port = 0): Promise<LiveServer> {
  const changed: string[] = [];
  const trouble: unknown[] = [];
  const live = createLive({
    onRoomChanged: (boardId, room) => changed.push(`${boardId}/${room}`),
    onTrouble: (thrown) => trouble.push(thrown),
  });
  const server = createServer((_request, response) => response.end());
  server.on('upgrade', (request, socket, head) => live.handleUpgrade(request, socket, head));
  await new Promise<void>((listening) => server.listen(port, '127.0.0.1', listening));
  return {
    live,
    changed,
    trouble,
    port: (server.address() as AddressInfo).port, // listening on TCP, so it is one
    async stop() {
      await live.flush();
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}

/** Somebody with a session. */
export async function somebody(name: string, isHost = false): Promise<Somebody> {
  const person = await addPerson(name, isHost);
  const cookie = (await startSession(person.id, false)).split(';')[0] ?? '';
  return { id: person.id, name, cookie };
}

/** One person of every role on one board with one painting by `painter`. */
export async function aBoardWithPeople() {
  const owner = await somebody('Odile');
  const host = await somebody('Hedda', true);
  const boardId = await addBoard(owner.id, 'Reeds at the weir');
  const invited = async (name: string, role: MemberRole) => {
    const person = await somebody(name);
    await putMember(boardId, person.id, role, null);
    return person;
  };
  const teacher = await invited('Tove', 'teacher');
  const painter = await invited('Pelle', 'painter');
  const peer = await invited('Petra', 'peer');
  const viewer = await invited('Viggo', 'viewer');
  const stranger = await somebody('Stig');
  const pictureId = await aPainting(boardId, painter.id);
  return { boardId, pictureId, owner, host, teacher, painter, peer, viewer, stranger };
}
export type Cast = Awaited<ReturnType<typeof aBoardWithPeople>>;

/** The row of a painting; its pixels do not matter here. */
export async function aPainting(boardId: string, painterId: string): Promise<string> {
  const { id } = await database().picture.create({
    data: {
      id: randomUUID(),
      boardId,
      kind: 'painting',
      painterId,
      widthPx: 1600,
      heightPx: 1200,
      originalHash: randomUUID().replaceAll('-', '').repeat(2),
      originalType: 'image/jpeg',
    },
  });
  return id;
}

export interface Closing {
  code: number;
  reason: string;
}

export interface Client {
  doc: Y.Doc;
  provider: WebsocketProvider;
  /** Sentences that came before a close. */
  refusals: string[];
  /** How often the server said that the board changed. */
  news: () => number;
  /** Resolves with the first close of the socket by the server. */
  closed: Promise<Closing>;
  synced: Promise<void>;
  leave(): void;
}

/** A browser's own y-websocket client with somebody's cookie. */
export function join(
  port: number,
  who: { cookie: string },
  boardId: string,
  room: RoomName,
  options: { doc?: Y.Doc; params?: Record<string, string> } = {},
): Client {
  const doc = options.doc ?? declareRoots(new Y.Doc(), room);
  const provider = new WebsocketProvider(`ws://127.0.0.1:${port}/live/${boardId}`, room, doc, {
    WebSocketPolyfill: socketWith(who.cookie),
    disableBc: true,
    params: options.params ?? {},
    maxBackoffTime: 200,
  });
  const refusals: string[] = [];
  provider.messageHandlers[MESSAGE_EPOCH] = (_encoder, decoder) => decoding.readVarUint(decoder);
  provider.messageHandlers[MESSAGE_TIME] = (_encoder, decoder) => decoding.readVarUint(decoder);
  let news = 0;
  provider.messageHandlers[MESSAGE_ANNOUNCE] = () => {
    news++;
  };
  provider.messageHandlers[MESSAGE_REFUSED] = (_encoder, decoder) => {
    refusals.push(Refusal.parse(JSON.parse(decoding.readVarString(decoder))).message);
  };
  const closed = new Promise<Closing>((resolve) => {
    provider.on('connection-close', (event) => {
      if (event) resolve({ code: event.code, reason: event.reason });
    });
  });
  const synced = new Promise<void>((resolve) => {
    provider.on('sync', (isSynced: boolean) => isSynced && resolve());
  });
  return { doc, provider, refusals, news: () => news, closed, synced, leave: () => provider.destroy() };
}

/** A socket that sends what it likes, once it has answered that it has nothing. Resolves when it is open. */
export async function rawSocket(
  port: number,
  who: { cookie: string },
  boardId: string,
  room: string,
): Promise<WebSocket> {
  const socket = new WebSocket(`ws://127.0.0.1:${port}/live/${boardId}/${room}`, {
    headers: { cookie: who.cookie },
  });
  socket.on('error', () => {});
  await new Promise<void>((open) => socket.once('open', () => open()));
  socket.send(syncFrame((encoder) => sync.writeSyncStep2(encoder, new Y.Doc())));
  return socket;
}

/** A frame of y-protocols' sync. */
export function syncFrame(write: (encoder: encoding.Encoder) => void): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, MESSAGE_SYNC);
  write(encoder);
  return encoding.toUint8Array(encoder);
}

function socketWith(cookie: string): typeof globalThis.WebSocket {
  const withCookie = class extends WebSocket {
    constructor(address: string) {
      super(address, { headers: { cookie } });
    }
  };
  // ws has the browser's interface as far as y-websocket uses it.
  return withCookie as unknown as typeof globalThis.WebSocket;
}

/** Waits for a fact, never for a time. @throws Error with `what` when it does not come within 20 s. */
export async function eventually(what: string, holds: () => boolean | Promise<boolean>): Promise<void> {
  const endMs = performance.now() + 20_000;
  while (!(await holds())) {
    if (performance.now() > endMs) throw new Error(`It never came about: ${what}`);
    await new Promise((next) => setTimeout(next, 10));
  }
}

/** A frame of y-protocols' awareness with one state. */
export function awarenessFrame(clientId: number, clock: number, state: unknown): Uint8Array {
  const list = encoding.createEncoder();
  encoding.writeVarUint(list, 1);
  encoding.writeVarUint(list, clientId);
  encoding.writeVarUint(list, clock);
  encoding.writeVarString(list, JSON.stringify(state));
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, MESSAGE_AWARENESS);
  encoding.writeVarUint8Array(encoder, encoding.toUint8Array(list));
  return encoding.toUint8Array(encoder);
}
