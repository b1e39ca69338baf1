/** When somebody last looked at a board, and how far they had seen it. IO: the database. */
import { z } from 'zod';
import { database } from './database.ts';

/** One room as it was seen. */
const RoomSeen = z.object({
  /** Yjs state vector in base64. */
  vector: z.string(),
  /** Id of a stored update up to which all was seen: while there is no newer one, the room need not be read. */
  through: z.string().regex(/^\d+$/),
});

/** What the column `seen` holds. */
const SeenOfBoard = z.object({
  rooms: z.record(z.string(), RoomSeen),
  /** Marks that were there and had not come into view. */
  unseen: z.array(z.string()),
});
export type SeenOfBoard = z.infer<typeof SeenOfBoard>;

export interface LookRow extends SeenOfBoard {
  boardId: string;
  at: Date;
}

export async function readLook(boardId: string, personId: string): Promise<LookRow | null> {
  const row = await database().look.findUnique({ where: { boardId_personId: { boardId, personId } } });
  return row && { boardId, at: row.at, ...SeenOfBoard.parse(row.seen) };
}

/** Every board that the person ever looked at. */
export async function looksOf(personId: string): Promise<LookRow[]> {
  const rows = await database().look.findMany({ where: { personId } });
  return rows.map(({ boardId, at, seen }) => ({ boardId, at, ...SeenOfBoard.parse(seen) }));
}

export async function putLook(
  boardId: string,
  personId: string,
  seen: SeenOfBoard,
  at = new Date(),
): Promise<void> {
  await database().look.upsert({
    where: { boardId_personId: { boardId, personId } },
    create: { boardId, personId, at, seen },
    update: { at, seen },
  });
}
