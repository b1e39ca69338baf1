/**
 * A view as others can share it, and back: the part of the picture that is seen, in the picture's own coordinates.
 *
 * In the flow: view + lens -> [look-view] -> presence -> [look-view] -> another screen's view. A screen of another shape
 * shows all of that part, and it stands in the middle. Pure.
 */
import type { Frame } from '#app/_easel/frame.ts';
import {
  placementOf,
  type Size,
  toFraction,
  type View,
  WHOLE,
  ZOOM_MOST,
} from '#app/_easel/view-transform.ts';
import type { Look } from '#server/core/live/look.ts';

/** How a picture lies on this screen. */
export interface Lens {
  window: Size;
  frame: Frame;
}

/** The part of the picture that is seen. */
export type Seen = Pick<Look, 'middle' | 'width' | 'height'>;

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** @returns Null while the window has no size yet. */
export function seenThrough(view: View, { window, frame }: Lens): Seen | null {
  const placement = placementOf(view, window, frame.size);
  if (placement.width === 0 || placement.height === 0) return null;
  const [left, top] = toFraction(placement, 0, 0);
  const [right, bottom] = toFraction(placement, window.width, window.height);
  const [x0, x1] = [clamp(left, 0, 1), clamp(right, 0, 1)];
  const [y0, y1] = [clamp(top, 0, 1), clamp(bottom, 0, 1)];
  return { middle: frame.original([(x0 + x1) / 2, (y0 + y1) / 2]), width: x1 - x0, height: y1 - y0 };
}

/** The view under which all of `seen` is seen, as large as the window allows. */
export function viewOf({ middle, width, height }: Seen, { window, frame }: Lens): View {
  const whole = placementOf(WHOLE, window, frame.size);
  if (whole.width === 0 || width === 0 || height === 0) return WHOLE;
  const zoom = Math.min(window.width / (width * whole.width), window.height / (height * whole.height));
  const [middleX, middleY] = frame.shown(middle);
  return {
    middleX: clamp(middleX, 0, 1),
    middleY: clamp(middleY, 0, 1),
    zoom: clamp(zoom, 1, ZOOM_MOST),
  };
}
