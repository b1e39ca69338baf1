/**
 * Asks one question at a time and the newest next, for answers that a moving hand overtakes.
 *
 * In the flow: a hand that moves -> [newest] -> a worker's line. Holds only what is under way.
 */
export class Newest {
  #busy = false;
  #next: (() => Promise<void>) | null = null;

  /** @param ask Asks and uses its answer. A question that fails is passed over. */
  run(ask: () => Promise<void>): void {
    this.#next = ask;
    if (!this.#busy) void this.#work();
  }

  /** What waits is no longer wanted. */
  forget(): void {
    this.#next = null;
  }

  async #work(): Promise<void> {
    this.#busy = true;
    for (let ask = this.#next; ask; ask = this.#next) {
      this.#next = null;
      try {
        await ask();
      } catch {
        // The hand has moved on; the next question tells again.
      }
    }
    this.#busy = false;
  }
}
