/**
 * Homework: what to try by a day. Who may set, see and answer it is decided in access/ and http/. IO: the database.
 *
 * It stays with its painting when a state is taken back; `pictures.ts` hands it on.
 */
import { randomUUID } from 'node:crypto';
import type { Homework } from '../../prisma/generated/client.ts';
import type { AnswerAs } from '../core/contract/homework.ts';
import { database } from './database.ts';

export type { Homework };

export interface NewHomework {
  boardId: string;
  /** The newest state of the painting. */
  pictureId: string;
  painterId: string;
  setById: string;
  cardKey: string | null;
  words: string;
  check: string;
  /** 'YYYY-MM-DD'. */
  dueOn: string;
  answerAs: AnswerAs;
}

/** Neither taken back nor closed. */
const OPEN = { withdrawnAt: null, closedAt: null } as const;
const BY_DAY = [{ dueOn: 'asc' }, { setAt: 'asc' }, { id: 'asc' }] as const;

/** @returns Its id. */
export async function addHomework(homework: NewHomework): Promise<string> {
  return (await database().homework.create({ data: { id: randomUUID(), ...homework } })).id;
}

/** All that stands on a board, by day. */
export async function homeworkOn(boardId: string): Promise<Homework[]> {
  return database().homework.findMany({ where: { boardId, withdrawnAt: null }, orderBy: [...BY_DAY] });
}

/** What one person has to try or has set for others, and is open, on any board; by day. */
export async function openHomeworkOf(personId: string): Promise<Homework[]> {
  return database().homework.findMany({
    where: { ...OPEN, OR: [{ painterId: personId }, { setById: personId }] },
    orderBy: [...BY_DAY],
  });
}

/** Null when that board has none with this id, or it was taken back. */
export async function findHomework(boardId: string, homeworkId: string): Promise<Homework | null> {
  return database().homework.findFirst({ where: { id: homeworkId, boardId, withdrawnAt: null } });
}

/** @returns False when it is closed or was taken back. */
export async function moveHomework(id: string, dueOn: string): Promise<boolean> {
  return (await database().homework.updateMany({ where: { id, ...OPEN }, data: { dueOn } })).count === 1;
}

/** @param closedAt Null opens it again. @returns False when it was taken back. */
export async function closeHomework(id: string, closedAt: Date | null): Promise<boolean> {
  const where = { id, withdrawnAt: null };
  return (await database().homework.updateMany({ where, data: { closedAt } })).count === 1;
}

/** @returns False when it was taken back before. */
export async function withdrawHomework(id: string, at = new Date()): Promise<boolean> {
  const where = { id, withdrawnAt: null };
  return (await database().homework.updateMany({ where, data: { withdrawnAt: at } })).count === 1;
}

/** A picture is in; one that was in before stays on the board as a picture like any other. @returns False when it is not open. */
export async function answerHomework(
  id: string,
  answerId: string,
  answeredAt = new Date(),
): Promise<boolean> {
  const data = { answerId, answeredAt };
  return (await database().homework.updateMany({ where: { id, ...OPEN }, data })).count === 1;
}
