/** What was last said about the use of somebody's pictures on a board. IO: the database. */
import { ConsentUse } from '../core/contract/roles.ts';
import { database } from './database.ts';

export interface Said {
  boardId: string;
  personId: string;
  use: ConsentUse;
  given: boolean;
  /** Who said it. */
  saidById: string;
}

/** Puts what is said now in the place of what was said before. */
export async function sayConsent({ boardId, personId, use, given, saidById }: Said): Promise<void> {
  const at = new Date();
  await database().consent.upsert({
    where: { boardId_personId_use: { boardId, personId, use } },
    create: { boardId, personId, use, given, saidById, at },
    update: { given, saidById, at },
  });
}

/** All that was said on a board. */
export async function consentsSaid(boardId: string): Promise<(Said & { at: Date })[]> {
  const rows = await database().consent.findMany({ where: { boardId } });
  return rows.map((row) => ({ ...row, use: ConsentUse.parse(row.use) }));
}

/** The people with a painting on a board, by name. */
export async function paintersOn(boardId: string): Promise<{ id: string; name: string }[]> {
  return database().person.findMany({
    where: { pictures: { some: { boardId, kind: 'painting' } } },
    select: { id: true, name: true },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  });
}
