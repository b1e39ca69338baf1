/**
 * Proposes where the corners of a painting lie in its photo, or says that it is not sure.
 *
 * In the flow: photo -> [propose-corners] -> handles that a person corrects. The wall is followed inwards from the
 * photo's rim as long as its colour changes slowly; the largest thing left is the painting; straight lines are laid
 * along its four sides. Pure. Own method; robust lines by Theil (1950) and Sen (1968).
 */
import type { FractionPoint } from '../contract/setup.ts';
import type { Corners } from '../geometry/homography.ts';
import { labPlanesFromLinear } from '../image/light-tables.ts';
import type { EncodedRaster } from '../image/raster.ts';
import { isProblem } from '../problem.ts';
import { checkCorners } from '../rectify/check-corners.ts';
import { largestThing } from './largest-thing.ts';
import { shrunkLinear } from './shrunk-linear.ts';
import { wallOf } from './wall.ts';

/** Long side of the copy that is looked at, pixels. */
const SIDE = 480;
/** Smallest part of the photo that the painting may fill. */
const SMALLEST = 0.06;
/** Ends of a side that are left out of its line, and points that must lie on it. */
const ENDS = 0.08;
const ON_LINE_PX = 1.6;
const ENOUGH_ON_LINE = 0.8;
const FEWEST_POINTS = 20;
/** A corner this near to the photo's rim, as a share of its side, is where the photo ends, not the painting. */
const AT_RIM = 0.003;
/** Farthest from a right angle that a corner may be, degrees. */
const MOST_CROOKED_DEG = 40;

/** along-coordinate `t` and across-coordinate `s` of points on one side. */
type SidePoint = readonly [t: number, s: number];
interface Line {
  readonly slope: number;
  readonly start: number;
}

function medianOf(values: number[]): number {
  return values.sort((p, q) => p - q)[values.length >> 1] as number;
}

/** s = start + slope · t, by the median of slopes; null where too few points lie on it. */
function lineThrough(all: readonly SidePoint[]): Line | null {
  const from = Math.floor(all.length * ENDS);
  const points = all.slice(from, all.length - from);
  if (points.length < FEWEST_POINTS) return null;
  const half = points.length >> 1;
  const slopes: number[] = [];
  for (let at = 0; at < half; at++) {
    for (let to = at + half; to < points.length; to += 7) {
      const [p, q] = [points[at] as SidePoint, points[to] as SidePoint];
      slopes.push((q[1] - p[1]) / (q[0] - p[0]));
    }
  }
  const slope = medianOf(slopes);
  const start = medianOf(points.map(([t, s]) => s - slope * t));
  const on = points.filter(([t, s]) => Math.abs(s - start - slope * t) <= ON_LINE_PX);
  if (on.length < ENOUGH_ON_LINE * points.length) return null;
  // Where half of a pixel lies on either side, the mean of what lies on the line is finer than the median.
  const finer = on.reduce((sum, [t, s]) => sum + s - slope * t, 0) / on.length;
  return { slope, start: finer };
}

/** First and last place of the thing along every row or column, between two extreme corners. */
function sidesOf(thing: Uint8Array, columns: number, rows: number) {
  const top: SidePoint[] = [];
  const bottom: SidePoint[] = [];
  for (let x = 0; x < columns; x++) {
    let [first, last] = [-1, -1];
    for (let y = 0; y < rows; y++) {
      if (thing[y * columns + x] !== 1) continue;
      if (first < 0) first = y;
      last = y + 1;
    }
    if (first < 0) continue;
    top.push([x + 0.5, first]);
    bottom.push([x + 0.5, last]);
  }
  return { first: top, last: bottom };
}

function transposed(thing: Uint8Array, columns: number, rows: number): Uint8Array {
  return Uint8Array.from(
    { length: thing.length },
    (_, at) => thing[(at % rows) * columns + Math.floor(at / rows)] as number,
  );
}

