/**
 * Consent: what was said about each use of a painter's pictures, and who may say it.
 *
 * A painter answers for their own pictures; for a minor with a guardian on the board the guardian does, and
 * nobody else. In the flow: handlers -> [consent] -> store. IO: the database.
 */
import type { BoardView, ConsentView } from '../core/contract/responses.ts';
import { type BoardRole, CONSENT_USES, type ConsentUse } from '../core/contract/roles.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { readBoardView, type StoredBoard } from '../store/board-view.ts';
import { consentsSaid, paintersOn, unshownPainters } from '../store/consents.ts';
import { type GuardianshipRow, guardianshipsOn } from '../store/guardians.ts';
import { namesOf } from '../store/people.ts';
import { aliasesOf } from '../store/school.ts';
import { unseenOn } from './block.ts';
import { type KnownNames, knownNames, namingFor, rulesAt } from './school.ts';
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

/** A picture as far as its use goes. */
export interface UsedPicture {
  boardId: string;
  painterId: string;
  kind: string;
  rights: string | null;
}

/**
 * Whether a picture may be used so: the one question that whatever shows a picture outside its board has to ask (a
 * wall, an archive, a sheet), and that deletion asks for 'keep'.
 *
 * A painting: what its painter or, of a minor, the guardian said last; without a word 'class' alone, and of a guarded
 * minor nothing. A reference: what is under a free licence may be used; what is used with somebody's permission was
 * given for this board alone; one's own is as one said.
 */
export async function mayUse(
  use: ConsentUse,
  { boardId, painterId, kind, rights }: UsedPicture,
): Promise<boolean> {
  if (kind === 'reference' && rights === 'free') return true;
  if (kind === 'reference' && rights === 'permission') return use === 'class';
  const said = (await consentsSaid(boardId)).find((each) => each.personId === painterId && each.use === use);
  if (said) return said.given;
  if (use !== 'class') return false;
  return !(await guardianshipsOn(boardId)).some(({ wardId }) => wardId === painterId);
}

/** The board with the pictures that are for this person to see, or null when it went meanwhile. */
export async function boardAsSeen(
  boardId: string,
  { personId, name }: Visitor,
  role: BoardRole,
): Promise<BoardView | null> {
  const board = await readBoardView(boardId, { id: personId, name }, role);
  if (!board) return null;
  const place = { boardId };
  const [hidden, unseen, rules, known] = await Promise.all([
    hiddenPainters(boardId, personId, role),
    unseenOn(boardId, personId, role),
    rulesAt(place),
    knownNames(place, personId, role),
  ]);
  const pictures = board.pictures.filter(({ painter }) => !hidden.has(painter.id));
  const { noPublicLinks, noMixingHints, aliases } = rules;
  const named = await namedFor(known, { ...board, pictures });
  const alias = aliases ? ((await aliasesOf([personId])).get(personId) ?? null) : null;
  return { ...named, blocked: [...unseen], school: { noPublicLinks, noMixingHints, aliases }, alias };
}

/** The board with everybody under the name by which this person knows them. */
async function namedFor(known: KnownNames, board: StoredBoard): Promise<StoredBoard> {
  if (known === 'all') return board;
  const { owner, members, pictures } = board;
  const wards = members.flatMap(({ ward }) => ward ?? []);
  const naming = await namingFor(known, [
    owner,
    ...members,
    ...wards,
    ...pictures.map(({ painter }) => painter),
  ]);
  return {
    ...board,
    owner: naming(owner),
    members: members.map((each) => ({ ...naming(each), ...(each.ward ? { ward: naming(each.ward) } : {}) })),
    pictures: pictures.map((each) => ({ ...each, painter: naming(each.painter) })),
  };
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
