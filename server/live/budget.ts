/**
 * An allowance that refills with time: so many at once, so many a second.
 *
 * Pure: the clock comes in as an argument.
 */
export class Budget {
  readonly #perSecond: number;
  readonly #atOnce: number;
  #left: number;
  #thenMs: number;

  constructor(perSecond: number, atOnce: number, nowMs: number) {
    this.#perSecond = perSecond;
    this.#atOnce = atOnce;
    this.#left = atOnce;
    this.#thenMs = nowMs;
  }

  /** Takes an amount. @returns False when the allowance does not reach; then it counts as used up. */
  spend(amount: number, nowMs: number): boolean {
    const refilled = this.#left + ((nowMs - this.#thenMs) / 1000) * this.#perSecond;
    this.#left = Math.min(this.#atOnce, refilled) - amount;
    this.#thenMs = nowMs;
    return this.#left >= 0;
  }
}
