/**
 * The history of live rooms as opaque bytes: append, read all, replace by a snapshot, erase.
 *
 * In the flow: live/room ↔ [live-updates] ↔ database. IO: the database. Nothing here knows Yjs: compaction
 * hands in a finished snapshot, and updates are never merged.
 */
import type { PrismaClient } from '../../prisma/generated/client.ts';
import { parseRoomName, type RoomName } from '../core/live/layout.ts';
import { database } from './database.ts';

/** One update of one room, as it will be replayed. */
export interface StoredUpdate {
  boardId: string;
  room: string;
  bytes: Uint8Array;
}

export interface RoomHistory {
  /** Snapshot first (when there is one), then every later update in the order of arrival. */
  updates: Uint8Array[];
  /** Id of the last update, or of the last one in the snapshot; 0 when there is nothing. */
  throughId: bigint;
  /** How many updates lie beside the snapshot. */
  loose: number;
  /** Raised whenever the history was erased; 1 at first. */
  epoch: number;
}

/** Largest part of a snapshot in bytes: PGlite takes seconds over a row of several megabytes. */
const PART_BYTES = 256_000;

/**
 * Stores all of them in this order with one statement: all or none.
 *
 * Raw and in base64: on the embedded database that takes a third of the time of the client's own insert, and
 * a seventh for a large update, whose bytes would otherwise travel as numbers.
 *
 * @throws what the database throws.
 */
export async function appendUpdates(updates: readonly StoredUpdate[]): Promise<void> {
  const boards = updates.map(({ boardId }) => boardId);
  const rooms = updates.map(({ room }) => room);
  const bodies = updates.map(({ bytes }) => base64(bytes));
  await database().$executeRaw`
    INSERT INTO "LiveUpdate" ("boardId", "room", "bytes")
    SELECT board, room, decode(body, 'base64')
    FROM unnest(${boards}::text[], ${rooms}::text[], ${bodies}::text[])
      WITH ORDINALITY AS arrived(board, room, body, place)
    ORDER BY place`;
}

/** Everything needed to build the room's document again. */
export async function readRoom(boardId: string, room: string): Promise<RoomHistory> {
  const [parts, live] = await Promise.all([
    database().$queryRaw<StoredBytes[]>`
      SELECT "throughId" AS id, encode("bytes", 'base64') AS body FROM "LiveSnapshot"
      WHERE "boardId" = ${boardId} AND "room" = ${room} ORDER BY "part"`,
    database().liveRoom.findUnique({ where: { boardId_room: { boardId, room } } }),
  ]);
  const snapshotId = parts[0]?.id ?? 0n;
  const rows = await database().$queryRaw<StoredBytes[]>`
    SELECT id, encode("bytes", 'base64') AS body FROM "LiveUpdate"
    WHERE "boardId" = ${boardId} AND "room" = ${room} AND id > ${snapshotId} ORDER BY id`;
  return {
    updates: [...(parts.length > 0 ? [Buffer.concat(parts.map(bytesOf))] : []), ...rows.map(bytesOf)],
    throughId: rows.at(-1)?.id ?? snapshotId,
    loose: rows.length,
    epoch: live?.epoch ?? 1,
  };
}

/** A row as the two queries above select it. */
interface StoredBytes {
  id: bigint;
  body: string;
}

function bytesOf({ body }: StoredBytes): Buffer {
  return Buffer.from(body, 'base64');
}

function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('base64');
}

/** Who painted the picture of a `painting/<pictureId>` room; null when the board has no such painting. */
export async function painterOf(boardId: string, pictureId: string): Promise<string | null> {
  const picture = await database().picture.findFirst({
    where: { id: pictureId, boardId, kind: 'painting' },
    select: { painterId: true },
  });
  return picture?.painterId ?? null;
}

/** The rooms of paintings on the board in which anything was written. */
export function paintingRoomsOf(boardId: string): Promise<`painting/${string}`[]> {
  return roomsNamed(boardId, 'painting');
}

/** The rooms of first impressions on the board in which anything was written. */
export function silentRoomsOf(boardId: string): Promise<`silent/${string}`[]> {
  return roomsNamed(boardId, 'silent');
}

