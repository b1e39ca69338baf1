/**
 * A mark that grows under the hand, kept outside React so that a drawing hand redraws one line and nothing else. Pure
 * but for its memory.
 */
import type { MarkPaint } from '#server/core/live/layout.ts';
import type { Mark } from '#server/core/live/marks.ts';

export interface Growing {
  pictureId: string;
  kind: 'stroke' | 'arrow' | 'outline' | 'sketch';
  /** 0..1 of the upright original. */
  points: Mark['points'];
  /** Where the hand is, for the part that is not set yet; null = away. */
  ahead: Mark['points'][number] | null;
  /** True while a pen or finger draws it in one go. */
  drawn: boolean;
  /** Of a sketch. */
  paint: MarkPaint | null;
  finish(): void;
  back(): void;
  giveUp(): void;
}

export class GrowingStore {
  #growing: Growing | null = null;
  readonly #listeners = new Set<() => void>();

  get = (): Growing | null => this.#growing;

  set(growing: Growing | null): void {
    if (growing === this.#growing) return;
    this.#growing = growing;
    for (const listener of this.#listeners) listener();
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}
