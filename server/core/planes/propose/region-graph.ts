/**
 * Which superpixels touch, how long and how strong the edge is where they do, and what each looks like inside.
 *
 * In the flow: superpixels -> [region-graph] -> sky, merge. Pure.
 */
import { GRAPH_CUES } from './cues.ts';
import type { Superpixels } from './superpixels.ts';
import type { WorkingCopy } from './working-copy.ts';

/** What a part of the picture looks like, as sums over its pixels. */
export interface Patch {
  pixels: number;
  /** Sum and sum of squares of each graph cue. */
  readonly sums: Float64Array;
  readonly squares: Float64Array;
  sumY: number;
  /** Length and summed edge strength of the boundaries that merging has dissolved inside. */
  innerLength: number;
  innerEdge: number;
}

export interface Border {
  /** Pixel pairs along it. */
  length: number;
  /** Sum of edge strength along it. */
  edge: number;
  /** Pixel pairs with the lower number above, less those with it below. */
  above: number;
}

export interface Region extends Patch {
  /** Boundaries by the other region's number. */
  readonly borders: Map<number, Border>;
}

export function emptyPatch(): Patch {
  return {
    pixels: 0,
    sums: new Float64Array(GRAPH_CUES),
    squares: new Float64Array(GRAPH_CUES),
    sumY: 0,
    innerLength: 0,
    innerEdge: 0,
  };
}

function regionsOf(
  copy: WorkingCopy,
  cues: readonly Float32Array[],
  { labels, count }: Superpixels,
): Region[] {
  const regions = Array.from({ length: count }, (): Region => ({ ...emptyPatch(), borders: new Map() }));
  for (let at = 0; at < labels.length; at++) {
    const region = regions[labels[at] as number] as Region;
    region.pixels++;
    region.sumY += Math.floor(at / copy.columns);
  }
  for (let cue = 0; cue < GRAPH_CUES; cue++) {
    const grid = cues[cue] as Float32Array;
    for (let at = 0; at < labels.length; at++) {
      const { sums, squares } = regions[labels[at] as number] as Region;
      const value = grid[at] as number;
      sums[cue] = (sums[cue] as number) + value;
      squares[cue] = (squares[cue] as number) + value * value;
    }
  }
  return regions;
}

function borderOf(regions: readonly Region[], p: number, q: number): Border {
  const known = (regions[p] as Region).borders.get(q);
  if (known) return known;
  const border = { length: 0, edge: 0, above: 0 };
  (regions[p] as Region).borders.set(q, border);
  (regions[q] as Region).borders.set(p, border);
  return border;
}

/** Adds all boundaries met on the way from each pixel to the next one right of it, or below it. */
function addBoundaries(
  regions: readonly Region[],
  { columns, edge }: WorkingCopy,
  labels: Int32Array,
  downwards: boolean,
): void {
  const stride = downwards ? columns : 1;
  const end = labels.length - (downwards ? columns : 0);
  for (let at = 0; at < end; at++) {
    const own = labels[at] as number;
    const other = labels[at + stride] as number;
    if (other === own || (!downwards && at % columns === columns - 1)) continue;
    const border = borderOf(regions, own, other);
    border.length++;
    border.edge += Math.max(edge[at] as number, edge[at + stride] as number);
    if (downwards) border.above += own < other ? 1 : -1;
  }
}

/** The graph of touching superpixels. @param cues the graph cues of every pixel, one grid a cue. */
export function regionGraph(
  copy: WorkingCopy,
  cues: readonly Float32Array[],
  superpixels: Superpixels,
): Region[] {
  const regions = regionsOf(copy, cues, superpixels);
  for (const downwards of [false, true]) addBoundaries(regions, copy, superpixels.labels, downwards);
  return regions;
}
