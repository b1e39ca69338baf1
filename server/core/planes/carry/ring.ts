/**
 * Closed lines whose sides know what they are: cut to a box, freed of loops, with as few points as serve.
 *
 * In the flow: carried-rings, fit-ridges -> [ring] -> outlines. Pure. Source: Sutherland & Hodgman 1974, "Reentrant
 * polygon clipping"; Douglas & Peucker 1973 for fewer points.
 */
import type { FractionPoint, Outline } from '../../contract/setup.ts';
import { findSelfCrossing, signedArea } from '../../geometry/outline.ts';

/** A corner of a ring; what is said of it holds for the side from it to the next. */
export interface RingPoint {
  readonly at: FractionPoint;
  /** Nobody can be sure of this side. */
  readonly unsure: boolean;
}

/** Left, top, right, bottom. */
export type Box = readonly [left: number, top: number, right: number, bottom: number];

/** How far inside the box a place lies from each of its sides. */
const INSIDE: readonly ((box: Box, at: FractionPoint) => number)[] = [
  ([left], [x]) => x - left,
  ([, top], [, y]) => y - top,
  ([, , right], [x]) => right - x,
  ([, , , bottom], [, y]) => bottom - y,
];

/** Puts a place that is on a side of the box exactly on it. */
function onSide(box: Box, side: number, [x, y]: FractionPoint): FractionPoint {
  const value = box[side] as number;
  return side % 2 === 0 ? [value, y] : [x, value];
}

function cutAtSide(ring: readonly RingPoint[], box: Box, side: number): RingPoint[] {
  const inside = INSIDE[side] as (box: Box, at: FractionPoint) => number;
  const kept: RingPoint[] = [];
  ring.forEach((point, index) => {
    const next = ring[(index + 1) % ring.length] as RingPoint;
    const [here, there] = [inside(box, point.at), inside(box, next.at)];
    if (here >= 0) kept.push(point);
    if (here >= 0 === there >= 0) return;
    const along = here / (here - there);
    const [x0, y0] = point.at;
    const crossing: FractionPoint = [x0 + along * (next.at[0] - x0), y0 + along * (next.at[1] - y0)];
    kept.push({ at: onSide(box, side, crossing), unsure: here >= 0 ? false : point.unsure });
  });
  return kept;
}

/** What of a ring lies in the box; empty where nothing does. Parts that fall asunder stay joined along its sides. */
export function cutToBox(ring: readonly RingPoint[], box: Box): RingPoint[] {
  let kept: RingPoint[] = [...ring];
  for (let side = 0; side < 4; side++) kept = cutAtSide(kept, box, side);
  return withoutRepeats(kept);
}

/** Whether both ends of the side from `a` to `b` lie on one side of the box. */
export function liesOnBox(box: Box, a: FractionPoint, b: FractionPoint): boolean {
  return INSIDE.some((inside) => inside(box, a) === 0 && inside(box, b) === 0);
}

export function withoutRepeats(ring: readonly RingPoint[]): RingPoint[] {
  return ring.filter(({ at }, index) => {
    const next = ring[(index + 1) % ring.length] as RingPoint;
    return ring.length === 1 || at[0] !== next.at[0] || at[1] !== next.at[1];
  });
}

export const outlineOf = (ring: readonly RingPoint[]): Outline => ring.map(({ at }) => [at[0], at[1]]);

export const areaOf = (ring: readonly RingPoint[]): number => Math.abs(signedArea(ring.map(({ at }) => at)));

/** Most loops that are taken out; a line with more is no outline. */
const MOST_LOOPS = 60;

function crossingOf(p: FractionPoint, q: FractionPoint, r: FractionPoint, s: FractionPoint): FractionPoint {
  const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
  const [ex, ey] = [s[0] - r[0], s[1] - r[1]];
  const across = dx * ey - dy * ex;
  if (across === 0) return q;
  const along = Math.min(1, Math.max(0, ((r[0] - p[0]) * ey - (r[1] - p[1]) * ex) / across));
  return [p[0] + along * dx, p[1] + along * dy];
}

/** Without the smaller loop wherever the ring crosses itself; null when too many are left. */
export function withoutLoops(ring: readonly RingPoint[]): RingPoint[] | null {
  let kept: RingPoint[] = [...ring];
  for (let loop = 0; loop <= MOST_LOOPS; loop++) {
    if (kept.length < 3) return null;
    const found = findSelfCrossing(kept.map(({ at }) => at));
    if (!found) return kept;
    const [i, j] = found;
    const point = (index: number): RingPoint => kept[index % kept.length] as RingPoint;
    const at = crossingOf(point(i).at, point(i + 1).at, point(j).at, point(j + 1).at);
    const inner = [...kept.slice(i + 1, j + 1)];
    const outer = [...kept.slice(0, i + 1), ...kept.slice(j + 1)];
    const keepOuter = areaOf(outer) >= areaOf(inner);
    const joint: RingPoint = { at, unsure: point(keepOuter ? j : i).unsure };
    kept = withoutRepeats(
      keepOuter ? [...kept.slice(0, i + 1), joint, ...kept.slice(j + 1)] : [...inner, joint],
    );
  }
  return null;
}

/** Distance of `c` from the line through a and b, with heights in `aspect` of widths. */
function offLine(a: FractionPoint, b: FractionPoint, c: FractionPoint, aspect: number): number {
  const [dx, dy] = [b[0] - a[0], (b[1] - a[1]) * aspect];
  const [px, py] = [c[0] - a[0], (c[1] - a[1]) * aspect];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / length));
  return Math.hypot(px - along * dx, py - along * dy);
}

/** Marks the points between `from` and `to` that are needed to stay within `tolerance`. */
function keepBetween(
  ring: readonly RingPoint[],
  from: number,
  to: number,
  { tolerance, aspect }: Fewer,
  keep: Uint8Array,
): void {
  const open: [number, number][] = [[from, to]];
  const at = (index: number): FractionPoint => (ring[index % ring.length] as RingPoint).at;
  for (let part = open.pop(); part; part = open.pop()) {
    const [start, end] = part;
    let [farthest, most] = [-1, tolerance];
    for (let index = start + 1; index < end; index++) {
      const off = offLine(at(start), at(end), at(index), aspect);
      if (off > most) [farthest, most] = [index, off];
    }
    if (farthest < 0) continue;
    keep[farthest % ring.length] = 1;
    open.push([start, farthest], [farthest, end]);
  }
}

interface Fewer {
  /** Largest departure, in widths of the picture. */
  readonly tolerance: number;
  /** Height / width of the picture. */
  readonly aspect: number;
}

/** With fewer points; where sure and unsure sides meet, the point stays. */
export function withFewerPoints(ring: readonly RingPoint[], fewer: Fewer): RingPoint[] {
  const keep = new Uint8Array(ring.length);
  ring.forEach(({ unsure }, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] as RingPoint;
    if (before.unsure !== unsure) keep[index] = 1;
  });
  keep[0] = 1;
  // The point farthest from the first: without it a ring could become a line.
  const first = (ring[0] as RingPoint).at;
  let [far, most] = [0, -1];
  ring.forEach(({ at }, index) => {
    const off = Math.hypot(at[0] - first[0], (at[1] - first[1]) * fewer.aspect);
    if (off > most) [far, most] = [index, off];
  });
  keep[far] = 1;
  const fixed = [...keep.keys()].filter((index) => keep[index] === 1);
  fixed.forEach((from, index) => {
    const to = fixed[index + 1] ?? (fixed[0] as number) + ring.length;
    keepBetween(ring, from, to, fewer, keep);
  });
  return ring.filter((_, index) => keep[index] === 1);
}
