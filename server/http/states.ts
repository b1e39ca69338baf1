/**
 * What handlers about the states of a painting share: who asks, what they see, what they may change.
 *
 * In the flow: handlers -> [states] -> access, services. IO: the database, the main process.
 */
import { boardAsSeen } from '../access/consent.ts';
import { paintingStates, type StateDesk } from '../access/states.ts';
import type { BoardView, PictureView } from '../core/contract/responses.ts';
import type { Outline } from '../core/contract/setup.ts';
import type { StatePair } from '../core/contract/states.ts';
import type { Matrix3 } from '../core/geometry/matrix3.ts';
import { readPaintingOutlines } from '../core/live/outlines.ts';
import { readPhoto } from '../core/live/painting.ts';
import type { Writer } from '../core/live/permission.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { carriedOutlines } from '../core/states/carried-outlines.ts';
import { readDocument } from '../store/live-documents.ts';
import { pictureNotFound } from './picture-not-found.ts';
import { services } from './services.ts';
import { refuseVeiled } from './veil.ts';
import { boardNotFound, type OnBoard, visitorOnBoard } from './visitor.ts';

/** As the main process answers. */
export const stateDesk: StateDesk = {
  measuresOf: (boardId, pictureId) => services().measuresOf(boardId, pictureId),
  compared: (pair) => services().statesCompared(pair),
};

export interface SeenPainting {
  board: BoardView;
  by: OnBoard;
  /** Oldest first, at least one. */
  states: PictureView[];
  /** The one that was asked about. */
  state: PictureView;
}

/**
 * @throws Problem 'not-entered', 'board-not-found', 'picture-not-found'; 'not-yet' while a class keeps figures back.
 */
export async function seenPainting(
  request: Request,
  boardId: string,
  pictureId: string,
): Promise<SeenPainting> {
  const by = await visitorOnBoard(request, boardId);
  await refuseVeiled(boardId);
  const board = await boardAsSeen(boardId, by.visitor, by.role);
  if (!board) throw boardNotFound();
  const states = paintingStates(board, pictureId);
  const state = states.find(({ id }) => id === pictureId);
  if (!state) throw pictureNotFound();
  return { board, by, states, state };
}

/** The state with the one before it, or the earlier one that is named. @throws Problem 'picture-not-found' where there is none. */
export function pairOf({ board, states, state }: SeenPainting, earlierId: string | null): StatePair {
  const at = states.indexOf(state);
  const earlier = states.slice(0, at).find(({ id }) => id === earlierId) ?? null;
  const before = earlierId === null ? states[at - 1] : earlier;
  if (!before) throw pictureNotFound();
  return { boardId: board.id, earlierId: before.id, laterId: state.id };
}

/** The caller, as the painting's room judges them. */
export function writerOn({ by, state }: SeenPainting): Writer {
  const { visitor, role } = by;
  return { personId: visitor.personId, role, paints: state.painter.id === visitor.personId };
}

/**
 * Outlines of the earlier state laid on the later one, of planes that have none there.
 *
 * @throws Problem 'planes-missing' where there is nothing to take over.
 */
export async function carriedFromLast(
  { boardId, earlierId, laterId }: StatePair,
  toLater: Matrix3,
): Promise<Map<string, Outline>> {
  const [earlier, later] = await Promise.all([
    readDocument(boardId, `painting/${earlierId}`),
    readDocument(boardId, `painting/${laterId}`),
  ]);
  const there = readPaintingOutlines(later);
  const missing = [...readPaintingOutlines(earlier)].filter(([planeId]) => !there.has(planeId));
  if (missing.length === 0) {
    throw new Problem(
      'planes-missing',
      say`The last state has no planes that this one lacks, so there is nothing to take over.`,
    );
  }
  return carriedOutlines(new Map(missing), readPhoto(earlier), readPhoto(later), toLater);
}
