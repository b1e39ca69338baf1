/**
 * Takes the step away that shows where a filled hole meets its surroundings, most of all in a sky.
 *
 * In the flow: fill-hole -> [even-tone]. What the patches say of the pixels just outside the hole differs a little from
 * what is there; that difference is spread over the hole, by inverse distance (Shepard 1968). The idea of carrying the
 * difference at the rim inwards is that of Pérez, Gangnet & Blake (2003), "Poisson image editing". Pure apart from the
 * level given.
 */
import type { FillLevel } from './fill-levels.ts';

/** Rim pixels within a square of this side count as one. */
const CELL_PX = 4;
/** Largest difference that is a matter of tone, in 255ths; beyond it the rim is a mismatch. */
const MOST = 24;

interface RimPoint {
  x: number;
  y: number;
  count: number;
  readonly off: [number, number, number];
}

function isRim({ columns, rows, hole }: FillLevel, at: number): boolean {
  if (hole[at]) return false;
  const [x, y] = [at % columns, Math.floor(at / columns)];
  return Boolean(
    (x > 0 && hole[at - 1]) ||
      (x < columns - 1 && hole[at + 1]) ||
      (y > 0 && hole[at - columns]) ||
      (y < rows - 1 && hole[at + columns]),
  );
}

function rimOf(level: FillLevel, sayOf: (pixel: number) => readonly number[]): RimPoint[] {
  const { columns, colours } = level;
  const cells = new Map<number, RimPoint>();
  for (let at = 0; at < level.hole.length; at++) {
    if (!isRim(level, at)) continue;
    const said = sayOf(at);
    if (!said.every(Number.isFinite)) continue;
    const [x, y] = [at % columns, Math.floor(at / columns)];
    const key = Math.floor(y / CELL_PX) * columns + Math.floor(x / CELL_PX);
    const point = cells.get(key) ?? { x: 0, y: 0, count: 0, off: [0, 0, 0] };
    cells.set(key, point);
    point.x += x;
    point.y += y;
    point.count++;
    for (const channel of [0, 1, 2] as const) {
      const off = (colours[at * 3 + channel] as number) - (said[channel] as number);
      point.off[channel] += Math.min(MOST, Math.max(-MOST, off));
    }
  }
  return [...cells.values()].map(({ x, y, count, off: [red, green, blue] }) => ({
    ...{ x: x / count, y: y / count, count },
    off: [red / count, green / count, blue / count],
  }));
}

/** @param sayOf what the patches say of a pixel outside the hole. */
export function evenTone(level: FillLevel, sayOf: (pixel: number) => readonly number[]): void {
  const rim = rimOf(level, sayOf);
  if (rim.length === 0) return;
  for (let at = 0; at < level.hole.length; at++) {
    if (!level.hole[at]) continue;
    const [x, y] = [at % level.columns, Math.floor(at / level.columns)];
    const sum = [0, 0, 0, 0] as [number, number, number, number];
    for (const { x: u, y: v, count, off } of rim) {
      const squared = (x - u) ** 2 + (y - v) ** 2 + 0.25;
      const weight = count / (squared * Math.sqrt(squared)); // third power of the distance
      sum[0] += weight * off[0];
      sum[1] += weight * off[1];
      sum[2] += weight * off[2];
      sum[3] += weight;
    }
    for (const channel of [0, 1, 2] as const) {
      const tone = (level.colours[at * 3 + channel] as number) + sum[channel] / sum[3];
      level.colours[at * 3 + channel] = Math.min(255, Math.max(0, tone));
    }
  }
}
