/**
 * Undo and redo of one person's own steps, over all open rooms in the order in which they were made.
 *
 * Each document has its own undo manager; this keeps the order between them. Only edits with the given origin
 * are steps, so nobody takes back what somebody else did. Pure but for its own memory.
 */
import * as Y from 'yjs';

/** The rooms that one step was made in, in the order in which it went through them. */
type Step = Y.UndoManager[];

export class StepHistory {
  readonly #origin: unknown;
  readonly #changed: () => void;
  readonly #managers = new Map<Y.Doc, Y.UndoManager>();
  #done: Step[] = [];
  #undone: Step[] = [];
  #replaying = false;
  #gathered: Step | null = null;

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
      if (this.#gathered) this.#gathered.push(manager);
      else this.#done.push([manager]);
      for (const other of this.#undone.flat()) other.clear(false, true);
      this.#undone = [];
      this.#changed();
    });
    this.#managers.set(doc, manager);
  }

  /** Whatever `act` writes, in however many rooms, is one step. */
  together<T>(act: () => T): T {
    if (this.#gathered) return act();
    const gathered: Step = [];
    this.#gathered = gathered;
    try {
      return act();
    } finally {
      this.#gathered = null;
      if (gathered.length > 0) this.#done.push(gathered);
      this.#changed();
    }
  }

  forget(doc: Y.Doc): void {
    const manager = this.#managers.get(doc);
    if (!manager) return;
    this.#managers.delete(doc);
    this.#done = without(this.#done, manager);
    this.#undone = without(this.#undone, manager);
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
  #replay(from: Step[], to: Step[], replay: (manager: Y.UndoManager) => unknown): void {
    this.#replaying = true;
    try {
      for (let step = from.pop(); step; step = from.pop()) {
        const changed = [...step].reverse().filter((manager) => replay(manager) !== null);
        if (changed.length === 0) continue;
        to.push(changed);
        break;
      }
    } finally {
      this.#replaying = false;
    }
    this.#changed();
  }
}

function without(steps: readonly Step[], manager: Y.UndoManager): Step[] {
  return steps.map((step) => step.filter((other) => other !== manager)).filter((step) => step.length > 0);
}
