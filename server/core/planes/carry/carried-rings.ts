/**
 * Outlines of one picture as rings on the painting: placed, and led on to its borders where the painting is wider.
 *
 * In the flow: outlines, placement -> [carried-rings] -> fit-ridges. What ran along the first picture's border runs
 * along the painting's; a ridge that ended at its left or right goes on level, one that ended at its top or bottom in
 * the direction that it had. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { moved, type Placement, type PlaneMove, placed } from './placement.ts';
import { type Box, cutToBox, type RingPoint } from './ring.ts';

/** Rings go on this far beyond the painting, in its sides, so that a moved ridge still ends at its border. */
export const BEYOND = 0.08;
export const WIDE_BOX: Box = [-BEYOND, -BEYOND, 1 + BEYOND, 1 + BEYOND];
export const PAINTING_BOX: Box = [0, 0, 1, 1];

/** A point this near the border was meant to be on it. */
const ON_BORDER = 0.006;
/** Where the border of the first picture goes: far outside. */
const FAR = 30;

/** Which borders a point is on: left or right, top or bottom; 0 = neither. */
function bordersOf([x, y]: FractionPoint): readonly [number, number] {
  const along = (value: number): number => (value <= ON_BORDER ? -1 : value >= 1 - ON_BORDER ? 1 : 0);
  return [along(x), along(y)];
}

/** The borders that both ends of a side are on. */
function shared(a: FractionPoint, b: FractionPoint): readonly [number, number] {
  const [p, q] = [bordersOf(a), bordersOf(b)];
  return [p[0] === q[0] ? p[0] : 0, p[1] === q[1] ? p[1] : 0];
}

function pushed([x, y]: FractionPoint, [across, down]: readonly [number, number]): FractionPoint {
  return [across === 0 ? x : across * FAR, down === 0 ? y : down * FAR];
}

/** A ridge that leaves through the top or the bottom is looked back along this far for its direction. */
const LOOK_BACK = 0.06;
/** It goes at least so steeply, in heights a width: else it would never leave. */
const STEEP = 0.2;
/** And on for so many paintings. */
const ONWARDS = 3;

/**
 * Where a ridge goes on beyond the border on which it ends.
 *
 * @param line the ridge from its end backwards, on the painting.
 */
function onwards(line: readonly FractionPoint[], borders: readonly [number, number]): FractionPoint {
  const [end = [0, 0]] = line;
  const [across, down] = borders;
  if (across !== 0 || down === 0) return pushed(end, borders);
  const back = line.find(([x, y]) => Math.hypot(x - end[0], y - end[1]) >= LOOK_BACK) ?? line.at(-1) ?? end;
  const [dx, dy] = [end[0] - back[0], down * Math.max(0, down * (end[1] - back[1]))];
  const steep = Math.max(Math.abs(dy), STEEP * Math.abs(dx), 1e-6);
  const long = Math.hypot(dx, steep);
  return [end[0] + (ONWARDS * dx) / long, end[1] + (ONWARDS * down * steep) / long];
}

/**
 * A ring within `WIDE_BOX`; empty when nothing of the plane lies there.
 *
 * @param outline 0..1 of the first picture. @param move null = the plane was not moved by itself.
 */
export function carriedRing(
  outline: readonly FractionPoint[],
  placement: Placement,
  move: PlaneMove | null,
): RingPoint[] {
  const put = (point: FractionPoint): FractionPoint => {
    const there = placed(placement, point);
    return move ? moved(move, there) : there;
  };
  const ring: RingPoint[] = [];
  const add = (at: FractionPoint): void => {
    ring.push({ at, unsure: false });
  };
  outline.forEach((point, index) => {
    const before = outline[(index + outline.length - 1) % outline.length] as FractionPoint;
    const after = outline[(index + 1) % outline.length] as FractionPoint;
    const [came, goes] = [shared(before, point), shared(point, after)];
    const [onCame, onGoes] = [came.some(Boolean), goes.some(Boolean)];
    const there = put(point);
    const along = (step: 1 | -1): FractionPoint[] =>
      Array.from({ length: Math.min(40, outline.length) }, (_, far) => {
        const at = (index + step * far + outline.length * 40) % outline.length;
        return put(outline[at] as FractionPoint);
      });
    if (onCame && onGoes) add(pushed(there, [came[0] || goes[0], came[1] || goes[1]]));
    else {
      if (onCame) add(onwards(along(1), came));
      add(there);
      if (onGoes) add(onwards(along(-1), goes));
    }
  });
  return cutToBox(ring, WIDE_BOX);
}
