/**
 * The live part of the server: one object for the main process.
 *
 * In the flow: main → [live] → doorway, rooms, appends. Never imported from `app/`: Next would get a second
 * set of rooms. IO: sockets and the store.
 */
import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import type * as Y from 'yjs';
import { isVeiled } from '../core/class/state.ts';
import type { LiveResult, RoomName } from '../core/live/layout.ts';
import type { Mark } from '../core/live/marks.ts';
import { writeResult } from '../core/live/painting.ts';
import type { Writer } from '../core/live/permission.ts';
import { eraseBoardRooms, eraseRoom } from '../store/live-updates.ts';
import { addMark } from './add-mark.ts';
import { Appends } from './appends.ts';
import { forgetMark, forgetMarksOn, forgetPictureInSetup } from './forget.ts';
import { forgetPerson } from './forget-person.ts';
import { presenceFrame } from './frames.ts';
import {
  announce,
  forgetPictureInClass,
  type Impression,
  impressionsOf,
  tellOfLastWords,
  whenRevealed,
} from './impressions.ts';
import { recheck, recheckSight } from './recheck.ts';
import type { Room } from './room.ts';
import { Rooms } from './rooms.ts';
import { REFUSALS } from './sentences.ts';
import { Doorway } from './upgrade.ts';
import { writeAs } from './write-as.ts';

/** Browsers come back when they heard nothing for 30 s, and pings do not count. */
const SIGN_OF_LIFE_MS = 15_000;

export interface LiveOptions {
  /** A person's change was stored and passed on. Not called for the server's own results. */
  onRoomChanged(boardId: string, room: RoomName): void;
  /** Something that nobody waits for went wrong; written to the log. */
  onTrouble?(thrown: unknown): void;
}

export interface Live {
  /** For `/live/…` only; the other upgrades are Next's. */
  handleUpgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void;
  /** Tells a painting's room of its newest result. */
  setResult(boardId: string, pictureId: string, result: LiveResult): Promise<void>;
  /** Roles or consent on a board may have changed: closes the sockets of those for whom they did. */
  recheck(boardId: string): Promise<void>;
  /** Sessions ended: closes what was opened with them. @param sessionIds As `access/session` names them. */
  closeSessions(sessionIds: readonly string[]): Promise<void>;
  /** A board went: closes its sockets and erases all that was live on it. */
  closeBoard(boardId: string): Promise<void>;
  /**
   * A picture went: closes its room and erases that room's history, and takes what was said and drawn on it out of the
   * board's other rooms for good. @returns How many marks went.
   */
  closePicture(boardId: string, pictureId: string): Promise<number>;
  /** Makes a mark in somebody's name, judged as if their browser had sent it. @throws Problem 'live-not-allowed'. */
  addMark(boardId: string, writer: Writer, mark: Mark): Promise<void>;
  /** Removes one mark with the strokes of its sketch, out of the store too. @returns Whether it was there. */
  removeMark(boardId: string, markId: string): Promise<boolean>;
  /** Takes what somebody wrote out of a board's rooms, and out of their logs. @returns How many marks went. */
  forgetPerson(boardId: string, personId: string): Promise<number>;
  /** These people block each other, or do no longer: nobody sees whom they should not, wherever they are. */
  blocksChanged(personIds: readonly string[]): Promise<void>;
  /** Whether a class keeps references and figures from everybody on the board just now. */
  isVeiled(boardId: string): Promise<boolean>;
  /** What everybody saw first in a painting; null while it is kept back. */
  impressionsOf(boardId: string, pictureId: string): Promise<Impression[] | null>;
  /** Tells every browser on the board that pictures, people or revealed impressions changed. */
  announce(boardId: string): Promise<void>;
  /** Makes an edit of the server's own; stored first, like any other. @throws when it does not fit the layout. */
  writeAsServer(boardId: string, room: RoomName, edit: (doc: Y.Doc) => void): Promise<void>;
  /** Makes an edit in somebody's name; see `write-as`. @throws Problem 'live-not-allowed' when it is refused. */
  writeAs(boardId: string, room: RoomName, writer: Writer, edit: (doc: Y.Doc) => void): Promise<void>;
  /** Reads a room's document as it is stored; the reader must not keep it. */
  read<T>(boardId: string, room: RoomName, reader: (doc: Y.Doc) => T): Promise<Awaited<T>>;
  /** Sends everybody away, waits until all is stored, compacts. Afterwards nobody comes in. */
  flush(): Promise<void>;
  /** Whether what people write reaches the store: the last write succeeded and none is stuck. */
  healthy(): Promise<boolean>;
}

