/**
 * Rooms of the browser against a small server that speaks y-protocols: what is refused is taken back with its
 * words kept, what was done offline goes out, and a shut door stays shut.
 */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import * as decoding from 'lib0/decoding';
import * as encoding from 'lib0/encoding';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { WebSocket, WebSocketServer } from 'ws';
import * as sync from 'y-protocols/sync';
import * as Y from 'yjs';
import { BoardStore } from '#app/_live/board-store.ts';
import { declareRoots } from '#server/core/live/document.ts';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import {
  CLOSE,
  MESSAGE_ANNOUNCE,
  MESSAGE_EPOCH,
  MESSAGE_REFUSED,
  MESSAGE_SYNC,
} from '#server/core/live/wire.ts';

const ME = { id: 'ada', name: 'Ada', role: 'peer', self: true };
const mark = (id: string, text: string): Mark => ({
  ...{ id, author: 'ada', pictureId: 'p', kind: 'pin', points: [[0.5, 0.5]], text, planeId: null },
  ...{ parent: null, at: 1 },
});

let http: Server;
let sockets: WebSocketServer;
/** What the server does with an update: keeps it, or refuses it with a sentence. */
let refuse: string | null = null;
/** The code with which every newcomer is turned away, or null. */
let shut: number | null = null;
/** The epoch of every room's history, told to newcomers; whoever comes with another one is refused. */
let epoch = 1;
const docs = new Map<string, Y.Doc>();

/** @param url With or without the epoch of the browser's document. */
function docOf(url: string): Y.Doc {
  const [room = ''] = url.split('?');
  const kept = docs.get(room) ?? new Y.Doc();
  docs.set(room, kept);
  return kept;
}

function serve(socket: WebSocket, url: string): void {
  if (shut !== null) {
    socket.close(shut, 'Enter again.');
    return;
  }
  const theirs = new URL(url, 'ws://localhost').searchParams.get('epoch');
  if (theirs !== null && Number(theirs) !== epoch) {
    socket.close(CLOSE.epochOver, 'The history was erased.');
    return;
  }
  const joined = encoding.createEncoder();
  encoding.writeVarUint(joined, MESSAGE_EPOCH);
  encoding.writeVarUint(joined, epoch);
  socket.send(encoding.toUint8Array(joined));
  const doc = docOf(url);
  const first = encoding.createEncoder();
  encoding.writeVarUint(first, MESSAGE_SYNC);
  sync.writeSyncStep1(first, doc);
  socket.send(encoding.toUint8Array(first));
  socket.on('message', (bytes: Buffer) => {
    const decoder = decoding.createDecoder(new Uint8Array(bytes));
    if (decoding.readVarUint(decoder) !== MESSAGE_SYNC) return;
    const standing = Y.encodeStateVector(doc).toString();
    const answer = encoding.createEncoder();
    encoding.writeVarUint(answer, MESSAGE_SYNC);
    const shadow = new Y.Doc();
    Y.applyUpdate(shadow, Y.encodeStateAsUpdate(doc));
    sync.readSyncMessage(decoder, answer, refuse === null ? doc : shadow, null);
    const changed = Y.encodeStateVector(shadow).toString() !== standing;
    if (refuse !== null && changed) {
      const message = encoding.createEncoder();
      encoding.writeVarUint(message, MESSAGE_REFUSED);
      encoding.writeVarString(message, JSON.stringify({ code: CLOSE.notAllowed, message: refuse }));
      socket.send(encoding.toUint8Array(message));
      socket.close(CLOSE.notAllowed, 'not allowed');
      return;
    }
    if (encoding.length(answer) > 1) socket.send(encoding.toUint8Array(answer));
  });
}

