/**
 * Straight lines, upright and level, which tell buildings and still water from what grows.
 *
 * In the flow: working copy -> [lines] -> describe. Rules of thumb (common practice, no source). Pure.
 */
import { bottomOf, type Tops } from './tiers.ts';
import type { WorkingCopy } from './working-copy.ts';

/** L* over two pixels, weighted 1/2, 1, 1/2 along the line, from which an edge counts. */
const STRONG = 12;
/** How little an edge may lean to count as upright or level: tangent. */
const LEAN = 0.15;
/** Rows to either side of a ridge left out: the ridge itself is no line within a plane. */
const BESIDE_RIDGE = 4;

/** Strength of the edges at the places of `Columns`, by the way they run; 0 where an edge is weak. */
export interface Lines {
  readonly all: Float32Array;
  readonly upright: Float32Array;
  readonly level: Float32Array;
}

/** @param every as in `Columns`. */
export function linesOf({ lab: { lightness }, columns, rows }: WorkingCopy, every: number): Lines {
  const count = Math.ceil(columns / every);
  const size = count * rows;
  const lines = {
    all: new Float32Array(size),
    upright: new Float32Array(size),
    level: new Float32Array(size),
  };
  for (let column = 0; column < count; column++) {
    const x = Math.min(columns - 1, column * every + (every >> 1));
    if (x < 1 || x > columns - 2) continue;
    for (let y = 1, at = columns + x; y < rows - 1; y++, at += columns) {
      const value = (by: number): number => lightness[at + by] as number;
      const [nw, ne, sw, se] = [
        value(-columns - 1),
        value(-columns + 1),
        value(columns - 1),
        value(columns + 1),
      ];
      const across = value(1) - value(-1) + (ne - nw + se - sw) / 2;
      const down = value(columns) - value(-columns) + (sw - nw + se - ne) / 2;
      const strength = Math.hypot(across, down);
      if (strength < STRONG) continue;
      const to = column * rows + y;
      lines.all[to] = strength;
      if (Math.abs(down) < LEAN * strength) lines.upright[to] = strength;
      if (Math.abs(across) < LEAN * strength) lines.level[to] = strength;
    }
  }
  return lines;
}

/** Shares, 0..1, of the strength of a tier's edges that run upright and level. */
export function linesIn(
  lines: Lines,
  tops: Tops,
  k: number,
  rows: number,
): { upright: number; level: number } {
  let [all, upright, level] = [0, 0, 0];
  for (let column = 0; column < (tops[k] as Int16Array).length; column++) {
    const end = column * rows + bottomOf(tops, k, column, rows) - BESIDE_RIDGE;
    const start = column * rows + ((tops[k] as Int16Array)[column] as number) + BESIDE_RIDGE;
    for (let at = start; at < end; at++) {
      all += lines.all[at] as number;
      upright += lines.upright[at] as number;
      level += lines.level[at] as number;
    }
  }
  return all > 0 ? { upright: upright / all, level: level / all } : { upright: 0, level: 0 };
}
