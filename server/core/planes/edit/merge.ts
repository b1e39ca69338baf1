/**
 * Two planes that become one: the ring round both.
 *
 * In the flow: two neighbours far to near -> [merge] -> live outlines, picture by picture. Where the two do not touch, they
 * are joined behind something nearer, if there is such a way; else they cannot be one ring. Pure.
 */
import { NO_PLANE } from '../label-map.ts';
import { eachBeside, type Grid, type Mask, piecesOf, widened } from './grid.ts';
import { layersOf, type Ring } from './layers.ts';
import { ringAround } from './ring-around.ts';

/** Pieces smaller than this share of what both show are left behind. */
const NEGLIGIBLE = 0.02;
/** The way behind a nearer plane is this many cells wide to either side. */
const WAY = 1;

/** The number of each piece that shows enough to count, the largest first. */
function countingPieces(numbers: Int32Array, sizes: readonly number[], shown: Mask): number[] {
  const counts = sizes.map(() => 0);
  let all = 0;
  for (let cell = 0; cell < shown.length; cell++) {
    const number = numbers[cell] as number;
    if (number === 0 || shown[cell] === 0) continue;
    counts[number] = (counts[number] as number) + 1;
    all++;
  }
  return counts
    .map((count, number) => ({ count, number }))
    .filter(({ count }) => count > NEGLIGIBLE * all)
    .sort((one, other) => other.count - one.count)
    .map(({ number }) => number);
}

/** The cells of a shortest way through `free` cells from one piece to another; null when there is none. */
function wayBetween(numbers: Int32Array, from: number, to: number, free: Mask, grid: Grid): number[] | null {
  const cameFrom = new Int32Array(numbers.length).fill(-2);
  let edge: number[] = [];
  for (let cell = 0; cell < numbers.length; cell++) {
    if (numbers[cell] !== from) continue;
    cameFrom[cell] = -1;
    edge.push(cell);
  }
  while (edge.length > 0) {
    const next: number[] = [];
    for (const cell of edge) {
      let end = -1;
      eachBeside(grid, cell, (other) => {
        if (cameFrom[other] !== -2 || (numbers[other] !== to && free[other] === 0)) return;
        cameFrom[other] = cell;
        if (numbers[other] === to) end = other;
        next.push(other);
      });
      if (end >= 0) return trail(cameFrom, end);
    }
    edge = next;
  }
  return null;
}

function trail(cameFrom: Int32Array, end: number): number[] {
  const way: number[] = [];
  for (let cell = end; cell >= 0; cell = cameFrom[cell] as number) way.push(cell);
  return way;
}

/**
 * The ring round two planes.
 *
 * @param rings far to near; null where a plane has no outline. @param one, other places of the two, neighbours far to near.
 * @returns null when they do not touch and nothing nearer hides a way between them, or when neither has an outline.
 */
export function mergedRing(
  rings: readonly (Ring | null)[],
  grid: Grid,
  one: number,
  other: number,
): Ring | null {
  const [a, b] = [rings[one], rings[other]];
  if (!a || !b) return a ?? b ?? null;
  const { masks, seen } = layersOf(rings, grid);
  const nearest = Math.max(one, other);
  const both = (masks[one] as Mask).map((inside, cell) => inside | (masks[other]?.[cell] ?? 0));
  const shown = seen.map((label) => (label === one || label === other ? 1 : 0));
  const free = seen.map((label) => (label === NO_PLANE || label > nearest ? 1 : 0));
  const { numbers, sizes } = piecesOf(both, grid);
  const [first, ...others] = countingPieces(numbers, sizes, shown);
  for (const piece of others) {
    const way = wayBetween(numbers, first as number, piece, free, grid);
    if (!way) return null;
    const corridor = new Uint8Array(both.length);
    for (const cell of way) corridor[cell] = 1;
    const wide = widened(corridor, grid, WAY);
    for (let cell = 0; cell < both.length; cell++) if (wide[cell] === 1 && free[cell] === 1) both[cell] = 1;
  }
  const label = shown.map((inside) => (inside === 1 ? one : NO_PLANE));
  return ringAround(both, label, one, grid, [
    { ring: a, mask: masks[one] as Mask },
    { ring: b, mask: masks[other] as Mask },
  ]);
}
