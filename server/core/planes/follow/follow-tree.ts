/**
 * From one stop of the hand the cheapest line to every place, found as far as the hand asks.
 *
 * In the flow: edge-cost, once a picture -> [follow-tree], once a stop -> the line under the hand. Going on from what
 * was found before, an answer while hovering costs little more than walking back. Pure but for its own memory.
 * Source: Dijkstra 1959 on the grid of pixels with eight neighbours, with the queue of buckets of Dial 1969; lines
 * that follow the least cost from a stop after Mortensen & Barrett 1995, "Intelligent scissors for image composition".
 */
import type { FractionPoint } from '../../contract/setup.ts';
import type { EdgeCosts } from './edge-cost.ts';

/** Lengths of a straight and a slanted step, in fifths: 7/5 is 1.4. */
const STRAIGHT = 5;
const SLANTED = 7;
/** What every pixel costs besides its edge: keeps the line from long ways round. Chosen on the half for tuning. */
export const WAY_COST = 16;
/** Cells wait in a ring of buckets, one a cost; it is longer than the dearest step (a power of two). */
const BUCKETS = 512;

const NOT_REACHED = 0x7fffffff;

export class FollowTree {
  readonly #costs: EdgeCosts;
  readonly #start: FractionPoint;
  readonly #from: Int32Array;
  readonly #best: Int32Array;
  readonly #buckets: number[][] = Array.from({ length: BUCKETS }, () => []);
  #spent = 0;
  #waiting = 1;
  readonly #settled: Uint8Array;

  /** @param start in 0..1 of the picture; beyond it, the nearest pixel counts. */
  constructor(costs: EdgeCosts, start: FractionPoint) {
    this.#costs = costs;
    this.#start = start;
    const cells = costs.columns * costs.rows;
    this.#from = new Int32Array(cells).fill(-1);
    this.#best = new Int32Array(cells).fill(NOT_REACHED);
    this.#settled = new Uint8Array(cells);
    const cell = this.#cellOf(start);
    this.#best[cell] = 0;
    this.#buckets[0]?.push(cell);
  }

  /** The cheapest line to a place: every pixel on the way, in 0..1; the two ends as given, so at least two points. */
  lineTo(goal: FractionPoint): FractionPoint[] {
    const end = this.#cellOf(goal);
    this.#settle(end);
    const { columns, rows } = this.#costs;
    const way: FractionPoint[] = [];
    for (let cell = this.#from[end] as number; cell >= 0; cell = this.#from[cell] as number) {
      if (this.#from[cell] === -1) break;
      way.push([((cell % columns) + 0.5) / columns, (Math.floor(cell / columns) + 0.5) / rows]);
    }
    return [this.#start, ...way.reverse(), goal];
  }

  /** Cost of the cheapest line to a place, in fifths of the cost of a pixel on the strongest edge. */
  costTo(goal: FractionPoint): number {
    const end = this.#cellOf(goal);
    this.#settle(end);
    return this.#best[end] as number;
  }

  #cellOf([x, y]: FractionPoint): number {
    const { columns, rows } = this.#costs;
    const held = (value: number, most: number) => Math.min(most, Math.max(0, Math.floor(value)));
    return held(y * rows, rows - 1) * columns + held(x * columns, columns - 1);
  }

  /** Goes on searching until the cheapest way to `goal` is certain. */
  #settle(goal: number): void {
    while (this.#settled[goal] === 0 && this.#waiting > 0) {
      const cell = this.#buckets[this.#spent & (BUCKETS - 1)]?.pop();
      if (cell === undefined) {
        this.#spent++;
        continue;
      }
      this.#waiting--;
      if (this.#settled[cell] === 1) continue;
      this.#settled[cell] = 1;
      this.#reachFrom(cell);
    }
  }

  #reachFrom(cell: number): void {
    const { columns, rows } = this.#costs;
    const x = cell % columns;
    const left = x > 0;
    const right = x < columns - 1;
    const above = cell >= columns;
    const below = cell < columns * (rows - 1);
    if (left) this.#reach(cell, cell - 1, STRAIGHT);
    if (right) this.#reach(cell, cell + 1, STRAIGHT);
    if (above) this.#reach(cell, cell - columns, STRAIGHT);
    if (below) this.#reach(cell, cell + columns, STRAIGHT);
    if (above && left) this.#reach(cell, cell - columns - 1, SLANTED);
    if (above && right) this.#reach(cell, cell - columns + 1, SLANTED);
    if (below && left) this.#reach(cell, cell + columns - 1, SLANTED);
    if (below && right) this.#reach(cell, cell + columns + 1, SLANTED);
  }

  #reach(cell: number, next: number, length: number): void {
    if (this.#settled[next] === 1) return;
    const total = this.#spent + length * ((this.#costs.costs[next] as number) + WAY_COST);
    if (total >= (this.#best[next] as number)) return;
    this.#best[next] = total;
    this.#from[next] = cell;
    this.#buckets[total & (BUCKETS - 1)]?.push(next);
    this.#waiting++;
  }
}
