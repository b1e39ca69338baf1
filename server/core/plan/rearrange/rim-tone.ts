/**
 * What a laid-on motif has to give up of its old surroundings: a loop drawn loosely takes a piece of sky along, and the sky
 * is seldom as light elsewhere.
 *
 * In the flow: motif + what it is laid on -> [rim-tone] -> place-motif. Along the loop the motif is held against what lies
 * there; small differences are a matter of tone and are taken away, less and less towards the middle. Pure. The idea is that
 * of Pérez, Gangnet & Blake (2003), "Poisson image editing"; weights by inverse distance (Shepard 1968).
 */
import type { FractionPoint } from '../../contract/setup.ts';

/** Larger differences, in 255ths, are things and not tone. */
const MOST = 30;
/** Points along the loop. */
const POINTS = 160;
/** Share of the loop's size over which the tone dies away. */
const REACH = 0.25;

export interface RimPoint {
  readonly x: number;
  readonly y: number;
  /** What lies there less what the motif shows there, three channels in 255ths. */
  readonly off: readonly [number, number, number];
}

/** Points at even steps along a closed line. @param points in pixels. */
export function alongLoop(points: readonly FractionPoint[]): FractionPoint[] {
  const sides = points.map(([x, y], at) => {
    const [u, v] = points[(at + 1) % points.length] as FractionPoint;
    return { x, y, dx: u - x, dy: v - y, length: Math.hypot(u - x, v - y) };
  });
  const whole = sides.reduce((sum, { length }) => sum + length, 0);
  const found: FractionPoint[] = [];
  let [side, before] = [0, 0];
  for (let step = 0; step < POINTS; step++) {
    const goal = (step / POINTS) * whole;
    while (side + 1 < sides.length && before + (sides[side]?.length ?? 0) < goal)
      before += sides[side++]?.length ?? 0;
    const own = sides[side];
    if (!own || own.length === 0) continue;
    const rest = (goal - before) / own.length;
    found.push([own.x + rest * own.dx, own.y + rest * own.dy]);
  }
  return found;
}

export function isTone(off: readonly number[]): boolean {
  return off.every((each) => Math.abs(each) <= MOST);
}

/** How far the tone reaches for a loop of that many pixels across. */
export function toneReach(acrossPx: number): number {
  return Math.max(2, REACH * acrossPx);
}

/** The tone to be added at a place, three channels in 255ths. */
export function toneAt(
  rim: readonly RimPoint[],
  x: number,
  y: number,
  reachPx: number,
): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  // A weight of its own for "no change" lets the tone die away from the rim.
  let weights = rim.length / reachPx ** 3;
  for (const { x: u, y: v, off } of rim) {
    const squared = (x - u) ** 2 + (y - v) ** 2 + 0.5;
    const weight = 1 / (squared * Math.sqrt(squared));
    weights += weight;
    for (const channel of [0, 1, 2] as const) sum[channel] += weight * off[channel];
  }
  return weights === 0 ? sum : [sum[0] / weights, sum[1] / weights, sum[2] / weights];
}
