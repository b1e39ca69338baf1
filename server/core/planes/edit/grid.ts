/**
 * Masks on a grid: which cells lie inside a ring, what is near them, in how many pieces they hang together.
 *
 * In the flow: rings -> [grid] -> relabel, contour. A mask has one byte a cell, 1 inside; masks that come in are never
 * written to. Pieces hang together by their sides, not by their corners. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { drawLabelMap, NO_PLANE } from '../label-map.ts';

export interface Grid {
  readonly columns: number;
  readonly rows: number;
}

export type Mask = Uint8Array;

/** Long side of the grid on which outlines are edited, cells. */
const LONG_SIDE = 640;

/** The grid of a picture; a smaller picture has a cell a pixel. */
export function gridOf(widthPx: number, heightPx: number): Grid {
  const shrink = Math.min(1, LONG_SIDE / Math.max(widthPx, heightPx));
  return {
    columns: Math.max(1, Math.round(widthPx * shrink)),
    rows: Math.max(1, Math.round(heightPx * shrink)),
  };
}

/** Cells whose centre lies inside the ring, by the even–odd rule. */
export function ringMask(ring: readonly FractionPoint[], { columns, rows }: Grid): Mask {
  const mask = drawLabelMap(columns, rows, [ring]);
  for (let cell = 0; cell < mask.length; cell++) mask[cell] = mask[cell] === NO_PLANE ? 0 : 1;
  return mask;
}

/** Cells at most `reach` columns and rows from a cell of the mask. */
export function widened(mask: Mask, { columns, rows }: Grid, reach: number): Mask {
  const result = new Uint8Array(mask.length);
  const first = mask.indexOf(1);
  if (first < 0) return result;
  const last = mask.lastIndexOf(1);
  const along = new Uint8Array(columns);
  for (let y = Math.floor(first / columns); y <= Math.floor(last / columns); y++) {
    if (!widenRow(mask, y * columns, columns, reach, along)) continue;
    for (let v = Math.max(0, y - reach); v <= Math.min(rows - 1, y + reach); v++) {
      const row = v * columns;
      for (let x = 0; x < columns; x++) if (along[x] === 1) result[row + x] = 1;
    }
  }
  return result;
}

/** One row of a mask, widened to both sides into `along`. @returns False where the row is empty. */
function widenRow(mask: Mask, start: number, columns: number, reach: number, along: Mask): boolean {
  along.fill(0);
  let any = false;
  for (let x = 0; x < columns; x++) {
    if (mask[start + x] === 0) continue;
    any = true;
    let end = x;
    while (end + 1 < columns && mask[start + end + 1] === 1) end++;
    along.fill(1, Math.max(0, x - reach), Math.min(columns, end + reach + 1));
    x = end;
  }
  return any;
}

export interface Pieces {
  /** Number of each cell's piece from 1; 0 outside the mask. */
  readonly numbers: Int32Array;
  /** Cells of each piece, by number; the first entry is unused. */
  readonly sizes: number[];
}

/** Stretches of set cells, row by row. */
interface Runs {
  readonly starts: number[];
  readonly ends: number[];
  /** For each run one that it hangs together with, or itself: follow to the end. */
  readonly hosts: number[];
}

function hostOf(hosts: number[], run: number): number {
  let host = run;
  while (hosts[host] !== host) host = hosts[host] as number;
  hosts[run] = host;
  return host;
}

function runsOf(mask: Mask, { columns, rows }: Grid): Runs {
  const runs: Runs = { starts: [], ends: [], hosts: [] };
  let above = 0;
  for (let y = 0; y < rows; y++) {
    const [row, firstHere] = [y * columns, runs.starts.length];
    const line = mask.subarray(row, row + columns);
    for (let from = line.indexOf(1); from >= 0; ) {
      const gap = line.indexOf(0, from);
      const to = gap < 0 ? columns : gap;
      above = addRun(runs, row + from, row + to, above, firstHere, columns);
      from = line.indexOf(1, to);
    }
    above = firstHere;
  }
  return runs;
}

/** @param above the first run of the row above that may still touch. @returns The same for the next run. */
function addRun(
  { starts, ends, hosts }: Runs,
  from: number,
  to: number,
  above: number,
  firstHere: number,
  columns: number,
): number {
  const own = starts.length;
  starts.push(from);
  ends.push(to);
  hosts.push(own);
  let next = above;
  while (next < firstHere && (ends[next] as number) + columns <= from) next++;
  for (let run = next; run < firstHere && (starts[run] as number) + columns < to; run++) {
    const [one, other] = [hostOf(hosts, run), hostOf(hosts, own)];
    hosts[Math.max(one, other)] = Math.min(one, other);
  }
  return next;
}

/** The pieces of a mask. */
export function piecesOf(mask: Mask, grid: Grid): Pieces {
  const { starts, ends, hosts } = runsOf(mask, grid);
  const numbers = new Int32Array(mask.length);
  const sizes = [0];
  const numberOf = new Int32Array(starts.length);
  for (let run = 0; run < starts.length; run++) {
    const host = hostOf(hosts, run);
    if (host === run) {
      numberOf[run] = sizes.length;
      sizes.push(0);
    }
    const number = numberOf[host] as number;
    const [from, to] = [starts[run] as number, ends[run] as number];
    numbers.fill(number, from, to);
    sizes[number] = (sizes[number] as number) + to - from;
  }
  return { numbers, sizes };
}

/** The neighbour of a cell on one of its four sides; −1 beyond the grid. @param x the cell's column. */
export function beside(cell: number, x: number, side: number, columns: number, cells: number): number {
  if (side === 0) return x > 0 ? cell - 1 : -1;
  if (side === 1) return x < columns - 1 ? cell + 1 : -1;
  if (side === 2) return cell - columns;
  return cell + columns < cells ? cell + columns : -1;
}

/** Calls `visit` for every neighbour of a cell on its four sides. */
export function eachBeside({ columns, rows }: Grid, cell: number, visit: (other: number) => void): void {
  const x = cell % columns;
  for (let side = 0; side < 4; side++) {
    const other = beside(cell, x, side, columns, columns * rows);
    if (other >= 0) visit(other);
  }
}