/** Every room of the board in which anything was written. */
export async function roomsOf(boardId: string): Promise<RoomName[]> {
  const rows = await database().$queryRaw<{ room: string }[]>`
    SELECT "room" FROM "LiveSnapshot" WHERE "boardId" = ${boardId}
    UNION SELECT "room" FROM "LiveUpdate" WHERE "boardId" = ${boardId} ORDER BY 1`;
  return rows.flatMap(({ room }) => parseRoomName(room) ?? []);
}

async function roomsNamed<Kind extends string>(boardId: string, kind: Kind): Promise<`${Kind}/${string}`[]> {
  const pattern = `${kind}/%`;
  const rows = await database().$queryRaw<{ room: `${Kind}/${string}` }[]>`
    SELECT "room" FROM "LiveSnapshot" WHERE "boardId" = ${boardId} AND "room" LIKE ${pattern}
    UNION SELECT "room" FROM "LiveUpdate" WHERE "boardId" = ${boardId} AND "room" LIKE ${pattern}`;
  return rows.map(({ room }) => room);
}

/** Id of the newest update of the room, 0 when there is none. */
export async function lastUpdateId(boardId: string, room: string): Promise<bigint> {
  const newest = await database().liveUpdate.aggregate({ where: { boardId, room }, _max: { id: true } });
  return newest._max.id ?? 0n;
}

/**
 * Puts a whole document in the place of all updates up to one id, at once or not at all.
 *
 * @param throughId Every update up to and including this one must be in `bytes`; later ones stay.
 */
export async function replaceBySnapshot(
  boardId: string,
  room: string,
  throughId: bigint,
  bytes: Uint8Array,
): Promise<void> {
  const store = database();
  await store.$transaction([
    store.liveSnapshot.deleteMany({ where: { boardId, room } }),
    ...snapshotParts(store, { boardId, room, throughId, bytes }),
    store.liveUpdate.deleteMany({ where: { boardId, room, id: { lte: throughId } } }),
  ]);
}

/** A whole document to store. */
interface Snapshot {
  boardId: string;
  room: string;
  throughId: bigint;
  bytes: Uint8Array;
}

/** The writes that store a whole document in parts, for a transaction of the caller's. */
export function snapshotParts(
  store: Pick<PrismaClient, '$executeRaw'>,
  { boardId, room, throughId, bytes }: Snapshot,
): ReturnType<PrismaClient['$executeRaw']>[] {
  const count = Math.max(1, Math.ceil(bytes.length / PART_BYTES));
  return Array.from({ length: count }, (_, part) => {
    const body = base64(bytes.subarray(part * PART_BYTES, (part + 1) * PART_BYTES));
    return store.$executeRaw`
      INSERT INTO "LiveSnapshot" ("boardId", "room", "part", "throughId", "bytes")
      VALUES (${boardId}, ${room}, ${part}::int, ${throughId}::bigint, decode(${body}, 'base64'))`;
  });
}

/** Erases a room's history and raises its epoch, so that older copies are refused. Returns the new epoch. */
export async function eraseRoom(boardId: string, room: string): Promise<number> {
  const store = database();
  const [, , live] = await store.$transaction([
    store.liveUpdate.deleteMany({ where: { boardId, room } }),
    store.liveSnapshot.deleteMany({ where: { boardId, room } }),
    store.liveRoom.upsert({
      where: { boardId_room: { boardId, room } },
      create: { boardId, room, epoch: 2 },
      update: { epoch: { increment: 1 } },
    }),
  ]);
  return live.epoch;
}

/** Raises the epoch of a room whose history was written anew, so that older copies are refused. */
export async function raiseEpoch(boardId: string, room: string): Promise<void> {
  await database().liveRoom.upsert({
    where: { boardId_room: { boardId, room } },
    create: { boardId, room, epoch: 2 },
    update: { epoch: { increment: 1 } },
  });
}

/** Erases everything live of a board that is gone for good. */
export async function eraseBoardRooms(boardId: string): Promise<void> {
  const store = database();
  await store.$transaction([
    store.liveUpdate.deleteMany({ where: { boardId } }),
    store.liveSnapshot.deleteMany({ where: { boardId } }),
    store.liveRoom.deleteMany({ where: { boardId } }),
  ]);
}
