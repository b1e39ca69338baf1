/**
 * Two people moved points of one outline: what one of them moved, put onto the outline as the other left it.
 *
 * In the flow: outline hand, crossed writes -> [reapplied] -> live document. Pure. Apart from the hand's other doings, for
 * a board needs this from the start.
 */
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';

/**
 * What this person moved, put onto the outline as it stands now.
 *
 * An outline is stored whole, so of two people the later one would undo the other. While someone drags, others
 * are kept off; should their lines still have crossed, the moved points are found again by where they were.
 * @param before The outline when the drag began. @param mine After the drag. @param now As the document has it.
 */
export function reapplied(before: Outline, mine: Outline, now: Outline): Outline {
  if (same(before, now)) return mine;
  if (mine.length !== before.length) return exchanged(before, mine, now);
  const moves = new Map<string, FractionPoint>();
  before.forEach((point, at) => {
    const moved = mine[at];
    if (moved && !samePoint(point, moved)) moves.set(point.join(), moved);
  });
  return now.map((point) => moves.get(point.join()) ?? point);
}

/** The stretch in which `mine` differs from `before`, put into `now` between the same neighbours; else `mine`. */
function exchanged(before: Outline, mine: Outline, now: Outline): Outline {
  const shorter = Math.min(before.length, mine.length);
  const equal = (at: number, other: number) => {
    const [one, two] = [before[at], mine[other]];
    return one !== undefined && two !== undefined && samePoint(one, two);
  };
  let head = 0;
  while (head < shorter && equal(head, head)) head++;
  let tail = 0;
  while (tail < shorter - head && equal(before.length - 1 - tail, mine.length - 1 - tail)) tail++;
  const place = (index: number) => {
    const point = before[index];
    const found = point ? now.findIndex((other) => samePoint(point, other)) : -1;
    return found < 0 && now.length === before.length ? index : found;
  };
  const from = head === 0 ? 0 : place(head - 1) + 1;
  const to = tail === 0 ? now.length : place(before.length - tail);
  if ((head > 0 && from === 0) || to < from) return mine;
  return [...now.slice(0, from), ...mine.slice(head, mine.length - tail), ...now.slice(to)];
}

const samePoint = (a: FractionPoint, b: FractionPoint) => a[0] === b[0] && a[1] === b[1];

export function same(a: Outline, b: Outline): boolean {
  return a.length === b.length && a.every((point, at) => samePoint(point, b[at] ?? [Number.NaN, Number.NaN]));
}
