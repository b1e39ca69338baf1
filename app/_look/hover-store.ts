/** The value under the hand, kept outside React so that a moving hand redraws one small mark. Pure but for its memory. */
export interface Hovered {
  pictureId: string;
  /** 0..10. */
  step: number;
}

export class HoverStore {
  #hovered: Hovered | null = null;
  readonly #listeners = new Set<() => void>();

  get = (): Hovered | null => this.#hovered;

  set(hovered: Hovered | null): void {
    if (hovered === this.#hovered) return;
    this.#hovered = hovered;
    for (const listener of this.#listeners) listener();
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}
