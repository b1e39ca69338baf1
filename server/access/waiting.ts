/**
 * What waits for one person, in short, and what they asked for themselves: for the page of boards.
 *
 * In the flow: home page -> [waiting] -> asks, consent. IO: the database.
 */
import type { OwnAsk, WaitingView } from '../core/contract/own-time.ts';
import type { BoardListItem } from '../core/contract/responses.ts';
import { may } from '../core/permissions/may.ts';
import { asksOf, asksOn } from '../store/asks.ts';
import { askSeen, peopleIn } from './asks.ts';
import { SeenBoards } from './seen-boards.ts';
import type { Visitor } from './session.ts';

const FORTNIGHT_MS = 14 * 24 * 60 * 60 * 1000;

/** @param boards All boards of the person. */
export async function waitingFor(
  visitor: Visitor,
  boards: readonly BoardListItem[],
  now = new Date(),
): Promise<WaitingView> {
  // Nothing here that a class keeps back is read.
  const seen = new SeenBoards(visitor, boards, async () => false);
  const taught = boards.filter(({ role }) => may(role, 'queue.see')).map(({ id }) => id);
  const asks = (await asksOn(taught, 'waiting')).filter(({ askedOfId }) => {
    return askedOfId === null || askedOfId === visitor.personId;
  });
  let count = 0;
  let firstDay: string | null = null;
  for (const ask of asks) {
    const on = await seen.board(ask.boardId);
    if (!on || !askSeen(ask, on.board, new Map())) continue;
    count++;
    if (ask.promisedFor !== null && (firstDay === null || ask.promisedFor < firstDay))
      firstDay = ask.promisedFor;
  }
  return { teaches: taught.length > 0, count, firstDay, own: await ownAsks(visitor, seen, now) };
}

/** Of each painting the newest asking that the person may still see. */
async function ownAsks({ personId }: Visitor, seen: SeenBoards, now: Date): Promise<OwnAsk[]> {
  const asks = await asksOf(personId, new Date(now.getTime() - FORTNIGHT_MS));
  const names = await peopleIn(asks);
  const newest = new Map<string, OwnAsk>();
  for (const ask of asks) {
    const on = await seen.board(ask.boardId);
    const view = on && askSeen(ask, on.board, names)?.view;
    if (on && view && !newest.has(view.pictureId))
      newest.set(view.pictureId, { ask: view, board: { id: on.board.id, title: on.board.title } });
  }
  return [...newest.values()];
}
