/**
 * Splitting a plane by a line: the nearer part becomes a plane of its own, the other one runs on under it.
 *
 * In the flow: line under the hand -> [split] -> live planes and outlines. The old outline stays as it is, so nothing
 * can fall bare; the new one keeps its points and the line's own. Pure.
 */
import type { FractionPoint, PlaneKind } from '../../contract/setup.ts';
import { NO_PLANE } from '../label-map.ts';
import { type Grid, type Mask, ringMask } from './grid.ts';
import { layersOf, type Ring } from './layers.ts';
import { ringAround } from './ring-around.ts';

/** Where the new part lies: before the rest, or beside it. */
export type SplitPart = 'nearer' | 'left' | 'right';

export interface SplitOff {
  readonly ring: Ring;
  readonly part: SplitPart;
}

/** An end this near to the picture's border, as a share of a side, is taken to lie on it. */
const SIDE_REACH = 0.02;
/** A line that comes back this near to its start goes all the way round. */
const ROUND = 0.03;
/** Shortest way along the line over which its direction at an end is told. */
const HEADING = 0.03;
/** A part must show at least this share of the picture. */
const LEAST_SHARE = 0.0004;

const apart = (a: FractionPoint, b: FractionPoint) => Math.hypot(b[0] - a[0], b[1] - a[1]);
const held = (value: number) => Math.min(1, Math.max(0, value));

/** A line's end drawn on, the way it was going, to the border of the picture. @param line ends at its last point. */
function toBorder(line: readonly FractionPoint[]): FractionPoint {
  const end = line.at(-1) as FractionPoint;
  const [x, y]: FractionPoint = [held(end[0]), held(end[1])];
  const nearest = Math.min(x, 1 - x, y, 1 - y);
  if (nearest <= SIDE_REACH) {
    if (nearest === x) return [0, y];
    if (nearest === 1 - x) return [1, y];
    return nearest === y ? [x, 0] : [x, 1];
  }
  const back = line.findLast((point) => apart(point, end) >= HEADING) ?? (line[0] as FractionPoint);
  const [dx, dy] = [x - back[0], y - back[1]];
  const reach = (from: number, by: number) =>
    by > 0 ? (1 - from) / by : by < 0 ? -from / by : Number.POSITIVE_INFINITY;
  const along = Math.min(reach(x, dx), reach(y, dy));
  return Number.isFinite(along) ? [held(x + along * dx), held(y + along * dy)] : [x, 0];
}

/** Place on the border, 0..4 clockwise from the top left. */
function borderPlace([x, y]: FractionPoint): number {
  if (y <= 0) return x;
  if (x >= 1) return 1 + y;
  return y >= 1 ? 2 + (1 - x) : 3 + (1 - y);
}

const CORNERS: readonly FractionPoint[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** The border's corners on the way clockwise from one place to another. */
function cornersBetween(from: number, to: number): FractionPoint[] {
  const end = to <= from ? to + 4 : to;
  const corners: FractionPoint[] = [];
  for (let corner = Math.floor(from) + 1; corner < end; corner++) {
    corners.push(CORNERS[corner % 4] as FractionPoint);
  }
  return corners;
}

/** The two parts of the picture that a line makes; a line that comes round has an inside only. */
function sidesOf(drawn: readonly FractionPoint[]): FractionPoint[][] {
  const line = drawn.map(([x, y]): FractionPoint => [held(x), held(y)]);
  const [first, last] = [line[0] as FractionPoint, line.at(-1) as FractionPoint];
  const length = line.slice(1).reduce((sum, point, at) => sum + apart(line[at] as FractionPoint, point), 0);
  if (apart(first, last) < ROUND && length > 4 * ROUND) return [line];
  const [start, end] = [toBorder([...line].reverse()), toBorder(line)];
  const whole = [start, ...line, end];
  const clockwise = cornersBetween(borderPlace(end), borderPlace(start));
  const other = cornersBetween(borderPlace(start), borderPlace(end));
  return [
    [...whole, ...clockwise],
    [...[...whole].reverse(), ...other],
  ];
}

interface Side {
  readonly polygon: readonly FractionPoint[];
  readonly mask: Mask;
  /** Cells of the plane that are seen on this side, and their middle. */
  readonly shown: number;
  readonly middle: FractionPoint;
}

function sideOf(polygon: readonly FractionPoint[], plane: number, seen: Uint8Array, grid: Grid): Side {
  const mask = ringMask(polygon, grid);
  let [shown, x, y] = [0, 0, 0];
  for (let cell = 0; cell < mask.length; cell++) {
    if (mask[cell] === 0 || seen[cell] !== plane) continue;
    shown++;
    x += cell % grid.columns;
    y += Math.floor(cell / grid.columns);
  }
  return { polygon, mask, shown, middle: [x / shown / grid.columns, y / shown / grid.rows] };
}

/** Which side is split off, and what it is to the rest. */
function chosenSide([one, other]: readonly Side[], kind: PlaneKind): { side: Side; part: SplitPart } | null {
  if (!one) return null;
  if (!other) return { side: one, part: 'nearer' };
  const [dx, dy] = [other.middle[0] - one.middle[0], other.middle[1] - one.middle[1]];
  if (Math.abs(dy) >= Math.abs(dx) / 2) {
    // Land comes nearer downwards, the sky upwards.
    const otherIsNearer = kind === 'sky' ? dy < 0 : dy > 0;
    return { side: otherIsNearer ? other : one, part: 'nearer' };
  }
  const side = other.shown < one.shown ? other : one;
  return { side, part: (side === other) === dx > 0 ? 'right' : 'left' };
}

/**
 * The part of a plane that a line splits off.
 *
 * @param rings far to near; null where a plane has no outline. @param line at least two points; it may begin and end
 *   beside the plane, and is drawn on to the picture's border where it ends within.
 * @returns null when the line does not divide what is seen of the plane.
 */
export function splitOff(
  rings: readonly (Ring | null)[],
  grid: Grid,
  plane: number,
  kind: PlaneKind,
  line: readonly FractionPoint[],
): SplitOff | null {
  const ring = rings[plane];
  if (!ring || line.length < 2) return null;
  const layers = layersOf(rings, grid);
  const mask = layers.masks[plane] as Mask;
  const all = layers.seen.reduce((count, label) => count + (label === plane ? 1 : 0), 0);
  const sides = sidesOf(line).map((polygon) => sideOf(polygon, plane, layers.seen, grid));
  const least = Math.max(12, LEAST_SHARE * layers.seen.length);
  if (sides.some(({ shown }) => shown < least || shown > all - least)) return null;
  const chosen = chosenSide(sides, kind);
  if (!chosen) return null;
  const target = mask.map((inside, cell) => inside & (chosen.side.mask[cell] as number));
  const own = ringAround(target, layers.seen, plane, grid, [
    { ring, mask },
    { ring: chosen.side.polygon, mask: chosen.side.mask },
  ]);
  return own && divides(ringMask(own, grid), layers.seen, plane, least)
    ? { ring: own, part: chosen.part }
    : null;
}

/** Whether a ring leaves enough of the plane on both sides and laps over nothing farther. */
function divides(ring: Mask, seen: Uint8Array, plane: number, least: number): boolean {
  let [off, rest, strange] = [0, 0, 0];
  for (let cell = 0; cell < ring.length; cell++) {
    const label = seen[cell] as number;
    if (label === plane) {
      if (ring[cell] === 1) off++;
      else rest++;
    } else if (ring[cell] === 1 && (label < plane || label === NO_PLANE)) strange++;
  }
  return off >= least && rest >= least && strange < off / 10;
}
