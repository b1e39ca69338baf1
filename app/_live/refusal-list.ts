/**
 * What the server took back from this person on one board: its sentences, and their own words as drafts.
 *
 * In the flow: live-room -> [refusal-list] -> board-store -> screen. IO: drafts are kept in this browser until the
 * person lays them aside, but not once their session has ended: somebody else may sit here next.
 */
import { uuidv4 } from 'lib0/random';
import { z } from 'zod/mini';
import { CLOSE } from '#server/core/live/wire.ts';
import type { Refusal } from './board-live-types.ts';
import { keepDraft, keptDraft } from './drafts.ts';
import type { LiveRoom, Rejected } from './live-room.ts';
import { lostWords, unsentWords } from './lost-words.ts';

const Kept = z.array(z.object({ id: z.string(), sentence: z.string(), draft: z.nullable(z.string()) }));

/** A refused document whose words are compared with the fresh one once that has come. */
interface Open extends Rejected {
  id: string;
}

export class RefusalList {
  list: readonly Refusal[] = [];
  readonly #draftKey: string;
  readonly #personId: string;
  readonly #open = new Map<LiveRoom, Open[]>();
  #recalled = false;

  constructor(boardId: string, personId: string) {
    this.#draftKey = `refused/${personId}/${boardId}`;
    this.#personId = personId;
  }

  /** Brings back what was kept when the page was last open. Once. */
  recall(): void {
    if (this.#recalled) return;
    this.#recalled = true;
    try {
      const kept = Kept.safeParse(JSON.parse(keptDraft(this.#draftKey) || '[]'));
      if (kept.success) this.list = [...kept.data, ...this.list];
    } catch {
      // Not ours to read.
    }
  }

  /** The server refused an edit: its sentence stands at once, the words follow when the fresh document is there. */
  refused(room: LiveRoom, rejected: Rejected): void {
    const id = uuidv4();
    this.list = [...this.list, { id, sentence: rejected.sentence, draft: null }];
    this.#open.set(room, [...(this.#open.get(room) ?? []), { ...rejected, id }]);
  }

  /** The room's document is there. @returns Whether anything changed on the screen. */
  arrived(room: LiveRoom): boolean {
    return this.#settle(room, ({ doc, unsent, code }) =>
      // After an erasure only what was never sent is given back: the rest was erased on purpose.
      code === CLOSE.epochOver
        ? unsentWords(doc, unsent, this.#personId)
        : lostWords(doc, room.doc, this.#personId),
    );
  }

  /** The room is shut: there is nothing to compare with, so the words are those that were never sent. */
  shut(room: LiveRoom, rejected: Rejected): void {
    const mayStay = rejected.code !== CLOSE.notEntered;
    const words = unsentWords(rejected.doc, rejected.unsent, this.#personId);
    if (words !== null) {
      const { sentence } = rejected;
      this.list = [...this.list, { id: uuidv4(), sentence, draft: words }];
    }
    this.#settle(room, ({ doc, unsent }) => unsentWords(doc, unsent, this.#personId), mayStay);
    if (mayStay) this.#keep();
  }

  dismiss(id: string): void {
    this.list = this.list.filter((refusal) => refusal.id !== id);
    this.#keep();
  }

  #settle(room: LiveRoom, wordsOf: (open: Open) => string | null, keep = true): boolean {
    const open = this.#open.get(room);
    if (!open) return false;
    this.#open.delete(room);
    for (const each of open) {
      const draft = wordsOf(each);
      this.list = this.list.map((refusal) => (refusal.id === each.id ? { ...refusal, draft } : refusal));
      each.doc.destroy();
    }
    if (keep) this.#keep();
    return true;
  }

  #keep(): void {
    const withWords = this.list.filter(({ draft }) => draft !== null);
    keepDraft(this.#draftKey, withWords.length > 0 ? JSON.stringify(withWords) : '');
  }
}
