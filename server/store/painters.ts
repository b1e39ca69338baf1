/** Where somebody's paintings hang, and where something was posted last. IO: the database. */
import { database } from './database.ts';

export interface Painting {
  id: string;
  follows: string | null;
  painterId: string;
}

/** Board id -> the paintings of these people on it, in the order they were posted. */
export async function paintingsBy(
  painterIds: readonly string[],
  boardIds: readonly string[],
): Promise<Map<string, Painting[]>> {
  const rows = await database().picture.findMany({
    where: { painterId: { in: [...painterIds] }, boardId: { in: [...boardIds] }, kind: 'painting' },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
    select: { id: true, followsId: true, painterId: true, boardId: true },
  });
  const boards = new Map<string, Painting[]>();
  for (const { id, followsId, painterId, boardId } of rows) {
    boards.set(boardId, [...(boards.get(boardId) ?? []), { id, follows: followsId, painterId }]);
  }
  return boards;
}

/** Board id -> when the newest picture on it was posted. */
export async function newestPictures(boardIds: readonly string[]): Promise<Map<string, Date>> {
  const rows = await database().picture.groupBy({
    by: ['boardId'],
    where: { boardId: { in: [...boardIds] } },
    _max: { createdAt: true },
  });
  return new Map(rows.flatMap(({ boardId, _max }) => (_max.createdAt ? [[boardId, _max.createdAt]] : [])));
}
