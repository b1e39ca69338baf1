/**
 * A room's document as it is stored, for whoever only reads it. Every update lies here before anybody is shown it.
 *
 * In the flow: live-updates -> [live-documents] -> access. IO: the database.
 */
import type * as Y from 'yjs';
import { documentFrom } from '../core/live/document.ts';
import type { RoomName } from '../core/live/layout.ts';
import { database } from './database.ts';
import { readRoom } from './live-updates.ts';

export async function readDocument(boardId: string, room: RoomName): Promise<Y.Doc> {
  return documentFrom(room, (await readRoom(boardId, room)).updates);
}

/** Board id -> room -> id of its newest stored update; rooms in which nothing was written are left out. */
export async function newestUpdates(boardIds: readonly string[]): Promise<Map<string, Map<string, bigint>>> {
  const boards = [...boardIds];
  const rows = await database().$queryRaw<{ boardId: string; room: string; id: bigint }[]>`
    SELECT "boardId", "room", max("id") AS "id" FROM (
      SELECT "boardId", "room", "id" FROM "LiveUpdate" WHERE "boardId" = ANY(${boards}::text[])
      UNION ALL
      SELECT "boardId", "room", "throughId" FROM "LiveSnapshot" WHERE "boardId" = ANY(${boards}::text[])
    ) AS written GROUP BY "boardId", "room"`;
  const newest = new Map<string, Map<string, bigint>>();
  for (const { boardId, room, id } of rows) {
    const rooms = newest.get(boardId) ?? new Map<string, bigint>();
    newest.set(boardId, rooms.set(room, BigInt(id)));
  }
  return newest;
}
