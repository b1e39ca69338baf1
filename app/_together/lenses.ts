/**
 * How each picture on the easel lies on this screen just now, for whoever shares a view of it.
 *
 * In the flow: stages -> [lenses] -> use-look-together. Pure but for its own memory.
 */
import type { Lens } from './look-view.ts';

export class Lenses {
  readonly #lenses = new Map<string, Lens>();
  readonly #listeners = new Set<() => void>();

  get(pictureId: string): Lens | null {
    return this.#lenses.get(pictureId) ?? null;
  }

  set(pictureId: string, lens: Lens): void {
    this.#lenses.set(pictureId, lens);
    for (const listener of this.#listeners) listener();
  }

  delete(pictureId: string): void {
    this.#lenses.delete(pictureId);
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}