/** Makes the live part. Call `flush` before the database closes. */
export function createLive({ onRoomChanged, onTrouble = () => {} }: LiveOptions): Live {
  const appends = new Appends();
  const rooms: Rooms = new Rooms(appends, {
    changed(room) {
      onRoomChanged(room.boardId, room.name);
      if (room.name.startsWith('silent/')) tellOfLastWords(rooms, room.boardId).catch(onTrouble);
    },
    revealed: (boardId) => whenRevealed(rooms, boardId),
    failed: onTrouble,
  });
  const doorway = new Doorway(rooms, onTrouble);
  const stopSigns = signsOfLife(rooms);

  const write = (boardId: string, name: RoomName, edit: (doc: Y.Doc) => void) =>
    rooms.use(boardId, name, (room) => room.write(edit));

  return {
    handleUpgrade: (request, socket, head) => doorway.handleUpgrade(request, socket, head),
    setResult: (boardId, pictureId, result) =>
      write(boardId, `painting/${pictureId}`, (doc) => writeResult(doc, result)),
    async writeAsServer(boardId, name, edit) {
      await write(boardId, name, edit);
      onRoomChanged(boardId, name);
    },
    writeAs: (boardId, name, writer, edit) => writeAs(rooms, boardId, name, writer, edit),
    read: (boardId, name, reader) => rooms.use(boardId, name, (room) => room.read(reader)),
    recheck: (boardId) => recheck(rooms, boardId),
    async closeSessions(sessionIds) {
      const ended = new Set(sessionIds);
      for (const room of await rooms.present()) {
        for (const connection of [...room.connections]) {
          if (ended.has(connection.sessionId)) connection.close(REFUSALS.signedOut());
        }
      }
    },
    async closeBoard(boardId) {
      await endRooms(rooms, appends, boardId, () => true);
      await eraseBoardRooms(boardId);
    },
    async closePicture(boardId, pictureId) {
      await endRooms(rooms, appends, boardId, (room) => room.name === `painting/${pictureId}`);
      await eraseRoom(boardId, `painting/${pictureId}`);
      await forgetPictureInClass(rooms, boardId, pictureId);
      await forgetPictureInSetup(rooms, boardId, pictureId);
      return forgetMarksOn(rooms, boardId, pictureId);
    },
    addMark: (boardId, writer, mark) => addMark(rooms, boardId, writer, mark),
    removeMark: (boardId, markId) => forgetMark(rooms, boardId, markId),
    forgetPerson: (boardId, personId) =>
      forgetPerson(rooms, appends, { boardId, personId }, (name) =>
        endRooms(rooms, appends, boardId, (room) => room.name === name),
      ),
    async blocksChanged(personIds) {
      for (const boardId of await recheckSight(rooms, personIds)) await announce(rooms, boardId);
    },
    announce: (boardId) => announce(rooms, boardId),
    isVeiled: async (boardId) => isVeiled(await rooms.class.read(boardId)),
    impressionsOf: (boardId, pictureId) => impressionsOf(rooms, boardId, pictureId),
    async flush() {
      doorway.close();
      stopSigns();
      for (const room of await rooms.present()) room.closeAll(REFUSALS.stopping());
      await appends.settled();
      await rooms.putAway();
    },
    healthy: async () => appends.healthy(performance.now()),
  };
}

async function endRooms(
  rooms: Rooms,
  appends: Appends,
  boardId: string,
  which: (room: Room) => boolean,
): Promise<void> {
  const ended = (await rooms.present(boardId)).filter(which);
  for (const room of ended) room.closeAll(REFUSALS.noSuchRoom());
  await appends.settled();
  for (const room of ended) rooms.forget(room);
}

function signsOfLife(rooms: Rooms): () => void {
  const sign = presenceFrame([]);
  const timer = setInterval(async () => {
    for (const room of await rooms.present()) for (const each of [...room.connections]) each.ping(sign);
    await rooms.compactLong();
  }, SIGN_OF_LIFE_MS);
  timer.unref();
  return () => clearInterval(timer);
}
