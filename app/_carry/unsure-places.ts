/**
 * Which stretches of a carried outline nobody can be sure of, to draw and to name.
 *
 * In the flow: carried planes -> [unsure-places] -> layer, words. All in 0..1 of the squared painting. Pure.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { CarriedPlane } from '#server/core/planes/carry/lay-planes.ts';

export interface Stretch {
  unsure: boolean;
  points: FractionPoint[];
}

const onBorder = ([x, y]: FractionPoint, [u, v]: FractionPoint): boolean =>
  [
    [x, u],
    [y, v],
  ].some(([a = 0, b = 0]) => (a <= 1e-6 && b <= 1e-6) || (a >= 1 - 1e-6 && b >= 1 - 1e-6));

/** The ridges of an outline, cut where sure and unsure meet; what runs along the painting's border is left out. */
export function stretchesOf({ outline, unsure }: CarriedPlane): Stretch[] {
  const stretches: Stretch[] = [];
  let open: Stretch | null = null;
  outline.forEach((from, at) => {
    const to = outline[(at + 1) % outline.length] ?? from;
    if (onBorder(from, to)) {
      open = null;
      return;
    }
    const doubt = unsure[at] ?? false;
    if (open?.unsure === doubt) open.points.push(to);
    else {
      open = { unsure: doubt, points: [from, to] };
      stretches.push(open);
    }
  });
  return stretches;
}

const lengthOf = (points: readonly FractionPoint[]): number =>
  points.slice(1).reduce((sum, [x, y], at) => {
    const [u, v] = points[at] ?? [x, y];
    return sum + Math.hypot(x - u, y - v);
  }, 0);

/** Shorter unsure stretches than this are drawn, but get no sign and no word. */
const WORTH_A_WORD = 0.04;

/** The middles of the unsure stretches that are long enough to be looked at. */
export function signsOf(stretches: readonly Stretch[]): FractionPoint[] {
  return stretches.flatMap(({ unsure, points }) => {
    if (!unsure || lengthOf(points) < WORTH_A_WORD) return [];
    let left = lengthOf(points) / 2;
    for (let at = 1; at < points.length; at++) {
      const pair = points.slice(at - 1, at + 1);
      const side = lengthOf(pair);
      const [from, to] = pair;
      if (from && to && side >= left) {
        const along = side === 0 ? 0 : left / side;
        return [[from[0] + along * (to[0] - from[0]), from[1] + along * (to[1] - from[1])] as FractionPoint];
      }
      left -= side;
    }
    return [];
  });
}

export const THIRDS = ['left', 'middle', 'right'] as const;
export type Third = (typeof THIRDS)[number];

export interface Doubt {
  planeId: string;
  /** All of its ridge, or where. */
  where: 'all' | Third[];
}

/** More of a ridge than this unsure is all of it. */
const NEARLY_ALL = 0.8;

/** What is unsure of a plane; null when nothing is worth a word. */
export function doubtOf(plane: CarriedPlane): Doubt | null {
  const stretches = stretchesOf(plane);
  const signs = signsOf(stretches);
  if (signs.length === 0) return null;
  const length = (unsure: boolean) =>
    stretches.filter((each) => each.unsure === unsure).reduce((sum, { points }) => sum + lengthOf(points), 0);
  const share = length(true) / (length(true) + length(false));
  const thirds = new Set(signs.map(([x]) => THIRDS[Math.min(2, Math.floor(x * 3))] ?? 'middle'));
  const where = share > NEARLY_ALL || thirds.size === 3 ? 'all' : THIRDS.filter((third) => thirds.has(third));
  return { planeId: plane.id, where };
}
