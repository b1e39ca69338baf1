/**
 * Which superpixels touch, and what separates them along the line where they do.
 *
 * In the flow: superpixels -> [region-graph] -> merge. What is seen a few pixels to either side of a shared
 * boundary is compared with its sign, so that texture averages out along it while a change of colour stays. Pure.
 */
import { COLOURS, CUES } from './cues.ts';
import type { Superpixels } from './superpixels.ts';
import type { WorkingCopy } from './working-copy.ts';

/** How far from a boundary the two sides are looked at, pixels; the farther look tells a slope from a step. */
const NEAR_PX = 3;
const FAR_PX = 7;
/** Step at the boundary from the two looks, when a slope runs on through it: D(3) − (D(7) − D(3)) · 3/4. */
const NEAR_WEIGHT = 1.75;
const FAR_WEIGHT = -0.75;

export interface Region {
  pixels: number;
  /** Sum of each cue. */
  readonly sums: Float64Array;
  sumY: number;
  /** Length and summed edge strength of the boundaries that merging has dissolved inside. */
  innerLength: number;
  innerEdge: number;
  /** Boundaries by the other region's number. */
  readonly borders: Map<number, Border>;
}

export interface Border {
  /** Sum and sum of squares over the boundary of cue(higher number) − cue(lower number). */
  readonly sums: Float64Array;
  readonly squares: Float64Array;
  /** Pixel pairs along it. */
  length: number;
  edge: number;
  /** Pixel pairs with the lower number above, less those with it below. */
  above: number;
}

function emptyBorder(): Border {
  return {
    sums: new Float64Array(CUES),
    squares: new Float64Array(CUES),
    length: 0,
    edge: 0,
    above: 0,
  };
}

function regionsOf(
  copy: WorkingCopy,
  cues: readonly Float32Array[],
  { labels, count }: Superpixels,
): Region[] {
  const regions = Array.from(
    { length: count },
    (): Region => ({
      pixels: 0,
      sums: new Float64Array(CUES),
      sumY: 0,
      innerLength: 0,
      innerEdge: 0,
      borders: new Map(),
    }),
  );
  for (let at = 0; at < labels.length; at++) {
    const region = regions[labels[at] as number] as Region;
    region.pixels++;
    region.sumY += Math.floor(at / copy.columns);
    for (let cue = 0; cue < CUES; cue++) {
      region.sums[cue] = (region.sums[cue] as number) + ((cues[cue] as Float32Array)[at] as number);
    }
  }
  return regions;
}

function borderOf(regions: readonly Region[], p: number, q: number): Border {
  const known = (regions[p] as Region).borders.get(q);
  if (known) return known;
  const border = emptyBorder();
  (regions[p] as Region).borders.set(q, border);
  (regions[q] as Region).borders.set(p, border);
  return border;
}

/** Places on both sides of a boundary, near and far. */
interface Looks {
  readonly before: number;
  readonly after: number;
  readonly farBefore: number;
  readonly farAfter: number;
}

/** @param place of the pixel before the boundary along its line. @param stride from one pixel of the line to the next. */
function looksAt(at: number, place: number, length: number, stride: number): Looks {
  const back = (by: number): number => at - Math.min(place, by - 1) * stride;
  const forth = (by: number): number => at + Math.min(length - 1 - place, by) * stride;
  return { before: back(NEAR_PX), after: forth(NEAR_PX), farBefore: back(FAR_PX), farAfter: forth(FAR_PX) };
}

function addPair(border: Border, cues: readonly Float32Array[], looks: Looks, sign: number): void {
  border.length++;
  for (let cue = 0; cue < CUES; cue++) {
    const grid = cues[cue] as Float32Array;
    const near = (grid[looks.after] as number) - (grid[looks.before] as number);
    const far = (grid[looks.farAfter] as number) - (grid[looks.farBefore] as number);
    const step = sign * (cue < COLOURS ? NEAR_WEIGHT * near + FAR_WEIGHT * far : near);
    border.sums[cue] = (border.sums[cue] as number) + step;
    border.squares[cue] = (border.squares[cue] as number) + step * step;
  }
}

/** Adds all boundaries met on the way from each pixel to the next one right of it, or below it. */
function addBoundaries(
  regions: readonly Region[],
  { columns, rows, edge }: WorkingCopy,
  cues: readonly Float32Array[],
  labels: Int32Array,
  downwards: boolean,
): void {
  const stride = downwards ? columns : 1;
  const end = labels.length - (downwards ? columns : 0);
  for (let at = 0; at < end; at++) {
    const own = labels[at] as number;
    const other = labels[at + stride] as number;
    const x = at % columns;
    if (other === own || (!downwards && x === columns - 1)) continue;
    const border = borderOf(regions, own, other);
    const sign = own < other ? 1 : -1;
    const place = downwards ? (at - x) / columns : x;
    addPair(border, cues, looksAt(at, place, downwards ? rows : columns, stride), sign);
    border.edge += Math.max(edge[at] as number, edge[at + stride] as number);
    if (downwards) border.above += sign;
  }
}

/** The graph of touching superpixels. */
export function regionGraph(
  copy: WorkingCopy,
  cues: readonly Float32Array[],
  superpixels: Superpixels,
): Region[] {
  const regions = regionsOf(copy, cues, superpixels);
  for (const downwards of [false, true]) addBoundaries(regions, copy, cues, superpixels.labels, downwards);
  return regions;
}
