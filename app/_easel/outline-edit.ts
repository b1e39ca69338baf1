/**
 * What the hand does to an outline: close a ridge, simplify a freehand line, move, add and take away points.
 *
 * Outlines are 0..1 of the upright original. In the flow: pointer -> [outline-edit] -> live document.
 * Whether an outline is allowed is decided in core; nothing here refuses. Pure.
 * Simplifying: Douglas & Peucker 1973, "Algorithms for the reduction of the number of points".
 */
import type { FractionPoint, Outline, PlaneKind } from '#server/core/contract/setup.ts';

/** A ridge that ends this near the picture's side (share of its width) is taken to run to the side. */
const SIDE_REACH = 0.06;

const held = (value: number) => Math.min(1, Math.max(0, value));
export const insidePicture = ([x, y]: FractionPoint): FractionPoint => [held(x), held(y)];

/** The whole picture as an outline: what lies behind everything else may simply be all of it. */
export const WHOLE_PICTURE: Outline = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/**
 * Closes a ridge line round the edge of the picture: below it, or above it for the sky.
 *
 * A nearer plane covers a farther one, so a plane may simply run on below its ridge. Ends near a side of the
 * picture are drawn on to it; ends elsewhere drop straight down (or up).
 * @param ridge At least two points, in either direction.
 */
export function closedRidge(ridge: readonly FractionPoint[], kind: PlaneKind): Outline {
  const [first, last] = [ridge[0], ridge.at(-1)];
  if (!first || !last) return [];
  const line = (first[0] <= last[0] ? [...ridge] : [...ridge].reverse()).map(insidePicture);
  const [left, right] = [line[0], line.at(-1)];
  if (!left || !right) return [];
  const base = kind === 'sky' ? 0 : 1;
  const leftX = left[0] <= SIDE_REACH ? 0 : left[0];
  const rightX = right[0] >= 1 - SIDE_REACH ? 1 : right[0];
  const start: FractionPoint[] = leftX < left[0] ? [[leftX, left[1]]] : [];
  const end: FractionPoint[] = rightX > right[0] ? [[rightX, right[1]]] : [];
  return withoutRepeats([...start, ...line, ...end, [rightX, base], [leftX, base]]);
}

/** Neighbouring points that coincide become one. */
function withoutRepeats(points: Outline): Outline {
  return points.filter((point, at) => {
    const before = points[(at + points.length - 1) % points.length];
    return !before || before[0] !== point[0] || before[1] !== point[1];
  });
}

/** Distance of `point` from the stretch a–b, in picture widths; `aspect` = height / width. */
function distanceFrom(point: FractionPoint, a: FractionPoint, b: FractionPoint, aspect: number): number {
  const [dx, dy] = [b[0] - a[0], (b[1] - a[1]) * aspect];
  const [px, py] = [point[0] - a[0], (point[1] - a[1]) * aspect];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / length));
  return Math.hypot(px - along * dx, py - along * dy);
}

/**
 * A freehand line with as few points as keep it within `tolerance`.
 *
 * @param tolerance Largest departure, in picture widths.
 * @param aspect Height / width of the picture.
 */
export function simplified(
  line: readonly FractionPoint[],
  tolerance: number,
  aspect: number,
): FractionPoint[] {
  const keep = new Set([0, line.length - 1]);
  const open: [number, number][] = [[0, line.length - 1]];
  for (let stretch = open.pop(); stretch; stretch = open.pop()) {
    const [from, to] = stretch;
    const farthest = farthestBetween(line, from, to, aspect);
    if (farthest.distance <= tolerance) continue;
    keep.add(farthest.at);
    open.push([from, farthest.at], [farthest.at, to]);
  }
  return line.filter((_, at) => keep.has(at));
}

function farthestBetween(line: readonly FractionPoint[], from: number, to: number, aspect: number) {
  const [a, b] = [line[from], line[to]];
  const farthest = { at: from, distance: -1 };
  if (!a || !b) return farthest;
  for (let at = from + 1; at < to; at++) {
    const point = line[at];
    const distance = point ? distanceFrom(point, a, b, aspect) : -1;
    if (distance > farthest.distance) Object.assign(farthest, { at, distance });
  }
  return farthest;
}

/** A new point on the outline's edge nearest to `point`, and where it now stands in the list. */
export function withPointNear(
  outline: Outline,
  point: FractionPoint,
  aspect: number,
): { outline: Outline; at: number } {
  const { edge } = nearestEdge(outline, point, aspect);
  return {
    outline: [...outline.slice(0, edge + 1), insidePicture(point), ...outline.slice(edge + 1)],
    at: edge + 1,
  };
}

/** The edge (from point `edge` to the next) nearest to `point`, and how far it is in picture widths. */
export function nearestEdge(outline: Outline, point: FractionPoint, aspect: number) {
  const best = { edge: outline.length - 1, distance: Number.POSITIVE_INFINITY };
  outline.forEach((a, at) => {
    const b = outline[(at + 1) % outline.length] ?? a;
    const distance = distanceFrom(point, a, b, aspect);
    if (distance < best.distance) Object.assign(best, { edge: at, distance });
  });
  return best;
}

/** A new point halfway along the edge that follows point `at`. */
export function withPointAfter(outline: Outline, at: number): { outline: Outline; at: number } {
  const a = outline[at];
  const b = outline[(at + 1) % outline.length];
  if (!a || !b) return { outline, at };
  const halfway: FractionPoint = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return { outline: [...outline.slice(0, at + 1), halfway, ...outline.slice(at + 1)], at: at + 1 };
}

/** Without point `at`; an outline of three points stays as it is. */
export function withoutPoint(outline: Outline, at: number): Outline {
  return outline.length <= 3 ? outline : outline.filter((_, index) => index !== at);
}

/** With point `at` moved by a share of the picture, held inside it. */
export function withPointMoved(outline: Outline, at: number, dx: number, dy: number): Outline {
  return outline.map((point, index) =>
    index === at ? insidePicture([point[0] + dx, point[1] + dy]) : point,
  );
}

/**
 * The whole outline moved. Points on the picture's border stay on it, so that a plane that runs out of the
 * picture still does.
 */
export function movedOutline(outline: Outline, dx: number, dy: number): Outline {
  const along = (value: number, by: number) => (value <= 0 || value >= 1 ? value : held(value + by));
  return outline.map(([x, y]) => [along(x, dx), along(y, dy)]);
}
