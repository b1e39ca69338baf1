/**
 * A point pulled out of an outline takes the line with it: close neighbours that were followed to it give way, and the
 * stretches to both sides may bend onto an edge.
 *
 * In the flow: outline hand -> [pulled-line] -> outline worker -> live document. Lengths are in picture widths. Pure.
 */
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';

/** Neighbours nearer to each other than this were followed or drawn, not set one by one. */
const DENSE = 0.025;
/** The pull reaches as far along the line as the hand went, and at most this far. */
const FARTHEST = 0.06;

/** How many points give way on one side of point `at`. @param step 1 = forward, −1 = backward. */
function givingWay(outline: Outline, at: number, step: 1 | -1, reach: number, aspect: number): number {
  const point = (by: number) => outline[(at + step * by + outline.length * 2) % outline.length];
  let [count, gone] = [0, 0];
  while (count < outline.length / 2 - 2) {
    const [from, to] = [point(count), point(count + 1)];
    if (!from || !to || onBorder(to)) return count;
    const length = Math.hypot(to[0] - from[0], (to[1] - from[1]) * aspect);
    gone += length;
    if (length > DENSE || gone > reach) return count;
    count++;
  }
  return count;
}

const onBorder = ([x, y]: FractionPoint) => x <= 0 || x >= 1 || y <= 0 || y >= 1;

/** The outline after point `at` was pulled, without the points that give way, and where the point stands in it. */
export function pulledLine(
  before: Outline,
  now: Outline,
  at: number,
  aspect: number,
): { outline: Outline; at: number } {
  const [from, to] = [before[at], now[at]];
  if (!from || !to) return { outline: now, at };
  const reach = Math.min(FARTHEST, Math.hypot(to[0] - from[0], (to[1] - from[1]) * aspect));
  const after = givingWay(before, at, 1, reach, aspect);
  const ahead = givingWay(before, at, -1, reach, aspect);
  const length = now.length;
  const gone = new Set<number>();
  for (let by = 1; by <= after; by++) gone.add((at + by) % length);
  for (let by = 1; by <= ahead; by++) gone.add((at - by + length) % length);
  const outline = now.filter((_, index) => !gone.has(index));
  return { outline, at: outline.indexOf(to) };
}

/** The stretches on both sides of a point. */
export function stretchesBeside(outline: Outline, at: number): [FractionPoint, FractionPoint][] {
  const [before, point, after] = [outline.at(at - 1), outline[at], outline[(at + 1) % outline.length]];
  return before && point && after
    ? [
        [before, point],
        [point, after],
      ]
    : [];
}

/** With the points of the better lines on both sides of point `at`; null leaves a side straight. */
export function withBetterLines(
  outline: Outline,
  at: number,
  [ahead = null, after = null]: readonly (readonly FractionPoint[] | null)[],
): Outline {
  return [
    ...outline.slice(0, at),
    ...(ahead?.slice(1, -1) ?? []),
    ...outline.slice(at, at + 1),
    ...(after?.slice(1, -1) ?? []),
    ...outline.slice(at + 1),
  ];
}
