/**
 * Compact blocks of a plane: what the bootstrap draws, in place of single pixels that all know their neighbours.
 *
 * In the flow: cells of a plane -> [blocks] -> bootstrap. Squares of about a superpixel's size, cut off at the
 * plane's rim. Pure.
 */

/** Side of a block, as a share of the long side. */
const BLOCK = 0.025;
/** With fewer blocks than this they are halved, down to `SMALLEST` cells a side. */
const FEWEST = 12;
const SMALLEST = 2;
/** Cells looked at in one plane: enough for a deviation, few enough to be quick. */
const MOST_CELLS = 12_000;

export interface Blocks {
  /** Thinned places in the list of the plane's cells. */
  readonly places: Int32Array;
  /** Block of each of these, 0..count − 1. */
  readonly blockOf: Int32Array;
  readonly count: number;
}

function numbered(
  places: Int32Array,
  cells: Int32Array,
  columns: number,
  side: number,
): { blockOf: Int32Array; count: number } {
  const across = Math.ceil(columns / side);
  const known = new Map<number, number>();
  const blockOf = places.map((place) => {
    const cell = cells[place] as number;
    const row = Math.floor(cell / columns);
    const key = Math.floor(row / side) * across + Math.floor((cell - row * columns) / side);
    const number = known.get(key) ?? known.size;
    known.set(key, number);
    return number;
  });
  return { blockOf, count: known.size };
}

/** @param cells of a plane in row order, at least one. @param longSide of the grid, in cells. */
export function blocksOf(cells: Int32Array, columns: number, longSide: number): Blocks {
  const every = Math.max(1, cells.length / MOST_CELLS);
  const places = Int32Array.from({ length: Math.min(cells.length, MOST_CELLS) }, (_, at) =>
    Math.floor(at * every),
  );
  let side = Math.max(SMALLEST, Math.round(BLOCK * longSide));
  let found = numbered(places, cells, columns, side);
  while (found.count < FEWEST && side > SMALLEST) {
    side = Math.max(SMALLEST, side >> 1);
    found = numbered(places, cells, columns, side);
  }
  return { places, ...found };
}
