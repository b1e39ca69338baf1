/**
 * The line between two places that costs least: it keeps to the strongest edge on its way.
 *
 * In the flow: edge-cost -> [edge-path] -> the outline under the hand. Pure. Source: Dijkstra 1959 on the grid of
 * pixels with eight neighbours, with the queue of buckets of Dial 1969 (whole-number costs).
 */
import type { FractionPoint } from '../../contract/setup.ts';
import type { EdgeCosts } from './edge-cost.ts';

/** Lengths of a straight and a slanted step, in fifths: 7/5 is 1.4. */
const STRAIGHT = 5;
const SLANTED = 7;
/** How far the line may leave the box of its two ends, in the box's longer side, and at least, in pixels. */
const ASIDE = 0.35;
const ASIDE_PX = 12;

/** Cost of straying a whole chord's length from the straight way, before the square: a ridge seldom bends so far. */
const STRAY = 300;

/** The part of the picture that is searched. */
interface Field {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
}

function fieldAround(costs: EdgeCosts, [x0, y0]: Cell, [x1, y1]: Cell): Field {
  const aside = Math.round(Math.max(ASIDE_PX, ASIDE * Math.max(Math.abs(x1 - x0), Math.abs(y1 - y0))));
  const left = Math.max(0, Math.min(x0, x1) - aside);
  const top = Math.max(0, Math.min(y0, y1) - aside);
  return {
    left,
    top,
    columns: Math.min(costs.columns - 1, Math.max(x0, x1) + aside) - left + 1,
    rows: Math.min(costs.rows - 1, Math.max(y0, y1) + aside) - top + 1,
  };
}

type Cell = readonly [x: number, y: number];

function cellOf({ columns, rows }: EdgeCosts, [x, y]: FractionPoint): Cell {
  const held = (value: number, most: number) => Math.min(most, Math.max(0, Math.floor(value)));
  return [held(x * columns, columns - 1), held(y * rows, rows - 1)];
}

/** Buckets of cells by cost; the next cheapest cell is found without sorting. */
class Buckets {
  readonly #cells: number[][] = [];
  #at = 0;

  push(cost: number, cell: number): void {
    let bucket = this.#cells[cost];
    if (!bucket) this.#cells[cost] = bucket = [];
    bucket.push(cell);
  }

  /** The cheapest cell that is left, or -1. */
  pop(): number {
    for (; this.#at < this.#cells.length; this.#at++) {
      const cell = this.#cells[this.#at]?.pop();
      if (cell !== undefined) return cell;
    }
    return -1;
  }

  get cost(): number {
    return this.#at;
  }
}

/** The eight neighbours: their steps and the length of each. */
const STEPS: readonly (readonly [dx: number, dy: number, length: number])[] = [
  [-1, 0, STRAIGHT],
  [1, 0, STRAIGHT],
  [0, -1, STRAIGHT],
  [0, 1, STRAIGHT],
  [-1, -1, SLANTED],
  [1, -1, SLANTED],
  [-1, 1, SLANTED],
  [1, 1, SLANTED],
];

/** Calls `reach` for every neighbour of a cell inside the field, with the cost of stepping onto it. */
function eachStep(
  { columns, rows, costs }: EdgeCosts,
  cell: number,
  reach: (next: number, cost: number) => void,
): void {
  const [x, y] = [cell % columns, Math.floor(cell / columns)];
  for (const [dx, dy, length] of STEPS) {
    const [nextX, nextY] = [x + dx, y + dy];
    if (nextX < 0 || nextY < 0 || nextX >= columns || nextY >= rows) continue;
    const next = nextY * columns + nextX;
    reach(next, length * (costs[next] as number));
  }
}

/** Cheapest way to every cell up to `goal`: the neighbour that it is reached from; -1 = the start. */
function search(costs: EdgeCosts, start: number, goal: number): Int32Array {
  const from = new Int32Array(costs.costs.length).fill(-1);
  const best = new Int32Array(from.length).fill(0x7fffffff);
  const open = new Buckets();
  best[start] = 0;
  open.push(0, start);
  for (let cell = open.pop(); cell >= 0 && cell !== goal; cell = open.pop()) {
    const spent = open.cost;
    if (spent > (best[cell] as number)) continue;
    eachStep(costs, cell, (next, cost) => {
      if (spent + cost >= (best[next] as number)) return;
      best[next] = spent + cost;
      from[next] = cell;
      open.push(spent + cost, next);
    });
  }
  return from;
}

/**
 * The costs of a field with what straying from the straight way between its ends adds: where a ridge is faint, the
 * line stays near the hand's own way.
 */
export function leaningCosts(costs: EdgeCosts, from: FractionPoint, to: FractionPoint): EdgeCosts & Field {
  const [a, b] = [cellOf(costs, from), cellOf(costs, to)];
  const field = fieldAround(costs, a, b);
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const chord = Math.max(1, dx * dx + dy * dy);
  const sums = new Uint16Array(field.columns * field.rows);
  for (let row = 0, cell = 0; row < field.rows; row++) {
    const y = field.top + row;
    for (let column = 0; column < field.columns; column++, cell++) {
      const x = field.left + column;
      // Squared distance from the chord's line over its squared length.
      const stray = ((x - a[0]) * dy - (y - a[1]) * dx) ** 2 / chord ** 2;
      sums[cell] = (costs.costs[y * costs.columns + x] as number) + Math.round(STRAY * stray);
    }
  }
  return { ...field, costs: sums };
}

/**
 * @param from, to places in 0..1 of the picture. @returns every pixel on the way, in 0..1; the two ends as given, so
 *   at least two points.
 */
export function edgePath(costs: EdgeCosts, from: FractionPoint, to: FractionPoint): FractionPoint[] {
  const field = leaningCosts(costs, from, to);
  const inField = ([x, y]: Cell) => (y - field.top) * field.columns + x - field.left;
  const [start, goal] = [inField(cellOf(costs, from)), inField(cellOf(costs, to))];
  const cameFrom = search(field, start, goal);
  const way: FractionPoint[] = [];
  for (let cell = cameFrom[goal] as number; cell >= 0 && cell !== start; cell = cameFrom[cell] as number) {
    const [x, y] = [field.left + (cell % field.columns), field.top + Math.floor(cell / field.columns)];
    way.push([(x + 0.5) / costs.columns, (y + 0.5) / costs.rows]);
  }
  return [from, ...way.reverse(), to];
}
