/**
 * Tells when this person's own hand changes what they look at, and not the one they look with.
 *
 * In the flow: tools, ways of looking, view -> [own-hand] -> together. Pure but for its own memory.
 */
export class OwnHand {
  /** When the hand last changed anything, ms; 0 = not yet. */
  lastMs = 0;
  #quiet = 0;
  readonly #listeners = new Set<() => void>();

  /** Something that is looked at changes now. */
  moved(): void {
    if (this.#quiet > 0) return;
    this.lastMs = Date.now();
    for (const listener of this.#listeners) listener();
  }

  /** Whatever `act` changes is not of this person's hand. */
  quietly(act: () => void): void {
    this.#quiet++;
    try {
      act();
    } finally {
      this.#quiet--;
    }
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}
