'use client';
/**
 * The phrases of the person at this screen: fetched when they are first asked for, changed here and on the server alike.
 *
 * In the flow: /api/phrases -> [phrase-store] -> phrase list, phrase book. IO: HTTP.
 */
import { useSyncExternalStore } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { changePhrase, fetchPhrases, forgetPhrase, keepPhrase } from '#app/_api/own-time.ts';
import type { PhraseView } from '#server/core/contract/own-time.ts';

interface PhrasesNow {
  /** Null until they have come. */
  phrases: readonly PhraseView[] | null;
  /** The server's sentence when the last change was refused. */
  trouble: string | null;
  /** Whether the book is open in which phrases are changed. */
  bookOpen: boolean;
}

class PhraseStore {
  #now: PhrasesNow = { phrases: null, trouble: null, bookOpen: false };
  readonly #listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly now = (): PhrasesNow => this.#now;

  load(): void {
    if (this.#now.phrases === null) void this.#do(async () => undefined);
  }

  keep(words: string): Promise<boolean> {
    return this.#do(() => keepPhrase(words));
  }

  rewrite(id: string, words: string): Promise<boolean> {
    return this.#do(() => changePhrase(id, { words }));
  }

  /** @param by −1 = one place up, 1 = one down. */
  move(id: string, by: -1 | 1): Promise<boolean> {
    const phrases = this.#now.phrases ?? [];
    const at = phrases.findIndex((phrase) => phrase.id === id);
    const before = phrases[by < 0 ? at - 1 : at + 2]?.id ?? null;
    return this.#do(() => changePhrase(id, { before }));
  }

  forget(id: string): Promise<boolean> {
    return this.#do(() => forgetPhrase(id));
  }

  openBook(bookOpen: boolean): void {
    this.#set({ bookOpen, trouble: null });
  }

  /** Changes something, then reads the whole list again: another window of this person may have changed it too. */
  async #do(act: () => Promise<unknown>): Promise<boolean> {
    try {
      await act();
      this.#set({ phrases: await fetchPhrases(), trouble: null });
      return true;
    } catch (thrown) {
      this.#set({ trouble: sentenceOf(thrown) });
      return false;
    }
  }

  #set(change: Partial<PhrasesNow>): void {
    this.#now = { ...this.#now, ...change };
    for (const listener of this.#listeners) listener();
  }
}

/** By person, so that nobody who signs in on the same page later finds another's. */
const stores = new Map<string, PhraseStore>();

export function usePhrases(personId: string): PhrasesNow & { store: PhraseStore } {
  const store = stores.get(personId) ?? new PhraseStore();
  stores.set(personId, store);
  const now = useSyncExternalStore(store.subscribe, store.now, store.now);
  return { ...now, store };
}

let saidLast = '';

/** Remembers what was just said, so that it can be kept as a phrase. */
export function noteSaid(words: string): void {
  saidLast = words;
}

export function lastSaid(): string {
  return saidLast;
}
