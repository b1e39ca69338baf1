/** Homework that a handler is about to change or to have answered, found among what its caller may know of. IO: the database. */
import { boardAsSeen } from '../access/consent.ts';
import { homeworkRelation } from '../access/homework.ts';
import { MOST_HOMEWORK_DAYS } from '../core/contract/homework.ts';
import type { PictureFields } from '../core/contract/requests.ts';
import type { BoardView } from '../core/contract/responses.ts';
import { dayAfter, dayOf } from '../core/own-time/days.ts';
import { statesOf } from '../core/own-time/states.ts';
import { may } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { answerHomework, findHomework, type Homework } from '../store/homework.ts';
import { boardNotFound, type OnBoard, refuseUnlessMay } from './visitor.ts';

/**
 * @throws Problem 'homework-not-found' alike for none, one that was taken back, and one that is not theirs to know of.
 */
export async function homeworkFor(
  { visitor, role }: OnBoard,
  boardId: string,
  homeworkId: string,
): Promise<{ board: BoardView; homework: Homework }> {
  const homework = await findHomework(boardId, homeworkId);
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) throw boardNotFound();
  if (!homework || statesOf(board.pictures, homework.pictureId).length === 0) throw homeworkNotFound();
  const relation = await homeworkRelation(boardId, visitor.personId, homework);
  if (!may(role, 'homework.see', relation)) throw homeworkNotFound();
  return { board, homework };
}

function homeworkNotFound(): Problem {
  return new Problem(
    'homework-not-found',
    say`There is no such homework here; it may have been taken back. Load the board again.`,
  );
}

/** @throws Problem 'homework-settled' unless it was still open. */
export function refuseClosed(wasOpen: boolean): void {
  if (wasOpen) return;
  throw new Problem(
    'homework-settled',
    say`This homework is closed or was taken back. Load the board again.`,
  );
}

/** The server's day may be ahead of the browser's by one, so yesterday passes. @throws Problem 'bad-request'. */
export function refuseFarDay(day: string, now = new Date()): void {
  const today = dayOf(now);
  if (day >= dayAfter(today, -1) && day <= dayAfter(today, MOST_HOMEWORK_DAYS)) return;
  throw new Problem(
    'bad-request',
    say`Homework is set for a day between today and a year from now, and ${day} is not. Choose another day.`,
  );
}

/** A picture that answers homework: the fields it is taken in with, and what is done once it is there. */
export interface Answering {
  fields: PictureFields;
  settle(pictureId: string): Promise<void>;
}

/**
 * Whether a picture may answer the homework it names, and which state it then follows. One that names none stays as it is.
 *
 * @throws Problem 'homework-not-found', 'homework-settled', 'not-allowed', 'bad-request' for a reference.
 */
export async function answering(by: OnBoard, boardId: string, fields: PictureFields): Promise<Answering> {
  if (fields.homework === undefined) return { fields, settle: async () => undefined };
  const { board, homework } = await homeworkFor(by, boardId, fields.homework);
  const relation = homework.painterId === by.visitor.personId ? 'own' : 'other';
  refuseUnlessMay(
    by.role,
    'homework.answer',
    say`Only the painter whose homework it is answers it.`,
    relation,
  );
  if (fields.kind !== 'painting') {
    throw new Problem('bad-request', say`Homework is answered with a painting. Post this picture as one.`);
  }
  refuseClosed(homework.closedAt === null);
  const newest = statesOf(board.pictures, homework.pictureId).at(-1);
  const follows = homework.answerAs === 'state' ? newest?.id : undefined;
  return {
    fields: follows === undefined ? withoutFollows(fields) : { ...fields, follows },
    // Closed in the meantime: the picture is on the board all the same.
    settle: async (pictureId) => {
      await answerHomework(homework.id, pictureId);
    },
  };
}

function withoutFollows({ follows: _, ...fields }: PictureFields): PictureFields {
  return fields;
}
