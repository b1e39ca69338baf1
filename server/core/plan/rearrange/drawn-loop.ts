/**
 * A loop as a hand drew it, made into an outline: fewer points, within the picture.
 *
 * In the flow: pointer on the stage -> [drawn-loop] -> check-motif. Pure. Points that add nothing are left out after
 * Douglas & Peucker (1973).
 */
import type { FractionPoint } from '../../contract/setup.ts';

/** A point nearer to the line than this adds nothing, share of the picture. */
const FINE = 0.0015;
const MOST = 400;

function awayFrom([x, y]: FractionPoint, [x0, y0]: FractionPoint, [x1, y1]: FractionPoint): number {
  const [along, down] = [x1 - x0, y1 - y0];
  const length = Math.hypot(along, down);
  if (length === 0) return Math.hypot(x - x0, y - y0);
  return Math.abs(along * (y0 - y) - down * (x0 - x)) / length;
}

function simplified(points: readonly FractionPoint[], fine: number): FractionPoint[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 3) return [...points];
  let [farthest, most] = [0, 0];
  for (let at = 1; at < points.length - 1; at++) {
    const away = awayFrom(points[at] as FractionPoint, first, last);
    if (away > most) [farthest, most] = [at, away];
  }
  if (most <= fine) return [first, last];
  const before = simplified(points.slice(0, farthest + 1), fine);
  return [...before.slice(0, -1), ...simplified(points.slice(farthest), fine)];
}

/** @param points as the pointer went; a loop that a hand drew over the picture's edge ends at the edge. */
export function drawnLoop(points: readonly FractionPoint[]): FractionPoint[] {
  const [first] = points;
  if (!first) return [];
  // Split at the farthest point, since a closed line has no ends to hold on to.
  const far = points.reduce(
    (best, [x, y], at) => {
      const away = Math.hypot(x - first[0], y - first[1]);
      return away > best.away ? { at, away } : best;
    },
    { at: 0, away: 0 },
  ).at;
  for (let fine = FINE; ; fine *= 2) {
    const [out, back] = [simplified(points.slice(0, far + 1), fine), simplified(points.slice(far), fine)];
    const loop = [...out, ...back.slice(1)];
    if (loop.length <= MOST) return loop;
  }
}
