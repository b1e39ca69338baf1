/**
 * A ring from a contour: where the contour runs as an outline did before, that outline's own points come back.
 *
 * In the flow: contour + outlines it was cut from -> [keep-stretches] -> checked ring. A side of the contour is old where
 * the cells on both sides of it lay on the same sides of an old outline; only the rest is drawn anew, and tidied. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { signedArea } from '../../geometry/outline.ts';
import { type Contour, leftOf, rightOf, STEP_X, STEP_Y } from './contour.ts';
import type { Grid, Mask } from './grid.ts';
import { type GridPoint, tidyLine } from './tidy-line.ts';

/** An outline whose stretches may come back. */
export interface Source {
  readonly ring: readonly FractionPoint[];
  readonly mask: Mask;
}

/** Fewer old sides than this in a row are drawn anew. */
const LEAST_SIDES = 6;
/** How far, in cells, an old outline may lie from the middle of a side that it made. */
const NEAR = 1.5;

interface Run {
  /** Index of the source; −1 = new. */
  readonly source: number;
  /** First side and how many. */
  readonly first: number;
  readonly count: number;
}

/** Which source each side comes from; −1 where it is new. A side keeps to the source of the one before it. */
function sourcesOf(contour: Contour, grid: Grid, sources: readonly Source[]): Int8Array {
  const result = new Int8Array(contour.length).fill(-1);
  let last = -1;
  for (let at = 0; at < contour.length; at++) {
    const [x, y] = [contour.x[at] as number, contour.y[at] as number];
    const heading = contour.heading[at] as number;
    const [inside, outside] = [rightOf(grid, x, y, heading), leftOf(grid, x, y, heading)];
    const made = (source: number) => {
      const mask = sources[source]?.mask;
      return mask?.[inside] === 1 && (outside < 0 || mask[outside] !== 1);
    };
    if (last < 0 || !made(last)) last = sources.findIndex((_, source) => made(source));
    result[at] = last;
  }
  return result;
}

/** Runs of sides of one source, in order round the contour; short old ones count as new. */
function runsOf(sources: Int8Array): Run[] {
  const count = sources.length;
  let start = 0;
  while (start < count && sources[start] === sources[(start + count - 1) % count]) start++;
  if (start === count) return [{ source: sources[0] as number, first: 0, count }];
  const runs: Run[] = [];
  for (let step = 0; step < count; ) {
    const first = (start + step) % count;
    const source = sources[first] as number;
    let length = 1;
    while (step + length < count && sources[(first + length) % count] === source) length++;
    runs.push({ source: length < LEAST_SIDES ? -1 : source, first, count: length });
    step += length;
  }
  return joined(runs);
}

/** Neighbouring new runs become one. */
function joined(runs: readonly Run[]): Run[] {
  const result: Run[] = [];
  for (const run of runs) {
    const before = result.at(-1);
    if (before && before.source < 0 && run.source < 0) {
      result[result.length - 1] = { ...before, count: before.count + run.count };
    } else result.push(run);
  }
  const [first, last] = [result[0], result.at(-1)];
  if (result.length > 1 && first && last && first.source < 0 && last.source < 0) {
    result.shift();
    result[result.length - 1] = { ...last, count: last.count + first.count };
  }
  return result;
}

/** A place on a ring: on the side that begins at point `at`, `share` of the way along it. */
interface RingPlace {
  readonly at: number;
  readonly share: number;
  readonly point: GridPoint;
}

/** The place of a clockwise ring, in cells, nearest to a contour's side and running the same way; null if far. */
function placeOn(ring: readonly GridPoint[], [px, py]: GridPoint, heading: number): RingPlace | null {
  let best: RingPlace | null = null;
  let least = NEAR * NEAR;
  const [hx, hy] = [STEP_X[heading] ?? 0, STEP_Y[heading] ?? 0];
  for (let at = 0; at < ring.length; at++) {
    const [ax, ay] = ring[at] as GridPoint;
    const [bx, by] = ring[(at + 1) % ring.length] as GridPoint;
    const [dx, dy] = [bx - ax, by - ay];
    const length = dx * dx + dy * dy;
    if (length === 0 || dx * hx + dy * hy < -0.3 * Math.sqrt(length)) continue;
    const share = Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / length));
    const point: GridPoint = [ax + share * dx, ay + share * dy];
    const off = (point[0] - px) ** 2 + (point[1] - py) ** 2;
    if (off < least) [least, best] = [off, { at, share, point }];
  }
  return best;
}

