/**
 * Looks that were asked for on one board, as one person may see them, and whose they are to that person.
 *
 * In the flow: handlers, queue -> [asks] -> store. IO: the database.
 */
import type { AskView } from '../core/contract/own-time.ts';
import type { BoardView, PersonView, PictureView } from '../core/contract/responses.ts';
import { statesOf } from '../core/own-time/states.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { type Ask, asksOn } from '../store/asks.ts';
import { guardianshipsOn } from '../store/guardians.ts';
import { namesOf } from '../store/people.ts';

/** An asking with the states of its painting that the person may see, oldest first. */
export interface AskSeen {
  view: AskView;
  states: PictureView[];
}

/** Names of everybody who asked, was asked, promised or answered. */
export function peopleIn(asks: readonly Ask[]): Promise<Map<string, string>> {
  return namesOf(
    asks.flatMap(({ askedById, askedOfId, promisedById, answeredById }) =>
      [askedById, askedOfId, promisedById, answeredById].filter((id) => id !== null),
    ),
  );
}

/**
 * As somebody sees it who sees the board like this; null when its painting is not for them.
 *
 * @param names Of those who are not on the board's own lists; the board itself says how its people are called here.
 */
export function askSeen(ask: Ask, board: BoardView, names: ReadonlyMap<string, string>): AskSeen | null {
  const states = statesOf(board.pictures, ask.pictureId);
  const newest = states.at(-1);
  if (!newest) return null;
  const here = [...board.pictures.map(({ painter }) => painter), ...board.members, board.owner, board.me];
  const nameOf = (id: string) => here.find((each) => each.id === id)?.name ?? names.get(id) ?? '';
  const person = (id: string | null): PersonView | null => (id === null ? null : { id, name: nameOf(id) });
  const view = {
    ...{ id: ask.id, askedAbout: ask.pictureId, pictureId: newest.id },
    askedBy: { id: ask.askedById, name: nameOf(ask.askedById) },
    askedOf: person(ask.askedOfId),
    words: ask.words,
    askedAt: ask.askedAt.toISOString(),
    promisedFor: ask.promisedFor,
    promisedBy: person(ask.promisedById),
    answeredAt: ask.answeredAt?.toISOString() ?? null,
    answeredBy: person(ask.answeredById),
  };
  return { view, states };
}

/** Whose painting it is that a look was asked for, as seen by who acts. */
export async function askRelation(
  boardId: string,
  personId: string,
  ask: Pick<Ask, 'askedById'>,
): Promise<Relation> {
  if (ask.askedById === personId) return 'own';
  const guarded = (await guardianshipsOn(boardId)).some((row) => {
    return row.wardId === ask.askedById && row.guardianId === personId;
  });
  return guarded ? 'ward' : 'other';
}

/** What was asked for on a board and is this person's to see: of each painting the newest asking. @param board As they see it. */
export async function asksSeen(board: BoardView): Promise<AskView[]> {
  const asks = await asksOn([board.id]);
  const names = await peopleIn(asks);
  const newest = new Map<string, AskView>();
  for (const ask of asks) {
    const seen = askSeen(ask, board, names);
    if (!seen) continue;
    if (may(board.role, 'ask.see', await askRelation(board.id, board.me.id, ask)))
      newest.set(seen.view.pictureId, seen.view);
  }
  return [...newest.values()];
}
