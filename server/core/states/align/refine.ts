/**
 * One picture laid on another to a fraction of a cell, whatever was repainted in between.
 *
 * In the flow: reliefs + first place -> [refine] -> align-states. Inverse compositional Gauss–Newton (Baker & Matthews
 * 2004, "Lucas–Kanade 20 years on", International Journal of Computer Vision 56(3)); cells that depart much count nothing
 * (Tukey's weights), nor do squares that do not correlate: paint that changed has no say. Pure.
 */
import { invert3, type Matrix3, multiply3 } from '../../geometry/matrix3.ts';
import { type Squares, squaresOf } from './agreement.ts';
import { type Relief, readBetween } from './relief.ts';
import { solvePositive } from './solve.ts';

/** Cells along the rim that are not looked at, as a share of the side: slivers of wall and frame. */
const RIM = 0.03;
/** Tukey's constant: a residual this many deviations away counts nothing. */
const AWAY = 4.685;
const MAD_TO_SIGMA = 1.4826;
/** Deviation below which residuals are not told apart from grain. */
const LEAST_SIGMA = 0.12;
/** Rounds between two looks at which squares correlate. */
const LOOK_EVERY = 4;
/** Correlation from which a square has a say; at 1 it has its whole. */
const SAY = 0.2;
/** Slope of a cell that is looked at, per cell: flat ones place nothing. */
const LEAST_SLOPE = 0.06;
/** A round that moves no corner farther than this share of the side is the last. */
const STILL = 2e-5;
const PARAMETERS = 8;
/** How far corners set by hand let shift, size and slant (and perspective) be off, in fractions: one deviation. */
const HAND = 0.02;
/** Cells that know their neighbours: so many count as one. */
const ALIKE_CELLS = 16;

/** What does not change from round to round. */
interface Slopes {
  readonly cells: Int32Array;
  /** Eight derivatives of each cell. */
  readonly steep: Float32Array;
}

/** Derivatives of the earlier picture by the eight parameters of a homography about its middle, in fractions. */
function slopesOf({ columns, rows, samples }: Relief): Slopes {
  const [rimX, rimY] = [Math.max(1, Math.round(RIM * columns)), Math.max(1, Math.round(RIM * rows))];
  const most = Math.max(0, (columns - 2 * rimX) * (rows - 2 * rimY));
  const cells = new Int32Array(most);
  const steep = new Float32Array(most * PARAMETERS);
  let count = 0;
  for (let row = rimY; row < rows - rimY; row++) {
    for (let column = rimX; column < columns - rimX; column++) {
      const cell = row * columns + column;
      const across = ((samples[cell + 1] as number) - (samples[cell - 1] as number)) / 2;
      const down = ((samples[cell + columns] as number) - (samples[cell - columns] as number)) / 2;
      if (across * across + down * down < LEAST_SLOPE ** 2) continue;
      // Per fraction of the side, since the parameters are in fractions.
      const [gx, gy] = [across * columns, down * rows];
      const [u, v] = [(column + 0.5) / columns - 0.5, (row + 0.5) / rows - 0.5];
      const far = -(gx * u + gy * v);
      steep.set([gx * u, gx * v, gx, gy * u, gy * v, gy, far * u, far * v], count * PARAMETERS);
      cells[count++] = cell;
    }
  }
  return { cells: cells.subarray(0, count), steep };
}

/** Half of the unit square: parameters are about the middle, so that they hardly pull at one another. */
const TO_MIDDLE: Matrix3 = [
  [1, 0, -0.5],
  [0, 1, -0.5],
  [0, 0, 1],
];
const FROM_MIDDLE = invert3(TO_MIDDLE);

/** Departure of the later picture from the earlier one at each cell; NaN where it does not reach. */
function departures(earlier: Relief, later: Relief, { cells }: Slopes, place: Matrix3): Float32Array {
  const { columns, rows } = earlier;
  const [[a, b, c], [d, e, f], [g, h, i]] = place;
  const departed = new Float32Array(cells.length);
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at] as number;
    const x = ((cell % columns) + 0.5) / columns;
    const y = (Math.floor(cell / columns) + 0.5) / rows;
    const w = g * x + h * y + i;
    const px = (a * x + b * y + c) / w;
    const py = (d * x + e * y + f) / w;
    const seen = readBetween(later.samples, columns, rows, px * columns - 0.5, py * rows - 0.5);
    const outside = px < 0 || py < 0 || px > 1 || py > 1;
    departed[at] = outside ? Number.NaN : seen - (earlier.samples[cell] as number);
  }
  return departed;
}