async function until(fact: () => boolean): Promise<void> {
  const stop = Date.now() + 20_000;
  while (!fact()) {
    if (Date.now() > stop) throw new Error('It did not come true within 20 seconds.');
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

async function listen(port = 0): Promise<number> {
  http = createServer();
  sockets = new WebSocketServer({ server: http });
  sockets.on('connection', (socket, request) => serve(socket, request.url ?? ''));
  await new Promise<void>((resolve) => http.listen(port, '127.0.0.1', resolve));
  return (http.address() as AddressInfo).port; // listening on a port, so the address is not a path
}

async function stop(): Promise<void> {
  for (const socket of sockets.clients) socket.terminate();
  sockets.close();
  await new Promise((resolve) => http.close(resolve));
}

let port = 0;
let letGo: (() => void)[] = [];
let store: BoardStore;
const marksDoc = () => store.doc('marks') ?? new Y.Doc();

beforeEach(async () => {
  // Node 20 has no WebSocket of its own; in the browser the provider takes the window's.
  Object.assign(globalThis, { WebSocket });
  refuse = null;
  shut = null;
  epoch = 1;
  docs.clear();
  port = await listen();
  store = new BoardStore(`ws://127.0.0.1:${port}/live/b`, 'b', ME);
  letGo = [];
});

afterEach(async () => {
  for (const go of letGo) go();
  await until(() => store.doc('marks') === null);
  await stop();
});

const open = () => {
  letGo = [store.look('setup'), store.look('marks')];
};

test('what the server refuses is taken back, its words come as a draft, and the room goes on', async () => {
  open();
  await until(() => store.connection() === 'connected');
  putMark(marksDoc(), mark('kept', 'This may stay.'));
  await until(() => readMarks(docOf('/live/b/marks')).length === 1);
  const before = marksDoc();
  refuse = 'Only its author may change a mark.';
  putMark(before, mark('refused', 'Words that must not be lost.'));
  await until(() => marksDoc() !== before);
  refuse = null;
  await until(() => store.refusals[0]?.draft !== undefined && store.refusals[0].draft !== null);
  expect(store.refusals).toHaveLength(1);
  expect(store.refusals[0]?.sentence).toBe('Only its author may change a mark.');
  expect(store.refusals[0]?.draft).toBe('Words that must not be lost.');
  expect(readMarks(marksDoc()).map(({ id }) => id)).toEqual(['kept']);
  putMark(marksDoc(), mark('later', 'An honest one.'));
  await until(() => readMarks(docOf('/live/b/marks')).length === 2);
  store.dismissRefusal(store.refusals[0]?.id ?? '');
  expect(store.refusals).toEqual([]);
});

test('what is done while the line is down goes out when it is back', async () => {
  open();
  await until(() => store.connection() === 'connected');
  await stop();
  await until(() => store.connection() === 'offline');
  putMark(marksDoc(), mark('offline', 'Written in the tunnel.'));
  await listen(port);
  await until(() => store.connection() === 'connected');
  await until(() => readMarks(docOf('/live/b/marks')).length === 1);
});

test('a document of an erased history is dropped: only what was never sent is given back, as a draft', async () => {
  open();
  await until(() => store.connection() === 'connected');
  putMark(marksDoc(), mark('sent', 'Erased on purpose.'));
  await until(() => readMarks(docOf('/live/b/marks')).length === 1);
  await stop();
  await until(() => store.connection() === 'offline');
  putMark(marksDoc(), mark('unsent', 'Never sent.'));
  expect(store.waiting()).toContain('marks/unsent');
  expect(store.offlineSince()).not.toBeNull();
  const before = marksDoc();
  docs.clear();
  epoch = 2;
  await listen(port);
  await until(() => marksDoc() !== before && store.connection() === 'connected');
  await until(() => store.refusals.some(({ draft }) => draft !== null));
  expect(readMarks(marksDoc())).toEqual([]);
  expect(readMarks(docOf('/live/b/marks'))).toEqual([]);
  const drafts = store.refusals.flatMap(({ draft }) => draft ?? []).join();
  expect(drafts).toContain('Never sent.');
  expect(store.waiting()).toEqual([]);
  expect(store.offlineSince()).toBeNull();
});

test('what was never sent is a draft when the door is shut meanwhile', async () => {
  open();
  await until(() => store.connection() === 'connected');
  await stop();
  await until(() => store.connection() === 'offline');
  putMark(marksDoc(), mark('unsent', 'My own words.'));
  shut = CLOSE.noSuchRoom;
  await listen(port);
  await until(() => store.connection() === 'closed');
  expect(store.refusals.map(({ draft }) => draft)).toEqual(['My own words.']);
  expect(store.waiting()).toEqual([]);
});

test('a room that is shut for good says why and is not knocked at again', async () => {
  shut = CLOSE.notEntered;
  let knocks = 0;
  sockets.on('connection', () => knocks++);
  open();
  await until(() => store.connection() === 'closed');
  expect(store.closedSentence()).toBe('Enter again.');
  const after = knocks;
  await new Promise((resolve) => setTimeout(resolve, 1200));
  expect(knocks).toBe(after);
});

test('news of pictures and people raises the counter', async () => {
  open();
  await until(() => store.connection() === 'connected');
  const news = encoding.createEncoder();
  encoding.writeVarUint(news, MESSAGE_ANNOUNCE);
  const before = store.boardChanged;
  for (const socket of sockets.clients) socket.send(encoding.toUint8Array(news));
  await until(() => store.boardChanged > before);
});

test('two browsers that were apart see the same marks once they are joined', async () => {
  open();
  await until(() => store.connection() === 'connected');
  const other = declareRoots(new Y.Doc(), 'marks');
  putMark(other, mark('theirs', 'From the other side.'));
  putMark(marksDoc(), mark('mine', 'From this side.'));
  Y.applyUpdate(docOf('/live/b/marks'), Y.encodeStateAsUpdate(other));
  for (const socket of sockets.clients) socket.terminate();
  await until(() => readMarks(docOf('/live/b/marks')).length === 2 && readMarks(marksDoc()).length === 2);
  expect(readMarks(marksDoc())).toEqual(readMarks(docOf('/live/b/marks')));
});
