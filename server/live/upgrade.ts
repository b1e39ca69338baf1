/**
 * From an HTTP upgrade to a seat in a room, or to a close code with a sentence.
 *
 * In the flow: server → [upgrade] → room. The handshake is always completed first: a refusal during it never
 * reaches the browser's code. IO: the socket, the session, the store.
 */
import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import { type WebSocket, WebSocketServer } from 'ws';
import { hiddenPainters } from '../access/consent.ts';
import { originAllowed } from '../access/origin.ts';
import { roleOn } from '../access/roles.ts';
import { readSession, sessionIdOf } from '../access/session.ts';
import { silentPicture } from '../core/class/state.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { parseRoomName, type RoomName } from '../core/live/layout.ts';
import type { Refusal } from '../core/live/wire.ts';
import { painterOf } from '../store/live-updates.ts';
import { isDiskFull } from '../store/trouble.ts';
import { closeWith } from './closing.ts';
import { Connection, MESSAGE_BYTES } from './connection.ts';
import type { Room } from './room.ts';
import type { Rooms } from './rooms.ts';
import { REFUSALS } from './sentences.ts';
import { type Sight, sightOn } from './sight.ts';

/** Somebody who may enter, and as what. */
export interface Admission {
  boardId: string;
  room: RoomName;
  person: { id: string; name: string; role: BoardRole };
  paints: boolean;
  sessionId: string;
  sight: Sight;
  /** The epoch of the browser's copy, or null when it comes without one. */
  epoch: number | null;
}

/** Sockets of one person at once, over all rooms. */
const SOCKETS_OF_ONE = 100;

export class Doorway {
  readonly #rooms: Rooms;
  readonly #sockets = new WebSocketServer({
    noServer: true,
    maxPayload: MESSAGE_BYTES * 2,
    perMessageDeflate: false,
  });
  readonly #open = new Map<string, number>();
  readonly #failed: (thrown: unknown) => void;
  #closed = false;

  /** @param failed Hears of bugs and of a store that does not answer; the person hears a sentence. */
  constructor(rooms: Rooms, failed: (thrown: unknown) => void) {
    this.#rooms = rooms;
    this.#failed = failed;
  }

  handleUpgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
    this.#sockets.handleUpgrade(request, socket, head, (accepted) => {
      // Errors of one socket (a frame that is too large, a line that broke) end in its close.
      accepted.on('error', () => {});
      accepted.pause();
      this.#seat(request, accepted)
        .catch((thrown: unknown) => {
          this.#failed(thrown);
          closeWith(accepted, isDiskFull(thrown) ? REFUSALS.diskFull() : REFUSALS.troubled());
        })
        .finally(() => accepted.resume());
    });
  }

  /** Nobody comes in any more. */
  close(): void {
    this.#closed = true;
  }

  async #seat(request: IncomingMessage, socket: WebSocket): Promise<void> {
    const first = await this.#admit(request);
    if ('code' in first) return closeWith(socket, first);
    const { room, letGo } = await this.#rooms.use(first.boardId, first.room, (found) => {
      return { room: found, letGo: found.hold() };
    });
    try {
      await this.#rooms.ready(room);
      // Asked again after loading: access that ended meanwhile has closed its sockets already.
      const admission = await this.#admit(request);
      const refusal = 'code' in admission ? admission : this.#refusalAt(room, admission);
      if (refusal) closeWith(socket, refusal);
      else if (!('code' in admission) && socket.readyState === socket.OPEN)
        this.#join(room, socket, admission);
    } finally {
      letGo();
    }
  }

  #refusalAt(room: Room, { epoch, person }: Admission): Refusal | null {
    if (room.gone) return REFUSALS.troubled();
    if (epoch !== null && epoch !== room.epoch) return REFUSALS.epochOver();
    if (isKeptInSilence(room.name) && silentPicture(this.#rooms.class.now(room.boardId)) !== null) {
      return REFUSALS.veiled();
    }
    const crowded = (this.#open.get(person.id) ?? 0) >= SOCKETS_OF_ONE;
    return crowded ? REFUSALS.tooManySockets(SOCKETS_OF_ONE) : null;
  }

  #join(room: Room, socket: WebSocket, { person, paints, sessionId, sight }: Admission): void {
    this.#count(socket, person.id);
    const writer = { personId: person.id, role: person.role, paints };
    room.join(new Connection(socket, room, { person, writer, sessionId, sight }));
  }

  async #admit(request: IncomingMessage): Promise<Admission | Refusal> {
    return this.#closed ? REFUSALS.stopping() : await admit(request);
  }

  #count(socket: WebSocket, personId: string): void {
    this.#open.set(personId, (this.#open.get(personId) ?? 0) + 1);
    socket.once('close', () => {
      const left = (this.#open.get(personId) ?? 1) - 1;
      if (left > 0) this.#open.set(personId, left);
      else this.#open.delete(personId);
    });
  }
}

/** Who comes, and whether they may; a refusal in words when not. @throws what the store throws. */
async function admit(request: IncomingMessage): Promise<Admission | Refusal> {
  const { origin, host, cookie } = request.headers;
  if (!originAllowed({ origin: origin ?? null, host: host ?? null })) return REFUSALS.foreignOrigin();
  const visitor = await readSession(cookie ?? null);
  if (!visitor) return REFUSALS.notEntered();
  const place = placeOf(request.url ?? '');
  if (!place) return REFUSALS.noSuchRoom();
  const painter = place.pictureId === null ? null : await painterOf(place.boardId, place.pictureId);
  // Role and consent are read last: whoever is seated on their word is there when a change looks for them.
  const role = await roleOn(visitor, place.boardId);
  if (role === null) return REFUSALS.notOnBoard();
  if (isForeignSilence(place.room, visitor.personId)) return REFUSALS.foreignSilence();
  const hidden = await hiddenPainters(place.boardId, visitor.personId, role);
  const sight = await sightOn(place.boardId, visitor.personId, role);
  const shown = painter === null ? place.pictureId === null : !hidden.has(painter);
  if (!shown) return REFUSALS.noSuchRoom();
  return {
    boardId: place.boardId,
    room: place.room,
    person: { id: visitor.personId, name: visitor.name, role },
    paints: painter === visitor.personId,
    sessionId: sessionIdOf(cookie ?? null) ?? '',
    sight,
    epoch: place.epoch,
  };
}

/** First impressions of somebody else: a room that nobody but its own person gets into, before and after. */
function isForeignSilence(room: RoomName, personId: string): boolean {
  return room.startsWith('silent/') && room !== `silent/${personId}`;
}

/** Rooms that hold figures, what was read off the reference, or what others said: nobody is given them in a silent look. */
function isKeptInSilence(room: RoomName): boolean {
  return room === 'setup' || room === 'marks' || room.startsWith('painting/');
}

interface Place {
  boardId: string;
  room: RoomName;
  pictureId: string | null;
  epoch: number | null;
}

/** @param url `/live/<boardId>/<room>`, with `?epoch=N` when the browser has a copy. */
function placeOf(url: string): Place | null {
  const match = /^\/live\/([0-9A-Za-z-]{1,64})\/([0-9A-Za-z/-]{1,80})(?:\?(.*))?$/.exec(url);
  const boardId = match?.[1];
  const room = parseRoomName(match?.[2] ?? '');
  if (boardId === undefined || room === null) return null;
  const epoch = /^\d{1,9}$/.exec(new URLSearchParams(match?.[3]).get('epoch') ?? '');
  const pictureId = room.startsWith('painting/') ? room.slice('painting/'.length) : null;
  return { boardId, room, pictureId, epoch: epoch ? Number(epoch[0]) : null };
}
