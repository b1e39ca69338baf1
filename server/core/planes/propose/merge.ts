/**
 * Merges touching regions, the likeliest to be one plane first, into one tree.
 *
 * In the flow: region graph -> [merge] -> tiers. How likely, `apart.ts` says; small regions are merged the sooner,
 * since they could hardly be a plane. Pure.
 */
import { apartness } from './apart.ts';
import { GRAPH_CUES } from './cues.ts';
import type { Border, Region } from './region-graph.ts';

/** Log odds that a region counts as likelier part of another for each e-fold by which it is smaller. */
const SMALL_FIRST = 1 / 6;

/** How unwilling two touching regions are to merge. */
function difference(p: Region, q: Region, border: Border, total: number, rows: number): number {
  const smaller = Math.min(p.pixels, q.pixels) / total;
  return apartness(p, q, border, total, rows) + SMALL_FIRST * Math.log(smaller);
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
  for (let cue = 0; cue < GRAPH_CUES; cue++) {
    into.sums[cue] = (into.sums[cue] as number) + (from.sums[cue] as number);
    into.squares[cue] = (into.squares[cue] as number) + (from.squares[cue] as number);
  }
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
    const above = turned ? -border.above : border.above;
    const known = host.borders.get(other);
    if (known) {
      known.length += border.length;
      known.edge += border.edge;
      known.above += above;
    } else {
      border.above = above;
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
 * @param total pixels of the picture. @param rows of the picture. @param left regions not yet gone into another. @returns the steps in order.
 */
export function mergeRegions(
  regions: readonly Region[],
  total: number,
  rows: number,
  left: number,
  until: number,
): Merge[] {
  const merges: Merge[] = [];
  let candidates: Candidate[] = [];
  const candidate = (p: number, q: number, border: Border): Candidate => ({
    p,
    q,
    cost: difference(regions[p] as Region, regions[q] as Region, border, total, rows),
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
