/**
 * What each kind of mark is made of: how many points, and whether it brings paint or a sample of colour.
 *
 * In the flow: layout -> [mark-kinds] -> marks (readers, writers), shapes (the server's check). Pure.
 */
import type { LiveMark, MarkKind } from './layout.ts';

/** Least and most points of each kind. An arrow goes from its tail to its head; an outline closes by itself. */
export const MARK_POINTS: Readonly<Record<MarkKind, readonly [number, number]>> = {
  pin: [1, 1],
  stroke: [2, 4000],
  arrow: [2, 2],
  outline: [3, 4000],
  text: [1, 1],
  patch: [1, 1],
  sketch: [2, 4000],
  reply: [0, 0],
};

/** Kinds that were there before points were held to the picture: their old marks stay as they are. */
const UNBOUND: ReadonlySet<MarkKind> = new Set<MarkKind>(['pin', 'stroke', 'reply']);

/** Whether the parts of a well-formed mark go with its kind. */
export function fitsKind({ kind, points, parent, paint, patch }: LiveMark): boolean {
  const [least, most] = MARK_POINTS[kind];
  if (points.length < least || points.length > most) return false;
  if (!UNBOUND.has(kind) && !points.every(insidePicture)) return false;
  if (kind === 'reply' && parent === null) return false;
  return (paint !== undefined) === (kind === 'sketch') && (patch !== undefined) === (kind === 'patch');
}

function insidePicture([x, y]: readonly number[]): boolean {
  return [x, y].every((share) => share !== undefined && share >= 0 && share <= 1);
}
