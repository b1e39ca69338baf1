/**
 * What this person did in a room that was not sent yet: by entry, so that pulling one outline ten times is one thing.
 *
 * In the flow: edit without a line -> [waiting] -> the line under the header, and the words kept when access has ended.
 * IO: remembers the entries beside the room's copy, so that they count after the page was closed.
 */
import type * as Y from 'yjs';
import { touchedEntries } from '#server/core/live/effect.ts';
import { type CopyPlace, waitingKeyOf } from './room-copies.ts';

/** What was sent longer ago than this has arrived, or its line was found dead meanwhile. */
const DOUBTFUL_MS = 60_000;

export class Waiting {
  readonly #key: string;
  #entries = new Set<string>();
  /** Entries written onto a line that seemed to be up → when, in ms. */
  readonly #written = new Map<string, number>();

  constructor(place: CopyPlace) {
    this.#key = waitingKeyOf(place);
  }

  /** Root key and entry of each, as "marks/<id>"; a text alone by its root key. */
  get entries(): ReadonlySet<string> {
    return this.#entries;
  }

  /** Takes up what a copy holds that was not sent when its page was closed. */
  recall(): void {
    try {
      const kept: unknown = JSON.parse(localStorage.getItem(this.#key) ?? '[]');
      if (Array.isArray(kept)) this.#entries = new Set(kept.filter((each) => typeof each === 'string'));
    } catch {
      // Nothing kept, or nothing that can be read.
    }
  }

  /** Counts an edit made without a line. */
  add(doc: Y.Doc, transaction: Y.Transaction): void {
    this.#addAll(entriesIn(doc, transaction));
  }

  /** Remembers an edit that was written onto the line at that time. */
  wrote(doc: Y.Doc, transaction: Y.Transaction, nowMs: number): void {
    for (const [entry, atMs] of this.#written) {
      if (nowMs - atMs > DOUBTFUL_MS) this.#written.delete(entry);
    }
    for (const entry of entriesIn(doc, transaction)) this.#written.set(entry, nowMs);
  }

  /** The line was found dead: what was written onto it after its last sign of life waits still. */
  lineDied(lastHeardMs: number): void {
    this.#addAll([...this.#written].flatMap(([entry, atMs]) => (atMs >= lastHeardMs ? [entry] : [])));
    this.#written.clear();
  }

  /** The line is back and all of it goes out now; whether it arrives will be seen. */
  goesOut(nowMs: number): void {
    for (const entry of this.#entries) this.#written.set(entry, nowMs);
    this.#entries = new Set();
    this.#keep();
  }

  /** What waits, and what went out so lately that an answer may still come: for words that were not taken. */
  doubtful(sinceMs: number): Set<string> {
    const lately = [...this.#written].flatMap(([entry, atMs]) => (atMs >= sinceMs ? [entry] : []));
    return new Set([...this.#entries, ...lately]);
  }

  /** The document was dropped, and all of this with it. */
  clear(): void {
    this.#entries = new Set();
    this.#written.clear();
    this.#keep();
  }

  #addAll(entries: Iterable<string>): void {
    const before = this.#entries.size;
    for (const entry of entries) this.#entries.add(entry);
    if (this.#entries.size > before) this.#keep();
  }

  #keep(): void {
    try {
      if (this.#entries.size > 0) localStorage.setItem(this.#key, JSON.stringify([...this.#entries]));
      else localStorage.removeItem(this.#key);
    } catch {
      // Then it counts as long as the page is open.
    }
  }
}

function entriesIn(doc: Y.Doc, transaction: Y.Transaction): string[] {
  return (touchedEntries(doc, transaction) ?? []).map(({ root, key }) =>
    key === null ? root : `${root}/${key}`,
  );
}
