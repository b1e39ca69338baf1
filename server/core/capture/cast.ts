/**
 * Whether every plane of the painting moved alike in a*, b*: likely the lamp, not the paint.
 *
 * In the flow: gaps of a compared pair -> [cast] -> grade. Pure. Source: common practice; limits of the trade notes.
 */
import type { PlaneResult } from '../contract/measures.ts';
import { median } from '../image/percentiles.ts';

const MOVED = 6;
const EQUAL_WITHIN = 3;
const FEWEST_PLANES = 3;

export function hasOneCast(planes: readonly PlaneResult[]): boolean {
  const moves = planes.flatMap(({ gap }) =>
    gap && gap.a !== null && gap.b !== null ? [{ a: gap.a, b: gap.b }] : [],
  );
  const [a, b] = [median(moves.map((move) => move.a)), median(moves.map((move) => move.b))];
  if (moves.length < FEWEST_PLANES || a === null || b === null) return false;
  return (
    Math.hypot(a, b) >= MOVED && moves.every((move) => Math.hypot(move.a - a, move.b - b) <= EQUAL_WITHIN)
  );
}
