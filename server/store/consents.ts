/** What was last said about the use of somebody's pictures on a board. IO: the database. */
import { ConsentUse } from '../core/contract/roles.ts';
import { database } from './database.ts';
import { guardianshipsOn } from './guardians.ts';

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

/**
 * Whose pictures are not shown to the others on a board: painters who withdrew consent to it, and minors with a
 * guardian there who has not given it.
 */
export async function unshownPainters(boardId: string): Promise<string[]> {
  const rows = await database().$queryRaw<{ painterId: string; given: boolean | null }[]>`
    SELECT DISTINCT p."painterId", c."given" FROM "Picture" p
    LEFT JOIN "Consent" c ON c."boardId" = p."boardId" AND c."personId" = p."painterId" AND c."use" = 'class'
    WHERE p."boardId" = ${boardId} AND c."given" IS NOT TRUE`;
  if (rows.length === 0) return [];
  const guarded = new Set((await guardianshipsOn(boardId)).map(({ wardId }) => wardId));
  return rows.flatMap(({ painterId, given }) =>
    given === false || guarded.has(painterId) ? [painterId] : [],
  );
}
