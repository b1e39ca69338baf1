/**
 * Outlines of planes from the ridges between them.
 *
 * In the flow: tier tree -> [outlines] -> proposals. A plane's outline runs along its ridge and closes at the
 * bottom of the picture, since nearer planes cover it; it never crosses itself, because a ridge has one height
 * everywhere. Where a plane does not show, its ridge dips below those in front of it. Pure.
 * Source of the simplification: Douglas & Peucker (1973).
 */
import type { FractionPoint } from '../../contract/setup.ts';

/** Columns to either side over which a ridge is cleaned of single teeth (running median). */
const MEDIAN_REACH = 2;
/** How far below a nearer ridge a hidden one is laid, as a share of the picture's height. */
const HIDDEN_DEPTH = 0.02;

/** Points of a ridge from which it is drawn more coarsely, and by how much at a time. */
const MOST_POINTS = 118;
const COARSER = 1.3;

/** Running median of a ridge, reach shortened at both ends. */
function withoutTeeth(ridge: ArrayLike<number>): number[] {
  return Array.from(ridge, (_, at) => {
    const reach = Math.min(MEDIAN_REACH, at, ridge.length - 1 - at);
    const around = Array.from(
      { length: 2 * reach + 1 },
      (_unused, step) => ridge[at - reach + step] as number,
    );
    return around.sort((p, q) => p - q)[reach] as number;
  });
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The points that keep a line within `tolerance` of the height of every point left out. */
function simplified(points: readonly Point[], tolerance: number): Point[] {
  const kept = new Uint8Array(points.length);
  kept[0] = 1;
  kept[points.length - 1] = 1;
  const spans: [number, number][] = [[0, points.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [first, last] = span;
    const [p, q] = [points[first] as Point, points[last] as Point];
    let farthest = -1;
    let most = tolerance;
    for (let at = first + 1; at < last; at++) {
      const { x, y } = points[at] as Point;
      const off = Math.abs(y - (p.y + ((q.y - p.y) * (x - p.x)) / (q.x - p.x)));
      if (off > most) {
        most = off;
        farthest = at;
      }
    }
    if (farthest < 0) continue;
    kept[farthest] = 1;
    spans.push([first, farthest], [farthest, last]);
  }
  return points.filter((_, at) => kept[at] === 1);
}

/** Ridge heights, 0..1, that dip where the plane does not show: below what is in front of it. */
function dipped(ridge: readonly number[], next: ArrayLike<number> | undefined, rows: number): number[] {
  return ridge.map((y, column) => {
    const front = next?.[column] ?? rows;
    return (y < front ? y : Math.min(rows, front + HIDDEN_DEPTH * rows)) / rows;
  });
}

/**
 * The outline of the plane that begins at `ridge`.
 *
 * @param ridge row at each column, whole. @param next the next nearer ridge; left out for the nearest plane.
 * @param tolerancePx how far, in rows, the simplified ridge may leave the ridge; more where it would have more than
 *   120 points.
 * @returns null where the plane shows nowhere.
 */
export function outlineBelow(
  ridge: ArrayLike<number>,
  next: ArrayLike<number> | undefined,
  rows: number,
  tolerancePx: number,
): FractionPoint[] | null {
  const heights = dipped(withoutTeeth(ridge), next, rows);
  const first = heights.findIndex((y) => y < 1);
  const last = heights.findLastIndex((y) => y < 1);
  if (first < 0) return null;
  const count = heights.length;
  const middle = heights.slice(first, last + 1).map((y, at): Point => ({ x: (first + at + 0.5) / count, y }));
  const [start, end] = [middle[0] as Point, middle.at(-1) as Point];
  // At the picture's sides the ridge runs on level; where it comes down inside, it does so upright.
  const points = [{ x: first / count, y: start.y }, ...middle, { x: (last + 1) / count, y: end.y }];
  let tolerance = tolerancePx / rows;
  let line = simplified(points, tolerance);
  while (line.length > MOST_POINTS) {
    tolerance *= COARSER;
    line = simplified(points, tolerance);
  }
  return [...line.map(({ x, y }): FractionPoint => [x, y]), [(last + 1) / count, 1], [first / count, 1]];
}
