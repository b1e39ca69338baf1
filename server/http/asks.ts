/** An asking that a handler is about to change, found among what its caller may know of. IO: the database. */
import { askRelation } from '../access/asks.ts';
import { boardAsSeen } from '../access/consent.ts';
import { statesOf } from '../core/own-time/states.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { type Ask, findAsk } from '../store/asks.ts';
import { type OnBoard, visitorOnBoard } from './visitor.ts';

interface AskOnBoard extends OnBoard {
  ask: Ask;
  relation: Relation;
}

/**
 * The asking, and what its caller is to it.
 *
 * @throws Problem 'not-entered', 'board-not-found'; 'ask-not-found' alike for none, one that was withdrawn, and one about
 * a painting that is not for the caller to see.
 */
export async function askFor(request: Request, boardId: string, askId: string): Promise<AskOnBoard> {
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const ask = await findAsk(boardId, askId);
  const board = ask && (await boardAsSeen(boardId, visitor, role));
  if (!ask || !board || statesOf(board.pictures, ask.pictureId).length === 0) throw askNotFound();
  return { visitor, role, ask, relation: await askRelation(boardId, visitor.personId, ask) };
}

export function askNotFound(): Problem {
  return new Problem(
    'ask-not-found',
    say`No look is asked for under this id; it may have been withdrawn. Load the board again.`,
  );
}

/** @throws Problem 'ask-settled' unless it still waits. */
export function refuseSettled(waits: boolean): void {
  if (waits) return;
  throw new Problem(
    'ask-settled',
    say`This no longer waits: it was answered or withdrawn. Load the board again.`,
  );
}

/** Whether somebody with this role gives looks on a board. */
export function givesLooks(role: Parameters<typeof may>[0] | null): boolean {
  return role !== null && may(role, 'ask.answer');
}
