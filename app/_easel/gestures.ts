/**
 * From pointers to gestures: taps, drags, pans and pinches, for mouse, pen and fingers alike.
 *
 * In the flow: pointer events -> [gestures] -> the view, or what the hand holds. Two fingers always move the
 * picture; the middle button and a held space bar do so too. Holds only its own state; touches no DOM.
 */

export interface At {
  /** CSS pixels from the stage's top left. */
  x: number;
  y: number;
  /** 0..1; 0.5 where the device tells nothing. */
  pressure: number;
  touch: boolean;
  /** Whether Shift is held. */
  shift?: boolean;
}

/** What a stage does with gestures. */
export interface GestureTarget {
  /** Whether a drag with one finger or button belongs to what the hand holds; else it moves the picture. */
  takesDrag(start: At): boolean;
  tap(at: At, twice: boolean): void;
  dragStart(at: At): void;
  dragMove(at: At): void;
  dragEnd(at: At): void;
  dragCancel(): void;
  pan(dx: number, dy: number): void;
  zoom(factor: number, x: number, y: number): void;
  /** A quick sideways stroke of one finger over a picture that is shown whole. */
  swipe(towards: 'left' | 'right'): void;
}

const SLOP_PX = 5;
const TOUCH_SLOP_PX = 9;
const TWICE_MS = 350;
const TWICE_PX = 16;
const SWIPE_PX = 50;

type Mode = 'rest' | 'wait' | 'pan' | 'hand' | 'pinch';

export class Gestures {
  readonly #target: GestureTarget;
  readonly #fingers = new Map<number, At>();
  #mode: Mode = 'rest';
  #start: At = { x: 0, y: 0, pressure: 0.5, touch: false };
  #lastTap = { x: 0, y: 0, at: Number.NEGATIVE_INFINITY };

  constructor(target: GestureTarget) {
    this.#target = target;
  }

  /** @param forcePan True for the middle button or a held space bar. */
  down(id: number, at: At, forcePan: boolean): void {
    this.#fingers.set(id, at);
    if (this.#fingers.size === 2) {
      if (this.#mode === 'hand') this.#target.dragCancel();
      this.#mode = 'pinch';
      return;
    }
    this.#start = at;
    this.#mode = forcePan ? 'pan' : 'wait';
  }

  move(id: number, at: At): void {
    const before = this.#fingers.get(id);
    if (!before) return;
    if (this.#mode === 'pinch') this.#pinch(id, before, at);
    if (this.#mode === 'pan') this.#target.pan(at.x - before.x, at.y - before.y);
    if (this.#mode === 'hand') this.#target.dragMove(at);
    if (this.#mode === 'wait') this.#leaveRest(at);
    this.#fingers.set(id, at);
  }

  up(id: number, at: At, timeMs: number): void {
    if (!this.#fingers.delete(id)) return;
    const mode = this.#mode;
    if (this.#fingers.size === 0) this.#mode = 'rest';
    if (mode === 'hand') this.#target.dragEnd(at);
    if (mode === 'pan') this.#swipe(at);
    if (mode === 'wait') this.#tap(at, timeMs);
  }

  cancel(id: number): void {
    if (!this.#fingers.delete(id)) return;
    if (this.#mode === 'hand') this.#target.dragCancel();
    if (this.#fingers.size === 0) this.#mode = 'rest';
  }

  #leaveRest(at: At): void {
    const slop = at.touch ? TOUCH_SLOP_PX : SLOP_PX;
    if (Math.hypot(at.x - this.#start.x, at.y - this.#start.y) < slop) return;
    if (this.#target.takesDrag(this.#start)) {
      this.#mode = 'hand';
      this.#target.dragStart(this.#start);
      this.#target.dragMove(at);
    } else {
      this.#mode = 'pan';
      this.#target.pan(at.x - this.#start.x, at.y - this.#start.y);
    }
  }

  #tap(at: At, timeMs: number): void {
    const last = this.#lastTap;
    const twice = timeMs - last.at < TWICE_MS && Math.hypot(at.x - last.x, at.y - last.y) < TWICE_PX;
    this.#lastTap = { x: at.x, y: at.y, at: twice ? Number.NEGATIVE_INFINITY : timeMs };
    this.#target.tap(at, twice);
  }

  #swipe(at: At): void {
    const [dx, dy] = [at.x - this.#start.x, at.y - this.#start.y];
    if (!at.touch || Math.abs(dx) < SWIPE_PX || Math.abs(dx) < 2 * Math.abs(dy)) return;
    this.#target.swipe(dx < 0 ? 'left' : 'right');
  }

  #pinch(id: number, before: At, at: At): void {
    const other = [...this.#fingers].find(([key]) => key !== id)?.[1];
    if (!other) return;
    const wide = Math.hypot(before.x - other.x, before.y - other.y);
    const wider = Math.hypot(at.x - other.x, at.y - other.y);
    this.#target.pan((at.x - before.x) / 2, (at.y - before.y) / 2);
    if (wide > 0 && wider > 0) this.#target.zoom(wider / wide, (at.x + other.x) / 2, (at.y + other.y) / 2);
  }
}