/** The part of a side between its two extreme corners. */
function between(points: readonly SidePoint[], one: number, other: number): SidePoint[] {
  const [low, high] = [Math.min(one, other), Math.max(one, other)];
  return points.filter(([t]) => t > low && t < high);
}

/** The pixels of the thing that lie farthest towards the four corners of the photo, clockwise. */
function extremes(thing: Uint8Array, columns: number): [number, number][] {
  const best = [0, 1, 2, 3].map(() => Number.NEGATIVE_INFINITY);
  const found: [number, number][] = [0, 1, 2, 3].map(() => [0, 0]);
  for (let at = 0; at < thing.length; at++) {
    if (thing[at] !== 1) continue;
    const [x, y] = [at % columns, Math.floor(at / columns)];
    [-x - y, x - y, x + y, y - x].forEach((value, corner) => {
      if (value <= (best[corner] as number)) return;
      best[corner] = value;
      found[corner] = [x, y];
    });
  }
  return found;
}

/** Where an upright line x = f(y) meets a level one y = g(x). */
function meet(level: Line, upright: Line): FractionPoint {
  const y = (level.start + level.slope * upright.start) / (1 - level.slope * upright.slope);
  return [upright.start + upright.slope * y, y];
}

/** Whether the painting runs out of the photo: then its corners are not to be seen. */
function runsOut(corners: Corners): boolean {
  const atRim = corners.filter(([x, y]) => Math.min(x, y, 1 - x, 1 - y) < AT_RIM);
  return atRim.length > 0;
}

function isPlausible(corners: Corners, columns: number, rows: number): boolean {
  if (runsOut(corners)) return false;
  try {
    checkCorners(corners);
  } catch (thrown) {
    if (isProblem(thrown)) return false;
    throw thrown;
  }
  return corners.every((corner, at) => {
    const [before, after] = [corners[(at + 3) % 4] as FractionPoint, corners[(at + 1) % 4] as FractionPoint];
    const [ux, uy] = [(before[0] - corner[0]) * columns, (before[1] - corner[1]) * rows];
    const [vx, vy] = [(after[0] - corner[0]) * columns, (after[1] - corner[1]) * rows];
    const angle = (Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)) * 180) / Math.PI;
    return Math.abs(angle - 90) <= MOST_CROOKED_DEG;
  });
}

/**
 * @param raster upright photo, any size. @returns corners clockwise from the painting's top left, 0..1 of the photo;
 *   null where the wall is too restless, the painting touches the rim, or its sides are not straight.
 */
export function proposeCorners(raster: EncodedRaster): Corners | null {
  const { linear, columns, rows } = shrunkLinear(raster, SIDE);
  const wall = wallOf(labPlanesFromLinear(linear), columns, rows);
  const thing = largestThing(wall, columns, rows);
  if (!thing || thing.count < SMALLEST * columns * rows) return null;
  const [topLeft, topRight, bottomRight, bottomLeft] = extremes(thing.map, columns) as [
    [number, number],
    [number, number],
    [number, number],
    [number, number],
  ];
  const upDown = sidesOf(thing.map, columns, rows);
  const leftRight = sidesOf(transposed(thing.map, columns, rows), rows, columns);
  const top = lineThrough(between(upDown.first, topLeft[0], topRight[0]));
  const bottom = lineThrough(between(upDown.last, bottomLeft[0], bottomRight[0]));
  const left = lineThrough(between(leftRight.first, topLeft[1], bottomLeft[1]));
  const right = lineThrough(between(leftRight.last, topRight[1], bottomRight[1]));
  if (!top || !bottom || !left || !right) return null;
  const fraction = ([x, y]: FractionPoint): FractionPoint => [x / columns, y / rows];
  const corners: Corners = [
    fraction(meet(top, left)),
    fraction(meet(top, right)),
    fraction(meet(bottom, right)),
    fraction(meet(bottom, left)),
  ];
  return isPlausible(corners, columns, rows) ? corners : null;
}
