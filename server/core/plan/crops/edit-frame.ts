/**
 * Frames under the hand: moved whole, pulled by a corner or a side, put into another format.
 *
 * In the flow: hand or key -> [edit-frame] -> figures, kept frames. A frame never leaves the picture: what would is held
 * at its edge. Pure.
 */
import type { Box } from './crop-scene.ts';

/** Corners and sides by compass, north = top. */
export const FRAME_PARTS = ['nw', 'n', 'ne', 'e', 'se', 's', 'sw', 'w'] as const;
export type FramePart = (typeof FRAME_PARTS)[number];

/** No side of a frame becomes shorter than this share of the picture's: the hand shall find it again. */
export const LEAST_SIDE = 0.04;

/**
 * Proportion of a frame in shares of the picture. @param ratio width / height in pixels.
 * @param aspect width / height of the picture.
 */
export function shareRatio(ratio: number, aspect: number): number {
  return ratio / aspect;
}

const held = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** A frame moved whole. */
export function movedFrame([x0, y0, x1, y1]: Box, dx: number, dy: number): Box {
  const across = held(dx, -x0, 1 - x1);
  const down = held(dy, -y0, 1 - y1);
  return [x0 + across, y0 + down, x1 + across, y1 + down];
}

/** One side of a frame pulled freely: from `low` to `high`, one of them moved by `by`. */
function pulled([low, high]: readonly [number, number], end: -1 | 0 | 1, by: number): [number, number] {
  if (end < 0) return [held(low + by, 0, high - LEAST_SIDE), high];
  if (end > 0) return [low, held(high + by, low + LEAST_SIDE, 1)];
  return [low, high];
}

/** Which end of each axis a part moves: −1 left or top, 1 right or bottom, 0 neither. */
function endsOf(part: FramePart): { across: -1 | 0 | 1; down: -1 | 0 | 1 } {
  const across = part.includes('w') ? -1 : part.includes('e') ? 1 : 0;
  const down = part.includes('n') ? -1 : part.includes('s') ? 1 : 0;
  return { across, down };
}

/** Where a length lies whose fixed place is at its start, middle or end; and how long it may become there. */
function roomAt(
  [low, high]: readonly [number, number],
  end: -1 | 0 | 1,
): { most: number; from(length: number): number } {
  if (end < 0) return { most: high, from: (length) => high - length };
  if (end > 0) return { most: 1 - low, from: () => low };
  const middle = (low + high) / 2;
  return { most: 2 * Math.min(middle, 1 - middle), from: (length) => middle - length / 2 };
}

/**
 * A frame pulled by a corner or a side.
 *
 * @param ratio width / height in shares of the picture that is kept (`shareRatio`), or null = freely. Then a corner
 * follows the longer pull, and a side grows evenly about its middle.
 */
export function pulledFrame(
  box: Box,
  part: FramePart,
  [dx, dy]: readonly [number, number],
  ratio: number | null,
): Box {
  const { across, down } = endsOf(part);
  const [x0, x1] = pulled([box[0], box[2]], across, dx);
  const [y0, y1] = pulled([box[1], box[3]], down, dy);
  if (ratio === null) return [x0, y0, x1, y1];
  const wanted =
    across === 0 ? (y1 - y0) * ratio : down === 0 ? x1 - x0 : Math.max(x1 - x0, (y1 - y0) * ratio);
  const [x, y] = [roomAt([box[0], box[2]], across), roomAt([box[1], box[3]], down)];
  return fitted(x, y, wanted, ratio);
}

type Room = ReturnType<typeof roomAt>;

function fitted(x: Room, y: Room, wanted: number, ratio: number): Box {
  const least = LEAST_SIDE * Math.max(1, ratio);
  const width = held(wanted, Math.min(least, x.most, y.most * ratio), Math.min(x.most, y.most * ratio));
  const [left, top] = [Math.max(0, x.from(width)), Math.max(0, y.from(width / ratio))];
  return [left, top, Math.min(1, left + width), Math.min(1, top + width / ratio)];
}

/** A frame put into another proportion about its middle, as large as it was where there is room. */
export function refittedFrame([x0, y0, x1, y1]: Box, ratio: number): Box {
  const width = Math.min(1, ratio, Math.sqrt((x1 - x0) * (y1 - y0) * ratio));
  const height = width / ratio;
  const left = held((x0 + x1 - width) / 2, 0, 1 - width);
  const top = held((y0 + y1 - height) / 2, 0, 1 - height);
  return [left, top, Math.min(1, left + width), Math.min(1, top + height)];
}
