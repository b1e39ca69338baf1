/**
 * Where a painting became lighter or darker between two photographs, with nothing drawn inside the doubt.
 *
 * In the flow: two plates laid on one another -> [change-map] -> picture of the change. What the whole photograph gained
 * or lost by light and exposure is taken out first where most of the paint agrees on it; an edge may lie a little aside.
 * Pure.
 */
import type { Grade } from '../../capture/grade.ts';
import { GRADE_SIGMA, RELATION } from '../../doubt/intervals.ts';
import { gaussianBlur } from '../../image/gaussian.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { type Lightness, lightnessOf } from '../align/relief.ts';

/** Long side of the grid, cells. */
const GRID = 448;
/** Blur, cells: single brush marks and grain are no change. */
const SOFT = 1.2;
/** How far aside an edge may lie, cells: about half a percent of the width. */
const ASIDE = 2;
/** What is left of single brush marks between changed places is evened out over so many cells. */
const EVENED = 2;
/** Along the rim, as a share of each side, slivers of wall and frame are no change. */
const RIM = 0.02;
/** A change has to fill this many of the nine cells around it. */
const FILLED = 5;
/** Width of the bins in which the shared change of light is looked for, L*. */
const BIN = 0.5;
/** Share of the cells that have to agree on it. */
const AGREED = 0.35;
const SIGMAS = 2;

export interface ChangeMap {
  readonly columns: number;
  readonly rows: number;
  /** L*, later − earlier; 0 within the doubt. */
  readonly change: Float32Array;
  /** What a change has to exceed, L*. */
  readonly doubtL: number;
  /** Shares of the surface, 0..1. */
  readonly lighter: number;
  readonly darker: number;
}

function soft({ columns, rows, lightness }: Lightness): Float32Array {
  return gaussianBlur({ columns, rows, channels: 1, samples: lightness }, SOFT);
}

/** The least or most within `ASIDE` cells, one way and then the other. */
function extreme(
  samples: Float32Array,
  columns: number,
  rows: number,
  of: (p: number, q: number) => number,
): Float32Array {
  const across = samples.slice();
  for (let cell = 0; cell < samples.length; cell++) {
    const column = cell % columns;
    for (let aside = -ASIDE; aside <= ASIDE; aside++) {
      if (column + aside < 0 || column + aside >= columns) continue;
      across[cell] = of(across[cell] as number, samples[cell + aside] as number);
    }
  }
  const both = across.slice();
  for (let cell = 0; cell < samples.length; cell++) {
    const row = Math.floor(cell / columns);
    for (let aside = -ASIDE; aside <= ASIDE; aside++) {
      if (row + aside < 0 || row + aside >= rows) continue;
      both[cell] = of(both[cell] as number, across[cell + aside * columns] as number);
    }
  }
  return both;
}

/** How far `value` lies outside low..high, signed. */
const beyond = (value: number, low: number, high: number) =>
  value > high ? value - high : value < low ? value - low : 0;

const smaller = (p: number, q: number) => (p * q <= 0 ? 0 : Math.abs(p) < Math.abs(q) ? p : q);

/** Later − earlier where neither finds its value near the same place of the other. */
function tolerant(earlier: Float32Array, later: Float32Array, columns: number, rows: number): Float32Array {
  const bounds = (samples: Float32Array) => [
    extreme(samples, columns, rows, Math.min),
    extreme(samples, columns, rows, Math.max),
  ];
  const [lowE, highE] = bounds(earlier) as [Float32Array, Float32Array]; // two in
  const [lowL, highL] = bounds(later) as [Float32Array, Float32Array];
  return later.map((value, cell) =>
    smaller(
      beyond(value, lowE[cell] as number, highE[cell] as number),
      -beyond(earlier[cell] as number, lowL[cell] as number, highL[cell] as number),
    ),
  );
}

/** A shared change of light moves L* + 16 by one factor: all cells told as if they lay at L* 50. */
const pull = (lightness: number) => (lightness + 16) / 66;

