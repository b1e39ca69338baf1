/** Phrases that one person keeps for themselves: every statement here names that person. IO: the database. */
import { randomUUID } from 'node:crypto';
import type { PhraseView } from '../core/contract/own-time.ts';
import { MOST_PHRASES } from '../core/contract/own-time-limits.ts';
import { database } from './database.ts';

const ORDER = [{ place: 'asc' }, { createdAt: 'asc' }, { id: 'asc' }] as const;

export async function listPhrases(personId: string): Promise<PhraseView[]> {
  return database().phrase.findMany({
    where: { personId },
    orderBy: [...ORDER],
    select: { id: true, words: true },
  });
}

/** Adds a phrase at the end. @returns Its id, or null when the person keeps as many as there may be. */
export async function addPhrase(personId: string, words: string): Promise<string | null> {
  return database().$transaction(async (store) => {
    const { _count, _max } = await store.phrase.aggregate({
      where: { personId },
      _count: true,
      _max: { place: true },
    });
    if (_count >= MOST_PHRASES) return null;
    const id = randomUUID();
    await store.phrase.create({ data: { id, personId, words, place: (_max.place ?? 0) + 1 } });
    return id;
  });
}

/** @returns False when the person has no such phrase. */
export async function rewritePhrase(personId: string, phraseId: string, words: string): Promise<boolean> {
  return (
    (await database().phrase.updateMany({ where: { id: phraseId, personId }, data: { words } })).count === 1
  );
}

/** Puts a phrase before another, or at the end. @returns False when the person has not both. */
export async function movePhrase(
  personId: string,
  phraseId: string,
  beforeId: string | null,
): Promise<boolean> {
  return database().$transaction(async (store) => {
    const rows = await store.phrase.findMany({
      where: { personId },
      orderBy: [...ORDER],
      select: { id: true },
    });
    const ids = rows.map(({ id }) => id);
    const known = ids.includes(phraseId) && (beforeId === null || ids.includes(beforeId));
    if (!known) return false;
    const others = ids.filter((id) => id !== phraseId);
    const at = beforeId === null || beforeId === phraseId ? ids.length : others.indexOf(beforeId);
    const ordered = beforeId === phraseId ? ids : others.toSpliced(at, 0, phraseId);
    for (const [place, id] of ordered.entries())
      await store.phrase.update({ where: { id }, data: { place } });
    return true;
  });
}

/** @returns False when the person has no such phrase. */
export async function removePhrase(personId: string, phraseId: string): Promise<boolean> {
  return (await database().phrase.deleteMany({ where: { id: phraseId, personId } })).count === 1;
}
