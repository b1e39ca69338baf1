/**
 * How much of two photographs shows the same paint, once one is laid on the other.
 *
 * In the flow: reliefs + place -> [agreement] -> align-states. Squares with something to see are correlated one by one,
 * so that a part that was repainted costs its own squares and nothing else. Pure.
 */
import { project } from '../../geometry/homography.ts';
import type { Matrix3 } from '../../geometry/matrix3.ts';
import { type Relief, readBetween } from './relief.ts';

/** Side of a square, as a share of the long side. */
const SQUARE = 1 / 16;
/** Mean local deviation, L*, from which a square has something to see. */
const SEEN = 1.5;
/** Correlation from which a square agrees. */
const ALIKE = 0.55;

/** Squares over the earlier picture. */
export interface Squares {
  readonly side: number;
  readonly wide: number;
  readonly high: number;
  /** Correlation of each square with what lies there in the later picture, −1..1; NaN where there is nothing to see. */
  readonly correlations: Float32Array;
}

export interface Agreement {
  /** Squares that agree, of those with something to see in either picture, 0..1; 0 where there is none. */
  readonly share: number;
  /** How many squares have something to see. */
  readonly squares: number;
}

interface Sums {
  count: number;
  p: number;
  q: number;
  pp: number;
  qq: number;
  pq: number;
  seen: number;
}

/** Pearson's correlation. */
function correlated({ count, p, q, pp, qq, pq }: Sums): number {
  const spread = (pp - (p * p) / count) * (qq - (q * q) / count);
  return spread > 0 ? (pq - (p * q) / count) / Math.sqrt(spread) : 0;
}

/** @param earlier, later on one grid. */
export function squaresOf(earlier: Relief, later: Relief, place: Matrix3): Squares {
  const { columns, rows } = earlier;
  const side = Math.max(4, Math.round(SQUARE * Math.max(columns, rows)));
  const wide = Math.max(1, Math.floor(columns / side));
  const high = Math.max(1, Math.floor(rows / side));
  const sums = Array.from({ length: wide * high }, () => ({
    ...{ count: 0, p: 0, q: 0, pp: 0, qq: 0, pq: 0, seen: 0 },
  }));
  for (let row = 0; row < rows; row++) {
    const down = Math.min(high - 1, Math.floor(row / side)) * wide;
    for (let column = 0; column < columns; column++) {
      const [u, v] = project(place, [(column + 0.5) / columns, (row + 0.5) / rows]);
      const square = sums[down + Math.min(wide - 1, Math.floor(column / side))];
      if (!square || u < 0 || v < 0 || u > 1 || v > 1) continue;
      const cell = row * columns + column;
      addPlace(square, earlier, cell, later, [u * columns - 0.5, v * rows - 0.5]);
    }
  }
  const correlations = Float32Array.from(sums, (square) =>
    square.count > 8 && square.seen / square.count >= SEEN ? correlated(square) : Number.NaN,
  );
  return { side, wide, high, correlations };
}

function addPlace(
  square: Sums,
  earlier: Relief,
  cell: number,
  later: Relief,
  [x, y]: readonly [number, number],
): void {
  const { columns, rows } = later;
  const p = earlier.samples[cell] as number;
  const q = readBetween(later.samples, columns, rows, x, y);
  square.count++;
  square.p += p;
  square.q += q;
  square.pp += p * p;
  square.qq += q * q;
  square.pq += p * q;
  const deviation = readBetween(later.deviation, columns, rows, x, y);
  square.seen += Math.max(earlier.deviation[cell] as number, deviation);
}

export function agreementOf({ correlations }: Squares): Agreement {
  const told = correlations.filter((value) => !Number.isNaN(value));
  const alike = told.filter((value) => value >= ALIKE);
  return { share: told.length === 0 ? 0 : alike.length / told.length, squares: told.length };
}