/** Deviation of what departs, of one cell in seven that has a say. */
function deviationOf(departed: Float32Array, says: Float32Array): number {
  const sizes: number[] = [];
  for (let at = 0; at < departed.length; at += 7) {
    const away = departed[at] as number;
    if (!Number.isNaN(away) && (says[at] as number) > 0) sizes.push(Math.abs(away));
  }
  if (sizes.length === 0) return LEAST_SIGMA;
  sizes.sort((p, q) => p - q);
  return Math.max(LEAST_SIGMA, MAD_TO_SIGMA * (sizes[sizes.length >> 1] as number));
}

/** How much say each looked-at cell has, by how well its square correlates, 0..1. */
function saysOf(
  { cells }: Slopes,
  columns: number,
  { side, wide, high, correlations }: Squares,
): Float32Array {
  return Float32Array.from(cells, (cell) => {
    const row = Math.min(high - 1, Math.floor(cell / columns / side));
    const column = Math.min(wide - 1, Math.floor((cell % columns) / side));
    const correlation = correlations[row * wide + column] as number;
    return correlation > SAY ? ((correlation - SAY) / (1 - SAY)) ** 2 : 0;
  });
}

/** One step of Gauss–Newton; null where nothing can be told. @param before parameters now: six = affine, eight = with perspective. */
function step(
  slopes: Slopes,
  departed: Float32Array,
  says: Float32Array,
  before: readonly number[],
): Float64Array | null {
  const count = before.length;
  const matrix = new Float64Array(count * count);
  const right = new Float64Array(count);
  const sigma = deviationOf(departed, says);
  const limit = AWAY * sigma;
  const { steep } = slopes;
  for (let at = 0, from = 0; at < departed.length; at++, from += PARAMETERS) {
    const away = departed[at] as number;
    if (!(Math.abs(away) < limit)) continue;
    const weight = (says[at] as number) * (1 - (away / limit) ** 2) ** 2;
    if (weight === 0) continue;
    for (let p = 0; p < count; p++) {
      const slope = weight * (steep[from + p] as number);
      right[p] = (right[p] as number) + slope * away;
      for (let q = 0; q <= p; q++) {
        const to = p * count + q;
        matrix[to] = (matrix[to] as number) + slope * (steep[from + q] as number);
      }
    }
  }
  // Where little is seen, what a hand is likely to be off by holds it: the step is taken away from what was before.
  const hold = ALIKE_CELLS * (sigma / HAND) ** 2;
  for (let p = 0; p < count; p++) {
    const to = p * count + p;
    matrix[to] = (matrix[to] as number) + hold;
    right[p] = (right[p] as number) + hold * (before[p] as number);
  }
  return solvePositive(matrix, right);
}

/** The homography of a step, in fractions. */
function homographyOf([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0]: ArrayLike<number> &
  Iterable<number>): Matrix3 {
  const about: Matrix3 = [
    [1 + a, b, c],
    [d, 1 + e, f],
    [g, h, 1],
  ];
  return multiply3(FROM_MIDDLE, multiply3(about, TO_MIDDLE));
}

/** The parameters of a homography about the middle. */
function parametersOf(place: Matrix3): number[] {
  const [[a, b, c], [d, e, f], [g, h]] = normed(multiply3(TO_MIDDLE, multiply3(place, FROM_MIDDLE)));
  return [a - 1, b, c, d, e - 1, f, g, h];
}

const normed = (matrix: Matrix3): Matrix3 => {
  const last = matrix[2][2];
  return matrix.map((row) => row.map((value) => value / last)) as unknown as Matrix3; // three rows of three
};

export interface Effort {
  /** Without perspective, for coarse grids. */
  affine: boolean;
  rounds: number;
}

/**
 * @param earlier, later on one grid. @param place from fractions of the earlier picture to fractions of the later one.
 */
export function refined(earlier: Relief, later: Relief, place: Matrix3, { affine, rounds }: Effort): Matrix3 {
  const slopes = slopesOf(earlier);
  let now = place;
  let says: Float32Array = new Float32Array(0);
  for (let round = 0; round < rounds; round++) {
    if (round % LOOK_EVERY === 0) says = saysOf(slopes, earlier.columns, squaresOf(earlier, later, now));
    const before = parametersOf(now).slice(0, affine ? 6 : PARAMETERS);
    const moved = step(slopes, departures(earlier, later, slopes, now), says, before);
    if (!moved) break;
    now = normed(multiply3(now, invert3(homographyOf(moved))));
    if (moved.every((value) => Math.abs(value) < STILL)) break;
  }
  return now;
}
