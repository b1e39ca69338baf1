/** One task at a time, and of those that wait only the newest. In the flow: hand -> [newest-next] -> worker. */
export class NewestNext {
  #busy = false;
  #next: (() => Promise<void>) | null = null;

  /** @param task Handles its own errors. */
  run(task: () => Promise<void>): void {
    this.#next = task;
    void this.#go();
  }

  async #go(): Promise<void> {
    if (this.#busy || !this.#next) return;
    this.#busy = true;
    const task = this.#next;
    this.#next = null;
    try {
      await task();
    } finally {
      this.#busy = false;
      void this.#go();
    }
  }
}
