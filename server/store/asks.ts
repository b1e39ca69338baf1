/**
 * Looks that painters asked for. Who may ask, promise and answer is decided in access/ and http/. IO: the database.
 *
 * A painting has at most one asking that waits; asking again while one waits changes its words and keeps its place.
 */
import { randomUUID } from 'node:crypto';
import type { Ask } from '../../prisma/generated/client.ts';
import { database } from './database.ts';

export type { Ask };

export interface NewAsk {
  boardId: string;
  /** The newest state, which it is about. */
  pictureId: string;
  askedById: string;
  /** Null = any teacher. */
  askedOfId: string | null;
  words: string;
}

const WAITS = { answeredAt: null, withdrawnAt: null } as const;

/** @param states Every state of the painting. @returns Id of the asking that waits now. */
export async function addAsk(ask: NewAsk, states: readonly string[]): Promise<string> {
  return database().$transaction(async (store) => {
    // Two clicks at once become one asking: the second waits here for the first.
    await store.$queryRaw`SELECT "id" FROM "Picture" WHERE "id" = ${ask.pictureId} FOR UPDATE`;
    const waiting = await store.ask.findFirst({ where: { pictureId: { in: [...states] }, ...WAITS } });
    const { pictureId, askedOfId, words } = ask;
    if (!waiting) return (await store.ask.create({ data: { id: randomUUID(), ...ask } })).id;
    // A promise given by somebody else than who is asked now is theirs to give anew.
    const kept = askedOfId === null || askedOfId === waiting.promisedById;
    const promise = kept ? {} : { promisedFor: null, promisedById: null };
    await store.ask.update({ where: { id: waiting.id }, data: { pictureId, askedOfId, words, ...promise } });
    return waiting.id;
  });
}

/** All that was asked for on these boards and not withdrawn, oldest first. */
export async function asksOn(boardIds: readonly string[], only: 'waiting' | 'all' = 'all'): Promise<Ask[]> {
  return database().ask.findMany({
    where: { boardId: { in: [...boardIds] }, ...(only === 'waiting' ? WAITS : { withdrawnAt: null }) },
    orderBy: [{ askedAt: 'asc' }, { id: 'asc' }],
  });
}

/** What one person asked for and did not withdraw: what waits, and what was answered since a moment; newest first. */
export async function asksOf(personId: string, answeredSince: Date): Promise<Ask[]> {
  return database().ask.findMany({
    where: {
      askedById: personId,
      withdrawnAt: null,
      OR: [{ answeredAt: null }, { answeredAt: { gte: answeredSince } }],
    },
    orderBy: [{ askedAt: 'desc' }, { id: 'asc' }],
  });
}

/** Null when that board has none with this id, or it was withdrawn. */
export async function findAsk(boardId: string, askId: string): Promise<Ask | null> {
  return database().ask.findFirst({ where: { id: askId, boardId, withdrawnAt: null } });
}

/** @param day 'YYYY-MM-DD'; null takes the promise back. @returns False when it waits no longer. */
export async function promiseDay(askId: string, promisedById: string, day: string | null): Promise<boolean> {
  const data = { promisedFor: day, promisedById: day === null ? null : promisedById };
  return (await database().ask.updateMany({ where: { id: askId, ...WAITS }, data })).count === 1;
}

/** @returns False when it waits no longer. */
export async function answerAsk(askId: string, answeredById: string, at = new Date()): Promise<boolean> {
  const data = { answeredAt: at, answeredById };
  return (await database().ask.updateMany({ where: { id: askId, ...WAITS }, data })).count === 1;
}

/** @returns False when it waits no longer. */
export async function withdrawAsk(askId: string, at = new Date()): Promise<boolean> {
  return (
    (await database().ask.updateMany({ where: { id: askId, ...WAITS }, data: { withdrawnAt: at } })).count ===
    1
  );
}
