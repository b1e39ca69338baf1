/**
 * What lies ahead of the hand: the line to it, or the patches under it. Kept outside React, so that a moving hand
 * redraws one small layer. Pure but for its memory.
 */
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';

export interface Ahead {
  pictureId: string;
  /** From the last stop to the hand, or null. */
  line: readonly FractionPoint[] | null;
  /** Patches that would be, or are being, painted over. */
  shape: readonly Outline[];
  /** Whether the patches leave the plane. */
  away: boolean;
  /** The place that a fingertip covers, or null. */
  finger: FractionPoint | null;
}

export class AheadStore {
  #ahead: Ahead | null = null;
  readonly #listeners = new Set<() => void>();

  get = (): Ahead | null => this.#ahead;

  set(ahead: Ahead | null): void {
    if (ahead === this.#ahead) return;
    this.#ahead = ahead;
    for (const listener of this.#listeners) listener();
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}
