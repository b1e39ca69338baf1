/**
 * The one view of the easel, kept outside React so that panning with hundreds of marks only moves a layer.
 *
 * In the flow: hands and keys -> [view-store] -> every stage places its sheet. Pure but for its own memory.
 */
import { type Size, type View, WHOLE } from './view-transform.ts';

export class ViewStore {
  #view: View = WHOLE;
  readonly #listeners = new Set<() => void>();

  get = (): View => this.#view;

  set(view: View): void {
    this.#view = view;
    for (const listener of this.#listeners) listener();
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}

/** How far one press of a key moves or zooms. */
export const KEY_PAN_PX = 60;
export const KEY_ZOOM = 1.25;

/** What zooming and panning by key does to a view; null for every other key. */
export function keyStep(key: string): { dx: number; dy: number; factor: number } | 'whole' | null {
  switch (key) {
    case '0':
      return 'whole';
    case '+':
    case '=':
      return { dx: 0, dy: 0, factor: KEY_ZOOM };
    case '-':
      return { dx: 0, dy: 0, factor: 1 / KEY_ZOOM };
    case 'ArrowLeft':
      return { dx: KEY_PAN_PX, dy: 0, factor: 1 };
    case 'ArrowRight':
      return { dx: -KEY_PAN_PX, dy: 0, factor: 1 };
    case 'ArrowUp':
      return { dx: 0, dy: KEY_PAN_PX, factor: 1 };
    case 'ArrowDown':
      return { dx: 0, dy: -KEY_PAN_PX, factor: 1 };
    default:
      return null;
  }
}

/** The middle of a window, for zooming by key. */
export const middleOf = (window: Size) => ({ x: window.width / 2, y: window.height / 2 });
