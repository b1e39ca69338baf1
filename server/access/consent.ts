/**
 * Consent: what was said about each use of a painter's pictures, and who may say it.
 *
 * A painter answers for their own pictures; for a minor with a guardian on the board the guardian does, and
 * nobody else. In the flow: handlers -> [consent] -> store. IO: the database.
 */
import type { ConsentView } from '../core/contract/responses.ts';
import { type BoardRole, CONSENT_USES } from '../core/contract/roles.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { consentsSaid, paintersOn } from '../store/consents.ts';
import { type GuardianshipRow, guardianshipsOn } from '../store/guardians.ts';
import { namesOf } from '../store/people.ts';

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
        saidBy: last ? (names.get(last.saidById) ?? null) : null,
        at: last?.at.toISOString() ?? null,
        mine: may(role, 'consent.say', relation),
      };
    });
  });
}
