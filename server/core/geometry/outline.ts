/**
 * Whether an outline can be filled: area, self-crossing, coordinates.
 *
 * In the flow: setup -> [outline] -> rasterise. Coordinates are fractions of the picture. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';

/** Twice the signed area of a triangle; its sign says on which side of a→b the point c lies. */
function side(a: FractionPoint, b: FractionPoint, c: FractionPoint): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Signed area by the shoelace sum; positive when the points run clockwise on the screen (y down). */
export function signedArea(points: readonly FractionPoint[]): number {
  let sum = 0;
  let previous = points.at(-1);
  for (const point of points) {
    if (previous) sum += previous[0] * point[1] - point[0] * previous[1];
    previous = point;
  }
  return sum / 2;
}

interface Edge {
  /** Index of its first point in the outline as given. */
  readonly index: number;
  readonly from: FractionPoint;
  readonly to: FractionPoint;
  /** The point after `to`. */
  readonly beyond: FractionPoint;
  readonly left: number;
  readonly right: number;
}

function edgesOf(points: readonly FractionPoint[]): Edge[] {
  const distinct = points
    .map((point, index) => ({ point, index }))
    .filter(({ point }, at, all) => {
      const before = all.at(at - 1)?.point;
      return all.length < 2 || !before || before[0] !== point[0] || before[1] !== point[1];
    });
  return distinct.flatMap(({ point: from, index }, at) => {
    const to = distinct[(at + 1) % distinct.length]?.point;
    const beyond = distinct[(at + 2) % distinct.length]?.point;
    if (!to || !beyond) return [];
    return [{ index, from, to, beyond, left: Math.min(from[0], to[0]), right: Math.max(from[0], to[0]) }];
  });
}

/** Whether `edge` runs through the corner at `other.to` and comes out on the other side. */
function cutsCorner(edge: Edge, other: Edge): boolean {
  if (side(edge.from, edge.to, other.to) !== 0) return false;
  const along =
    (other.to[0] - edge.from[0]) * (edge.to[0] - edge.from[0]) +
    (other.to[1] - edge.from[1]) * (edge.to[1] - edge.from[1]);
  const length = (edge.to[0] - edge.from[0]) ** 2 + (edge.to[1] - edge.from[1]) ** 2;
  if (along <= 0 || along >= length) return false;
  return side(edge.from, edge.to, other.from) * side(edge.from, edge.to, other.beyond) < 0;
}

function cross(p: Edge, q: Edge): boolean {
  const qAcrossP = side(p.from, p.to, q.from) * side(p.from, p.to, q.to);
  const pAcrossQ = side(q.from, q.to, p.from) * side(q.from, q.to, p.to);
  if (qAcrossP < 0 && pAcrossQ < 0) return true;
  return qAcrossP === 0 || pAcrossQ === 0 ? cutsCorner(p, q) || cutsCorner(q, p) : false;
}

/**
 * First place where an outline crosses itself: the indices (from 0) of the points where the two crossing
 * sides begin, or null. An outline that only touches itself does not cross.
 *
 * Sides are sorted by their left end, so only those that overlap from left to right are compared.
 */
export function findSelfCrossing(points: readonly FractionPoint[]): [number, number] | null {
  const edges = edgesOf(points).sort((p, q) => p.left - q.left);
  for (let i = 0; i < edges.length; i++) {
    const p = edges[i] as Edge;
    for (let j = i + 1; j < edges.length; j++) {
      const q = edges[j] as Edge;
      if (q.left > p.right) break;
      if (cross(p, q)) return p.index < q.index ? [p.index, q.index] : [q.index, p.index];
    }
  }
  return null;
}
