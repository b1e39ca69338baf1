/**
 * Where each plane's upper contour shows, column by column.
 *
 * In the flow: label map -> [ridge-lines] -> rules about ridges. A nearer plane that stands before a contour hides it
 * there. Pure.
 */
import type { PlaneKind } from '../../contract/setup.ts';
import { NO_PLANE } from '../../planes/label-map.ts';

export interface RidgeLine {
  readonly name: string;
  readonly kind: PlaneKind;
  /** Place of the plane, far to near. */
  readonly plane: number;
  /** Row of the contour at each column, cells from the top; NaN where it does not show. */
  readonly heights: Float64Array;
  /** Plane right above the contour at each column; −1 where it does not show or where the picture ends. */
  readonly above: Int16Array;
}

export interface LabelGrid {
  readonly columns: number;
  readonly rows: number;
  /** Plane of each cell, far to near; `NO_PLANE` where there is none. */
  readonly labels: Uint8Array;
}

/** Rows by which one stray cell is passed over. */
const STRAY = 1;

function topIn({ columns, rows, labels }: LabelGrid, plane: number, x: number): number {
  for (let y = 0; y + STRAY < rows; y++) {
    const own = labels[y * columns + x] === plane && labels[(y + STRAY) * columns + x] === plane;
    if (own) return y;
  }
  return Number.NaN;
}

/** The visible upper contour of one plane. */
export function ridgeLine(
  grid: LabelGrid,
  plane: number,
  { name, kind }: { readonly name: string; readonly kind: PlaneKind },
): RidgeLine {
  const { columns, labels } = grid;
  const heights = new Float64Array(columns).fill(Number.NaN);
  const above = new Int16Array(columns).fill(-1);
  for (let x = 0; x < columns; x++) {
    const y = topIn(grid, plane, x);
    if (Number.isNaN(y)) continue;
    const over = y === 0 ? -1 : (labels[(y - 1) * columns + x] as number);
    if (over > plane && over !== NO_PLANE) continue; // what is nearer stands before the contour
    heights[x] = y;
    above[x] = over === NO_PLANE ? -1 : over;
  }
  return { name, kind, plane, heights, above };
}

/** Columns where the contour shows. */
export function shownColumns({ heights }: RidgeLine): number[] {
  return Array.from(heights.keys()).filter((x) => !Number.isNaN(heights[x]));
}

/** Mean over the columns within `reach` to both sides that show; NaN stays NaN. */
export function smoothed(heights: Float64Array, reach: number): Float64Array {
  return heights.map((own, x) => {
    if (Number.isNaN(own)) return own;
    let [sum, count] = [0, 0];
    for (let at = Math.max(0, x - reach); at <= Math.min(heights.length - 1, x + reach); at++) {
      const height = heights[at] as number;
      if (Number.isNaN(height)) continue;
      sum += height;
      count++;
    }
    return sum / count;
  });
}

/** Slope and height at column 0 of the straight line nearest to points, by least squares. */
export function straightThrough(
  xs: readonly number[],
  ys: readonly number[],
): { slope: number; start: number } {
  const mean = (of: readonly number[]): number => of.reduce((sum, value) => sum + value, 0) / of.length;
  const [mx, my] = [mean(xs), mean(ys)];
  let [across, both] = [0, 0];
  xs.forEach((x, at) => {
    across += (x - mx) ** 2;
    both += (x - mx) * ((ys[at] as number) - my);
  });
  const slope = across > 0 ? both / across : 0;
  return { slope, start: my - slope * mx };
}