const lengthOf = (line: readonly GridPoint[]) =>
  line.slice(1).reduce((sum, [x, y], at) => {
    const [px, py] = line[at] ?? [x, y];
    return sum + Math.hypot(x - px, y - py);
  }, 0);

/** The stretch of a ring from one place forward to another. */
function stretch(ring: readonly GridPoint[], from: RingPlace, to: RingPlace): GridPoint[] {
  const line: GridPoint[] = [from.point];
  const around =
    to.at - from.at + (to.at < from.at || (to.at === from.at && to.share < from.share) ? ring.length : 0);
  for (let step = 1; step <= around; step++) line.push(ring[(from.at + step) % ring.length] as GridPoint);
  line.push(to.point);
  return line;
}

/** The middle of a side. */
function middleOf(contour: Contour, side: number): GridPoint {
  const heading = contour.heading[side] as number;
  return [
    (contour.x[side] as number) + (STEP_X[heading] ?? 0) / 2,
    (contour.y[side] as number) + (STEP_Y[heading] ?? 0) / 2,
  ];
}

/** The old outline's points along a run; null where they cannot be told, so that the run is drawn anew. */
function oldStretch(contour: Contour, run: Run, ring: readonly GridPoint[]): GridPoint[] | null {
  const last = (run.first + run.count - 1) % contour.length;
  const from = placeOn(ring, middleOf(contour, run.first), contour.heading[run.first] as number);
  const to = placeOn(ring, middleOf(contour, last), contour.heading[last] as number);
  if (!from || !to) return null;
  const line = stretch(ring, from, to);
  const length = lengthOf(line);
  // A slanted line passes up to 1.41 sides a cell of its length: far more or less is another stretch of the ring.
  return length > run.count * 1.1 + 4 || length < run.count / 1.6 - 4 ? null : line;
}

/** The ring in cells, clockwise on the screen. */
export function inCells(ring: readonly FractionPoint[], { columns, rows }: Grid): GridPoint[] {
  const cells = ring.map(([x, y]): GridPoint => [x * columns, y * rows]);
  return signedArea(ring) < 0 ? cells.reverse() : cells;
}

/** How a new stretch is drawn: from calm to exact. */
export interface Drawing {
  /** Neighbours over which the sides' middles are averaged. */
  readonly reach: number;
  /** Largest departure of the points left out, cells. */
  readonly tolerance: number;
  /** Whether old stretches come back. */
  readonly keeps: boolean;
}

/**
 * The ring of a contour, in 0..1 of the picture.
 *
 * @param sources outlines whose stretches come back; those that leave the picture are not used.
 */
export function ringOf(
  contour: Contour,
  grid: Grid,
  sources: readonly Source[],
  drawing: Drawing,
): FractionPoint[] {
  const usable = drawing.keeps ? sources.filter(({ ring }) => ring.every(isInside)) : [];
  const runs = runsOf(sourcesOf(contour, grid, usable));
  const rings = usable.map(({ ring }) => inCells(ring, grid));
  const [only] = runs;
  const whole = only && runs.length === 1 ? usable[only.source]?.ring : undefined;
  if (whole) return [...whole];
  const old = runs.map((run) => {
    const ring = rings[run.source];
    return ring ? oldStretch(contour, run, ring) : null;
  });
  const points = runs.flatMap((run, at) => {
    const kept = old[at];
    if (kept) return kept;
    const before = old.at(at - 1)?.at(-1);
    const after = old[(at + 1) % old.length]?.[0];
    return tidyLine(contour, grid, run, drawing, before, after);
  });
  return distinct(points).map(([x, y]) => [x / grid.columns, y / grid.rows]);
}

const isInside = ([x, y]: FractionPoint) => x >= 0 && x <= 1 && y >= 0 && y <= 1;

/** Neighbouring points that coincide become one. */
function distinct(points: readonly GridPoint[]): GridPoint[] {
  return points.filter(([x, y], at) => {
    const before = points[(at + points.length - 1) % points.length];
    return points.length < 2 || !before || Math.hypot(x - before[0], y - before[1]) > 1e-6;
  });
}
