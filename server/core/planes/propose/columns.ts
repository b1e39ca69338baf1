/**
 * The working copy column by column, as ridges are searched: what is seen, in steps, from top to bottom.
 *
 * In the flow: cues -> [columns] -> tiers, ridges, evidence. A place is `column * rows + row`. Pure.
 */
import { COLOURS, CUES } from './cues.ts';

/** Steps a cue is told in. */
export const BINS = 64;
/** Least value and width of a step of each cue. */
const SCALES = [
  [0, 100 / BINS],
  [-40, 80 / BINS],
  [-40, 80 / BINS],
  [-8, 24 / BINS],
  [-8, 24 / BINS],
] as const;

export interface Columns {
  readonly count: number;
  readonly rows: number;
  /** Pixels of the working copy from one column to the next. */
  readonly every: number;
  readonly cues: readonly Float32Array[];
  /** Step of each cue, 0..`BINS` − 1. */
  readonly steps: readonly Uint8Array[];
  readonly dark: Float32Array;
  readonly edge: Float32Array;
}

function upright(grid: Float32Array, columns: number, rows: number, every: number): Float32Array {
  const count = Math.ceil(columns / every);
  const result = new Float32Array(count * rows);
  for (let column = 0; column < count; column++) {
    const x = Math.min(columns - 1, column * every + (every >> 1));
    for (let y = 0, to = column * rows; y < rows; y++, to++) result[to] = grid[y * columns + x] as number;
  }
  return result;
}

function stepsOf(cue: Float32Array, [least, width]: readonly [number, number]): Uint8Array {
  const steps = new Uint8Array(cue.length);
  for (let at = 0; at < steps.length; at++) {
    steps[at] = Math.min(BINS - 1, Math.max(0, ((cue[at] as number) - least) / width));
  }
  return steps;
}

/** Every `every`-th column of the grids. */
export function columnsOf(
  grids: readonly Float32Array[],
  dark: Float32Array,
  edge: Float32Array,
  columns: number,
  rows: number,
  every: number,
): Columns {
  const cues = grids.map((grid) => upright(grid, columns, rows, every));
  const steps = cues.map((cue, at) => stepsOf(cue, SCALES[at] as readonly [number, number]));
  return {
    count: Math.ceil(columns / every),
    rows,
    every,
    cues,
    steps,
    dark: upright(dark, columns, rows, every),
    edge: upright(edge, columns, rows, every),
  };
}

/** Weight of each cue in a likelihood: texture is one figure for many pixels, so each says less. */
export const CUE_WEIGHTS = Float64Array.from({ length: CUES }, (_, cue) => (cue < COLOURS ? 1 : 0.5));
