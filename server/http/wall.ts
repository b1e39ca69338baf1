/**
 * The wall for whoever asks: what they may see of it, with what a running class keeps back.
 *
 * In the flow: handlers and page -> [wall] -> access, services. IO: the database, the main process.
 */
import { randomUUID } from 'node:crypto';
import { hungPicture, wallAsSeen, workOf } from '../access/wall.ts';
import type { OneThing, WallView, WallWork } from '../core/contract/wall.ts';
import { say } from '../core/say/say.ts';
import { pictureNotFound } from './picture-not-found.ts';
import { services } from './services.ts';
import { boardNotFound, type OnBoard, refuseUnlessMay } from './visitor.ts';

/** @throws Problem 'board-not-found' when it went meanwhile. */
export async function wallFor(boardId: string, { visitor, role }: OnBoard): Promise<WallView> {
  const wall = await wallAsSeen(boardId, visitor, role);
  if (!wall) throw boardNotFound();
  return { ...wall, veiled: await services().isVeiled(boardId) };
}

/** @throws Problem 'picture-not-found' for what does not hang there for them. */
export async function workFor(
  boardId: string,
  pictureId: string,
  { visitor, role }: OnBoard,
): Promise<WallWork> {
  if (!(await hungPicture(boardId, visitor, role, pictureId))) throw pictureNotFound();
  return workOf(boardId, pictureId, !(await services().isVeiled(boardId)));
}

/**
 * Puts one thing to try on a painting, as a remark in the caller's name.
 *
 * @throws Problem 'picture-not-found' as above; 'not-allowed' for who may make no marks; 'live-not-allowed' where the
 *   class lets nobody mark just now.
 */
export async function sayOneThing(
  boardId: string,
  pictureId: string,
  { text, at }: OneThing,
  { visitor, role }: OnBoard,
): Promise<{ id: string }> {
  refuseUnlessMay(
    role,
    'room.mark',
    say`Who looks on here makes no remarks; painters, peers and teachers do.`,
    'own',
  );
  if (!(await hungPicture(boardId, visitor, role, pictureId))) throw pictureNotFound();
  const id = randomUUID();
  const mark = { id, author: visitor.personId, pictureId, kind: 'pin' as const, points: [at], text };
  await services().markMade(
    boardId,
    { personId: visitor.personId, role, paints: false },
    { ...mark, planeId: null, parent: null, at: Date.now() },
  );
  return { id };
}
