/**
 * Consent: what was said about each use of a painter's pictures, and who may say it.
 *
 * A painter answers for their own pictures; for a minor with a guardian on the board the guardian does, and
 * nobody else. In the flow: handlers -> [consent] -> store. IO: the database.
 */
import type { BoardView, ConsentView } from '../core/contract/responses.ts';
import { type BoardRole, CONSENT_USES } from '../core/contract/roles.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { readBoardView } from '../store/board-view.ts';
import { consentsSaid, paintersOn, unshownPainters } from '../store/consents.ts';
import { type GuardianshipRow, guardianshipsOn } from '../store/guardians.ts';
import { namesOf } from '../store/people.ts';
import type { Visitor } from './session.ts';

/**
 * Whose consent it is, as seen by who would say it. A minor with a guardian on the board does not answer for
 * themselves: to them their own is somebody else's.
 */
export async function consentRelation(boardId: string, askerId: string, personId: string): Promise<Relation> {
  return relationAmong(await guardianshipsOn(boardId), askerId, personId);
}

function relationAmong(
  guardianships: readonly GuardianshipRow[],
  askerId: string,
  personId: string,
): Relation {
  const guarded = guardianships.filter((row) => row.wardId === personId);
  if (guarded.some((row) => row.guardianId === askerId)) return 'ward';
  return askerId === personId && guarded.length === 0 ? 'own' : 'other';
}

/**
 * The painters on a board whose pictures are not for this person to see: those who may not be shown to the
 * others, but for one's own, those of a minor one guards, and where one runs the board or teaches on it.
 */
export async function hiddenPainters(
  boardId: string,
  personId: string,
  role: BoardRole,
): Promise<ReadonlySet<string>> {
  if (may(role, 'picture.unshown')) return new Set();
  const unshown = await unshownPainters(boardId);
  if (unshown.length === 0) return new Set();
  const guardianships = await guardianshipsOn(boardId);
  const hidden = unshown.filter((painterId) => {
    const relation = painterId === personId ? 'own' : relationAmong(guardianships, personId, painterId);
    return !may(role, 'picture.unshown', relation);
  });
  return new Set(hidden);
}

/** The board with the pictures that are for this person to see, or null when it went meanwhile. */
export async function boardAsSeen(
  boardId: string,
  { personId, name }: Visitor,
  role: BoardRole,
): Promise<BoardView | null> {
  const board = await readBoardView(boardId, { id: personId, name }, role);
  if (!board) return null;
  const hidden = await hiddenPainters(boardId, personId, role);
  if (hidden.size === 0) return board;
  return { ...board, pictures: board.pictures.filter(({ painter }) => !hidden.has(painter.id)) };
}

/** What was said, for every painter of the board and every minor guarded there, as far as the asker may see it. */
export async function consentsOn(boardId: string, askerId: string, role: BoardRole): Promise<ConsentView[]> {
  const [said, painters, guardianships] = await Promise.all([
    consentsSaid(boardId),
    paintersOn(boardId),
    guardianshipsOn(boardId),
  ]);
  const people = new Map(painters.map((person) => [person.id, person.name]));
  for (const { wardId, wardName } of guardianships) people.set(wardId, wardName);
  const names = await namesOf(said.map(({ saidById }) => saidById));
  return [...people].flatMap(([id, name]) => {
    const relation = relationAmong(guardianships, askerId, id);
    if (!may(role, 'consent.see', askerId === id ? 'own' : relation)) return [];
    return CONSENT_USES.map((use) => {
      const last = said.find((each) => each.personId === id && each.use === use);
      return {
        person: { id, name },
        use,
        given: last?.given ?? null,
        allowed: last?.given ?? (use === 'class' && !guardianships.some(({ wardId }) => wardId === id)),
        saidBy: last ? (names.get(last.saidById) ?? null) : null,
        at: last?.at.toISOString() ?? null,
        mine: may(role, 'consent.say', relation),
      };
    });
  });
}
