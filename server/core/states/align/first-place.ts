/**
 * About where one squared photograph lies on the other: every shift and size within what corners set by hand may be
 * off, tried on a small copy.
 *
 * In the flow: reliefs -> [first-place] -> refine. Plain correlation of what stands out; since repainted parts can
 * mislead it, several go on, and the place as squared always does. Pure.
 */
import type { Matrix3 } from '../../geometry/matrix3.ts';
import { type Relief, readBetween } from './relief.ts';

/** Farthest shift, as a share of each side, and the sizes tried. */
const SHIFT = 0.1;
const SIZES = [0.9, 0.95, 1, 1.05, 1.11];
/** How many go on to be refined, and how far apart they have to lie, as a share of the side. */
const GO = 4;
const APART = 0.035;
/** Both squared exactly. */
export const AS_SQUARED: Matrix3 = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
/** One cell standing out very much counts as this much. */
const MOST = 2;

const held = (value: number) => Math.min(MOST, Math.max(-MOST, value));

/** The later picture made larger or smaller about its middle, on the earlier one's grid. */
function resized({ columns, rows, samples }: Relief, size: number): Float32Array {
  const result = new Float32Array(columns * rows);
  for (let row = 0, to = 0; row < rows; row++) {
    const y = (row - (rows - 1) / 2) * size + (rows - 1) / 2;
    for (let column = 0; column < columns; column++, to++) {
      const x = (column - (columns - 1) / 2) * size + (columns - 1) / 2;
      result[to] = held(readBetween(samples, columns, rows, x, y));
    }
  }
  return result;
}

/** Correlation where both are seen. @param dx, dy cells that the later one is shifted by. */
function correlation(one: Float32Array, two: Float32Array, columns: number, dx: number, dy: number): number {
  const rows = one.length / columns;
  let [product, squares, others] = [0, 0, 0];
  for (let row = Math.max(0, -dy); row < Math.min(rows, rows - dy); row++) {
    for (let column = Math.max(0, -dx); column < Math.min(columns, columns - dx); column++) {
      const p = one[row * columns + column] as number;
      const q = two[(row + dy) * columns + column + dx] as number;
      product += p * q;
      squares += p * p;
      others += q * q;
    }
  }
  return product / Math.sqrt(squares * others + 1e-9);
}

interface Tried {
  worth: number;
  size: number;
  x: number;
  y: number;
}

/** The best ones, none beside a better one. */
function apart(tried: Tried[]): Tried[] {
  const kept: Tried[] = [];
  for (const one of tried.sort((p, q) => q.worth - p.worth)) {
    if (kept.length === GO) break;
    if (kept.every(({ x, y }) => Math.hypot(one.x - x, one.y - y) > APART)) kept.push(one);
  }
  return kept;
}

/** A few likely places, from fractions of the earlier picture to fractions of the later one. @param earlier, later on one grid. */
export function firstPlaces(earlier: Relief, later: Relief): Matrix3[] {
  const { columns, rows } = earlier;
  const one = earlier.samples.map(held);
  const [farX, farY] = [Math.round(SHIFT * columns), Math.round(SHIFT * rows)];
  const tried: Tried[] = [];
  for (const size of SIZES) {
    const two = resized(later, size);
    for (let dy = -farY; dy <= farY; dy++) {
      for (let dx = -farX; dx <= farX; dx++) {
        const worth = correlation(one, two, columns, dx, dy);
        tried.push({ worth, size, x: (dx * size) / columns, y: (dy * size) / rows });
      }
    }
  }
  const places = apart(tried).map(
    ({ size, x, y }): Matrix3 => [
      [size, 0, (1 - size) / 2 + x],
      [0, size, (1 - size) / 2 + y],
      [0, 0, 1],
    ],
  );
  return [AS_SQUARED, ...places];
}
