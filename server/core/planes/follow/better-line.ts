/**
 * Whether the line between two points should bend onto an edge when a point is let go: only where a painter would say
 * that it now lies on the ridge, and before it did not.
 *
 * In the flow: edge-cost, two points -> [better-line] -> the outline that was pulled. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { type EdgeCosts, MOST_COST } from './edge-cost.ts';
import { FollowTree } from './follow-tree.ts';

/** Shorter stretches stay straight: a share of the picture's width. */
const SHORTEST = 0.03;
/** The bent line must cost no more than this share of the straight one, pixel for pixel. */
const CLEARER = 0.6;
/** Nor more than this: else there is no edge there at all. */
const CLEAR = 0.45 * MOST_COST;
/** How far it may leave the straight line, as a share of its length, and at least, of the picture's width. */
const ASIDE = 0.2;
const ASIDE_LEAST = 0.02;

/** Mean cost of the pixels that a line passes. */
function meanCost({ columns, rows, costs }: EdgeCosts, line: readonly FractionPoint[]): number {
  let [sum, count] = [0, 0];
  for (let at = 1; at < line.length; at++) {
    const [[x0, y0], [x1, y1]] = [line[at - 1] as FractionPoint, line[at] as FractionPoint];
    const steps = Math.max(1, Math.ceil(Math.max(Math.abs(x1 - x0) * columns, Math.abs(y1 - y0) * rows)));
    for (let step = 0; step < steps; step++) {
      const held = (value: number, most: number) => Math.min(most - 1, Math.max(0, Math.floor(value * most)));
      const x = held(x0 + ((x1 - x0) * step) / steps, columns);
      const y = held(y0 + ((y1 - y0) * step) / steps, rows);
      sum += costs[y * columns + x] as number;
      count++;
    }
  }
  return sum / Math.max(1, count);
}

/** Largest distance of a line from the straight way between its ends, in picture widths. */
function strayOf(line: readonly FractionPoint[], aspect: number): number {
  const [[ax, ay], [bx, by]] = [line[0] as FractionPoint, line.at(-1) as FractionPoint];
  const [dx, dy] = [bx - ax, (by - ay) * aspect];
  const length = Math.max(1e-9, Math.hypot(dx, dy));
  return Math.max(...line.map(([x, y]) => Math.abs((x - ax) * dy - (y - ay) * aspect * dx) / length));
}

/** The line along the edge from one point to the other, or null where the straight one is as good. */
export function betterLine(costs: EdgeCosts, from: FractionPoint, to: FractionPoint): FractionPoint[] | null {
  const aspect = costs.rows / costs.columns;
  const chord = Math.hypot(to[0] - from[0], (to[1] - from[1]) * aspect);
  if (chord < SHORTEST || alongBorder(from, to)) return null;
  const line = new FollowTree(costs, from).lineTo(to);
  const cost = meanCost(costs, line);
  if (cost > CLEAR || cost > CLEARER * meanCost(costs, [from, to])) return null;
  return strayOf(line, aspect) > Math.max(ASIDE_LEAST, ASIDE * chord) ? null : line;
}

/** What runs along the picture's border belongs there. */
function alongBorder(from: FractionPoint, to: FractionPoint): boolean {
  return [0, 1].some((axis) =>
    [0, 1].some(
      (side) => Math.abs((from[axis] ?? 0) - side) < 1e-3 && Math.abs((to[axis] ?? 0) - side) < 1e-3,
    ),
  );
}
