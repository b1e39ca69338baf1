/**
 * Tiers seen as patches of the picture, and the ridge between two as a border, so that they can be compared as regions
 * are.
 *
 * In the flow: tiers -> [tier-patches] -> tier tree. Pure.
 */
import type { Columns } from './columns.ts';
import { type Border, emptyPatch, type Patch } from './region-graph.ts';
import { bottomOf, type Tops } from './tiers.ts';

/** Every such row tells the strength of edges inside a tier. */
const EDGE_ROWS = 4;

function addColumn(patch: Patch, columns: Columns, start: number, top: number, bottom: number): void {
  const { every, edge } = columns;
  patch.pixels += every * (bottom - top);
  patch.sumY += (every * (bottom - top) * (top + bottom - 1)) / 2;
  [...columns.cues, columns.dark].forEach((cue, place) => {
    let [sum, squares] = [0, 0];
    for (let at = start + top; at < start + bottom; at++) {
      const value = cue[at] as number;
      sum += value;
      squares += value * value;
    }
    patch.sums[place] = (patch.sums[place] as number) + every * sum;
    patch.squares[place] = (patch.squares[place] as number) + every * squares;
  });
  for (let y = top + ((EDGE_ROWS - (top % EDGE_ROWS)) % EDGE_ROWS); y < bottom; y += EDGE_ROWS) {
    patch.innerLength++;
    patch.innerEdge += edge[start + y] as number;
  }
}

/** Each tier as a patch, in pixels of the working copy. */
export function tierPatches(columns: Columns, tops: Tops): Patch[] {
  return tops.map((top, k) => {
    const patch = emptyPatch();
    for (let column = 0; column < columns.count; column++) {
      const start = top[column] as number;
      const bottom = bottomOf(tops, k, column, columns.rows);
      if (bottom > start) addColumn(patch, columns, column * columns.rows, start, bottom);
    }
    return patch;
  });
}

/** The ridge on top of tier `k`, 1 or more, where the tier meets the one before it; of length 0 where it nowhere does. */
export function borderOnTop({ count, rows, every, edge }: Columns, tops: Tops, k: number): Border {
  let [length, strength] = [0, 0];
  for (let column = 0; column < count; column++) {
    const ridge = (tops[k] as Int16Array)[column] as number;
    const above = ridge - ((tops[k - 1] as Int16Array)[column] as number);
    const below = bottomOf(tops, k, column, rows) - ridge;
    if (above < 2 || below < 2) continue;
    const at = column * rows + ridge;
    length += every;
    strength += every * Math.max(edge[at] as number, edge[at - 1] as number);
  }
  return { length, edge: strength, above: length };
}
