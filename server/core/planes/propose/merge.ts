/**
 * Merges touching regions, the least different first, into one tree.
 *
 * In the flow: region graph -> [merge] -> tiers. What separates two regions is what changes along their whole
 * shared boundary (colour and texture with sign, strength of the edge over that of the edges already dissolved
 * inside), how far their means lie apart, how large the smaller one is, and whether they lie one above
 * the other, as planes do, or side by side. Pure.
 */
import { CUES } from './cues.ts';
import type { Border, Region } from './region-graph.ts';

/** Pixels along a boundary over which texture repeats itself: fewer samples than pixels count. */
const GRAIN_PX = 8;
/** What the means of whole regions count beside what changes at their boundary. */
const MEANS_WEIGHT = 0.35;
/** Squared distance of means beyond which they say no more: a sky may change much from top to bottom. */
const MEANS_LIMIT = 25;
/** What an edge stronger than those inside counts. */
const EDGE_WEIGHT = 4;
/** What a boundary counts that runs straight up, of what it counts lying level. */
const SIDEWAYS = 0.25;
/** Regions smaller than this share of the picture cost less to merge, in proportion. */
const SIZE_POWER = 0.5;

/** Mean over a region of one cue. */
function meanOf(region: Region, cue: number): number {
  return (region.sums[cue] as number) / region.pixels;
}

/** Squared signed change across a boundary, less what chance alone would leave. */
function boundaryContrast({ sums, squares, length }: Border): number {
  let contrast = 0;
  for (let cue = 0; cue < CUES; cue++) {
    const mean = (sums[cue] as number) / length;
    const variance = Math.max(0, (squares[cue] as number) / length - mean * mean);
    contrast += mean * mean - (variance * GRAIN_PX) / (length + GRAIN_PX);
  }
  return Math.max(0, contrast);
}

function edgeExcess(p: Region, q: Region, border: Border): number {
  const inner = p.innerLength + q.innerLength;
  const before = inner > 0 ? (p.innerEdge + q.innerEdge) / inner : 0;
  const excess = border.edge / border.length - before;
  return inner > 0 && excess > 0 ? excess * excess : 0;
}

/** How different two touching regions are. @param total pixels of the picture. */
function difference(p: Region, q: Region, border: Border, total: number): number {
  let means = 0;
  for (let cue = 0; cue < CUES; cue++) means += (meanOf(p, cue) - meanOf(q, cue)) ** 2;
  const apart =
    boundaryContrast(border) +
    (MEANS_WEIGHT * means) / (1 + means / MEANS_LIMIT) +
    EDGE_WEIGHT * edgeExcess(p, q, border);
  const level = SIDEWAYS + (1 - SIDEWAYS) * (Math.abs(border.above) / border.length);
  const shared = (p.pixels * q.pixels) / (p.pixels + q.pixels) / total;
  return apart * level * shared ** SIZE_POWER;
}

/** One step of merging: `from` went into `into`. */
export interface Merge {
  readonly into: number;
  readonly from: number;
}

interface Candidate {
  readonly p: number;
  readonly q: number;
  cost: number;
}

function addInto(into: Region, from: Region): void {
  into.pixels += from.pixels;
  into.sumY += from.sumY;
  into.innerLength += from.innerLength;
  into.innerEdge += from.innerEdge;
  for (let cue = 0; cue < CUES; cue++) {
    into.sums[cue] = (into.sums[cue] as number) + (from.sums[cue] as number);
  }
}

/** Adds `border` of `from` towards `other` to that of `into`, turning its sign where the numbers' order turns. */
function addBorder(target: Border, border: Border, turned: boolean): void {
  const sign = turned ? -1 : 1;
  for (let cue = 0; cue < CUES; cue++) {
    target.sums[cue] = (target.sums[cue] as number) + sign * (border.sums[cue] as number);
    target.squares[cue] = (target.squares[cue] as number) + (border.squares[cue] as number);
  }
  target.length += border.length;
  target.edge += border.edge;
  target.above += sign * border.above;
}

function moveBorders(regions: readonly Region[], into: number, from: number): void {
  const [host, guest] = [regions[into] as Region, regions[from] as Region];
  const shared = host.borders.get(from);
  if (shared) {
    host.innerLength += shared.length;
    host.innerEdge += shared.edge;
  }
  host.borders.delete(from);
  for (const [other, border] of guest.borders) {
    const beyond = regions[other] as Region;
    beyond.borders.delete(from);
    if (other === into) continue;
    const turned = from < other !== into < other;
    const known = host.borders.get(other);
    if (known) {
      addBorder(known, border, turned);
    } else {
      if (turned) {
        for (let cue = 0; cue < CUES; cue++) border.sums[cue] = -(border.sums[cue] as number);
        border.above = -border.above;
      }
      host.borders.set(other, border);
      beyond.borders.set(into, border);
    }
  }
  guest.borders.clear();
}

/** Puts `from` into `into`, with all its borders. */
function dissolve(regions: readonly Region[], into: number, from: number): Merge {
  addInto(regions[into] as Region, regions[from] as Region);
  moveBorders(regions, into, from);
  return { into, from };
}

/** Merges regions that are known to be one. The regions change. @returns the steps; none for fewer than two. */
export function joinRegions(regions: readonly Region[], members: readonly number[]): Merge[] {
  const [into, ...others] = members;
  return into === undefined ? [] : others.map((from) => dissolve(regions, into, from));
}

/**
 * Merges until `until` regions are left. The regions change; one that went into another has no borders.
 *
 * @param total pixels of the picture. @param left regions not yet gone into another. @returns the steps in order.
 */
export function mergeRegions(
  regions: readonly Region[],
  total: number,
  left: number,
  until: number,
): Merge[] {
  const merges: Merge[] = [];
  let candidates: Candidate[] = [];
  const candidate = (p: number, q: number, border: Border): Candidate => ({
    p,
    q,
    cost: difference(regions[p] as Region, regions[q] as Region, border, total),
  });
  regions.forEach(({ borders }, p) => {
    for (const [q, border] of borders) if (p < q) candidates.push(candidate(p, q, border));
  });
  while (left - merges.length > until && candidates.length > 0) {
    const { p: into, q: from } = candidates.reduce((best, other) => (other.cost < best.cost ? other : best));
    merges.push(dissolve(regions, into, from));
    candidates = candidates.filter(({ p, q }) => p !== into && q !== into && p !== from && q !== from);
    for (const [other, border] of (regions[into] as Region).borders) {
      candidates.push(candidate(Math.min(into, other), Math.max(into, other), border));
    }
  }
  return merges;
}

/** The region that each superpixel is in after all merges, by the number of the superpixel that took the others in. */
export function rootsAfter(superpixels: number, merges: readonly Merge[]): Int32Array {
  const parent = Int32Array.from({ length: superpixels }, (_, at) => at);
  for (const { into, from } of merges) parent[from] = into;
  return parent.map((_, at) => {
    let root = at;
    while (parent[root] !== root) root = parent[root] as number;
    return root;
  });
}
