/**
 * The contour of one piece of a mask, along the sides of its cells.
 *
 * In the flow: relabel -> [contour] -> keep-stretches. Clockwise on the screen, the piece on its right; where two cells
 * of the piece meet in a corner only, the contour touches itself there and does not cross. Pure.
 */
import type { Grid, Mask } from './grid.ts';

/** A contour as unit sides in order. */
export interface Contour {
  /** Corner where each side begins, columns and rows of the grid's lines. */
  readonly x: Int32Array;
  readonly y: Int32Array;
  /** 0 = to the right, 1 = down, 2 = to the left, 3 = up. */
  readonly heading: Uint8Array;
  readonly length: number;
}

export const STEP_X = [1, 0, -1, 0] as const;
export const STEP_Y = [0, 1, 0, -1] as const;
/** From the corner where a side begins to the cell on its right, by heading. */
const RIGHT_X = [0, -1, -1, 0] as const;
const RIGHT_Y = [0, 0, -1, -1] as const;
/** The same for the cell on its left. */
const LEFT_X = [0, 0, -1, -1] as const;
const LEFT_Y = [-1, 0, 0, -1] as const;

const at = (list: readonly number[], place: number) => list[place] as number;

/** The cell on the right of a side, or −1 beyond the grid. */
export function rightOf({ columns, rows }: Grid, x: number, y: number, heading: number): number {
  return cellAt(x + at(RIGHT_X, heading), y + at(RIGHT_Y, heading), columns, rows);
}

/** The cell on the left of a side, or −1 beyond the grid. */
export function leftOf({ columns, rows }: Grid, x: number, y: number, heading: number): number {
  return cellAt(x + at(LEFT_X, heading), y + at(LEFT_Y, heading), columns, rows);
}

function cellAt(x: number, y: number, columns: number, rows: number): number {
  return x < 0 || y < 0 || x >= columns || y >= rows ? -1 : y * columns + x;
}

/** @param piece in one piece, without holes, not empty. */
export function contourOf(piece: Mask, grid: Grid): Contour {
  const start = piece.indexOf(1);
  const [xs, ys, headings]: number[][] = [[], [], []];
  const inside = (cell: number) => cell >= 0 && piece[cell] === 1;
  const [startX, startY] = [start % grid.columns, Math.floor(start / grid.columns)];
  let [x, y, heading] = [startX, startY, 0];
  do {
    xs?.push(x);
    ys?.push(y);
    headings?.push(heading);
    x += at(STEP_X, heading);
    y += at(STEP_Y, heading);
    if (!inside(rightOf(grid, x, y, heading))) heading = (heading + 1) % 4;
    else if (inside(leftOf(grid, x, y, heading))) heading = (heading + 3) % 4;
  } while (x !== startX || y !== startY || heading !== 0);
  return {
    x: Int32Array.from(xs ?? []),
    y: Int32Array.from(ys ?? []),
    heading: Uint8Array.from(headings ?? []),
    length: xs?.length ?? 0,
  };
}

/** The cells inside a contour: its piece, holes filled. */
export function cellsInside({ x, y, heading, length }: Contour, { columns, rows }: Grid): Mask {
  const turns = new Uint8Array(columns * rows + 1);
  for (let side = 0; side < length; side++) {
    const [left, top] = [x[side] as number, y[side] as number];
    const row = heading[side] === 1 ? top : heading[side] === 3 ? top - 1 : -1;
    if (row >= 0 && left < columns) turns[row * columns + left] = 1;
  }
  for (let row = 0, cell = 0; row < rows; row++) {
    let inside = 0;
    for (let column = 0; column < columns; column++, cell++) {
      inside ^= turns[cell] as number;
      turns[cell] = inside;
    }
  }
  return turns.subarray(0, columns * rows);
}
