/**
 * Who made which mark, as the room knows it before an update: the shadow itself shows only what is after.
 *
 * Authors of removed marks are remembered while the room is open, so that a teacher who takes back a removal
 * puts the mark back in its author's name and in nobody else's. Pure apart from its own maps.
 */
import * as Y from 'yjs';

const REMEMBERED = 10_000;

export class MarkAuthors {
  readonly #present = new Map<string, string>();
  readonly #removed = new Map<string, string>();

  /** Reads all of a document. What was removed stays remembered. */
  learn(doc: Y.Doc): void {
    const marks = doc.getMap('marks');
    for (const id of this.#present.keys()) if (!marks.has(id)) this.note(id, undefined);
    for (const [id, entry] of marks) this.note(id, entry);
  }

  /** Takes down what a transaction put in or took away. */
  follow(doc: Y.Doc, transaction: Y.Transaction): void {
    const marks = doc.getMap('marks');
    for (const [type, ids] of transaction.changed) {
      if (!Object.is(type, marks)) continue;
      for (const id of ids) if (id !== null) this.note(id, marks.get(id));
    }
  }

  /** Takes down one entry as it is now; undefined = it is gone. */
  note(id: string, entry: unknown): void {
    const author = entry instanceof Y.Map ? entry.get('author') : undefined;
    if (typeof author === 'string') {
      this.#present.set(id, author);
      return;
    }
    const before = this.#present.get(id);
    if (before === undefined) return;
    this.#present.delete(id);
    if (this.#removed.size >= REMEMBERED) this.#removed.clear();
    this.#removed.set(id, before);
  }

  /** The author of a mark that was on the board before the update. */
  of(id: string): string | undefined {
    return this.#present.get(id);
  }

  /** The author of a mark that was removed while the room was open. */
  ofRemoved(id: string): string | undefined {
    return this.#removed.get(id);
  }

  get count(): number {
    return this.#present.size;
  }
}
