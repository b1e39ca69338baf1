/**
 * Undo and redo of one person's own steps, over all open rooms in the order in which they were made.
 *
 * Each document has its own undo manager; this keeps the order between them. Only edits with the given origin
 * are steps, so nobody takes back what somebody else did. Pure but for its own memory.
 */
import * as Y from 'yjs';

export class StepHistory {
  readonly #origin: unknown;
  readonly #changed: () => void;
  readonly #managers = new Map<Y.Doc, Y.UndoManager>();
  #done: Y.UndoManager[] = [];
  #undone: Y.UndoManager[] = [];
  #replaying = false;

  /** @param origin The transaction origin that marks a person's own edit. @param changed Called after every step. */
  constructor(origin: unknown, changed: () => void) {
    this.#origin = origin;
    this.#changed = changed;
  }

  get canUndo(): boolean {
    return this.#done.length > 0;
  }

  get canRedo(): boolean {
    return this.#undone.length > 0;
  }

  /** Follows these root types of a document. A document that is thrown away is dropped with `forget`. */
  follow(doc: Y.Doc, types: Y.Map<unknown>[]): void {
    const manager = new Y.UndoManager(types, { trackedOrigins: new Set([this.#origin]), captureTimeout: 0 });
    manager.on('stack-item-added', ({ type }) => {
      if (this.#replaying || type !== 'undo') return;
      this.#done.push(manager);
      for (const other of this.#undone) other.clear(false, true);
      this.#undone = [];
      this.#changed();
    });
    this.#managers.set(doc, manager);
  }

  forget(doc: Y.Doc): void {
    const manager = this.#managers.get(doc);
    if (!manager) return;
    this.#managers.delete(doc);
    this.#done = this.#done.filter((other) => other !== manager);
    this.#undone = this.#undone.filter((other) => other !== manager);
    manager.destroy();
    this.#changed();
  }

  undo(): void {
    this.#replay(this.#done, this.#undone, (manager) => manager.undo());
  }

  redo(): void {
    this.#replay(this.#undone, this.#done, (manager) => manager.redo());
  }

  /** Replays the newest step that still changes something; steps that others have overtaken are passed over. */
  #replay(from: Y.UndoManager[], to: Y.UndoManager[], step: (manager: Y.UndoManager) => unknown): void {
    this.#replaying = true;
    try {
      for (let manager = from.pop(); manager; manager = from.pop()) {
        if (step(manager) === null) continue;
        to.push(manager);
        break;
      }
    } finally {
      this.#replaying = false;
    }
    this.#changed();
  }
}
