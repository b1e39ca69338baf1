/**
 * What the hand does on a picture with the chosen tool. Points are 0..1 of the upright original. Pure.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';

export interface HandPoint {
  point: FractionPoint;
  /** 0..1; 0.5 where the device tells nothing. */
  pressure: number;
  touch: boolean;
  /** True while Shift is held: no bending onto edges. */
  straight: boolean;
  /** One CSS pixel in 0..1 of what is shown, along x and y. */
  pixel: { x: number; y: number };
}

/** Distance of two points on the screen, in CSS pixels. */
export function pixelsApart(a: FractionPoint, b: FractionPoint, pixel: HandPoint['pixel']): number {
  return Math.hypot((a[0] - b[0]) / pixel.x, (a[1] - b[1]) / pixel.y);
}

/** How near the hand must come to take something: a fingertip is wider than the tip of an arrow. */
export const reachPx = (touch: boolean) => (touch ? 24 : 12);

/** A hand without a member leaves that gesture to the view. */
export interface Hand {
  cursor: string;
  /** Said to those who listen when the picture has the focus: which keys do what. */
  keysHint: string;
  tap?(at: HandPoint, twice: boolean): void;
  drag?: {
    /** Whether a drag that begins here is taken; else it moves the picture. */
    takes(at: HandPoint): boolean;
    start(at: HandPoint): void;
    move(at: HandPoint): void;
    end(): void;
    cancel(): void;
  };
  /** The place under the hand, or of the crosshair, while nothing is pressed; null when it leaves. */
  hover?(point: FractionPoint | null, straight: boolean): void;
  /** A key the tool takes for itself, with the place of the crosshair. @returns Whether it was taken. */
  key?(key: string, crosshair: FractionPoint, shift: boolean): boolean;
  /** Arrow keys move a crosshair instead of the picture. */
  crosshair: boolean;
}