/** What most cells moved by together, at L* 50; null where too few agree. @param reach farthest, L*. */
function sharedChange(earlier: Float32Array, later: Float32Array, reach: number): number | null {
  const bins = Math.ceil((2 * reach) / BIN);
  const counts = new Float64Array(bins);
  for (let cell = 0; cell < earlier.length; cell++) {
    const was = earlier[cell] as number;
    const at = Math.floor((((later[cell] as number) - was) / pull(was) + reach) / BIN);
    if (at >= 0 && at < bins) counts[at] = (counts[at] as number) + 1;
  }
  // Five bins together: 2.5 L*.
  const around = counts.map((_, at) => {
    return [-2, -1, 0, 1, 2].reduce((sum, aside) => sum + (counts[at + aside] ?? 0), 0);
  });
  const best = around.reduce((top, count, at) => (count > (around[top] as number) ? at : top), 0);
  return (around[best] as number) >= AGREED * earlier.length ? (best + 0.5) * BIN - reach : null;
}

/** Leaves only what fills its surroundings, in place of specks. */
function filled(change: Float32Array, columns: number, doubtL: number): Float32Array {
  const sign = change.map((value) => (Math.abs(value) > doubtL ? Math.sign(value) : 0));
  return change.map((value, cell) => {
    const own = sign[cell] as number;
    if (own === 0) return 0;
    let like = 0;
    for (const down of [-columns, 0, columns]) {
      for (const aside of [-1, 0, 1]) if (sign[cell + down + aside] === own) like++;
    }
    return like >= FILLED ? value : 0;
  });
}

function withoutRim(change: Float32Array, columns: number, rows: number): Float32Array {
  const [wide, high] = [Math.ceil(RIM * columns), Math.ceil(RIM * rows)];
  return change.map((value, cell) => {
    const [column, row] = [cell % columns, Math.floor(cell / columns)];
    const inside = column >= wide && column < columns - wide && row >= high && row < rows - high;
    return inside ? value : 0;
  });
}

/**
 * @param earlier squared. @param later laid on it, of the same shape. @param grades of both photographs.
 */
export function changeMap(
  earlier: EncodedRaster,
  later: EncodedRaster,
  grades: readonly [Grade, Grade],
): ChangeMap {
  const one = lightnessOf(earlier, GRID);
  const { columns, rows } = one;
  const [was, is] = [soft(one), soft(lightnessOf(later, GRID))];
  const sigma = Math.hypot(GRADE_SIGMA[grades[0]].L, GRADE_SIGMA[grades[1]].L);
  const shared = sharedChange(was, is, 2.5 * sigma);
  // Where nothing is shared the photographs stand as they are, with all of their doubt.
  const doubtL = SIGMAS * sigma * (shared === null ? 1 : RELATION / Math.SQRT2);
  const lit = is.map((value, cell) => value - (shared ?? 0) * pull(was[cell] as number));
  const samples = tolerant(was, lit, columns, rows);
  const evened = gaussianBlur({ columns, rows, channels: 1, samples }, EVENED);
  const change = withoutRim(filled(evened, columns, doubtL), columns, rows);
  const share = (sign: number) =>
    change.reduce((count, value) => count + (Math.sign(value) === sign ? 1 : 0), 0) / change.length;
  return { columns, rows, change, doubtL, lighter: share(1), darker: share(-1) };
}

/** Grey on which nothing changed, L*. */
const STILL_L = 55;
/** How much lighter or darker than that the least change is drawn, and how much for each L* beyond. */
const [LEAST, EACH] = [9, 1.1];

/** The change as greys, L*: `STILL_L` where nothing changed, lighter where it became lighter. One number a cell. */
export function changeGreys({ change, doubtL }: ChangeMap): Float32Array {
  return change.map((value) => {
    if (value === 0) return STILL_L;
    const away = LEAST + EACH * (Math.abs(value) - doubtL);
    return Math.min(97, Math.max(6, STILL_L + Math.sign(value) * away));
  });
}
