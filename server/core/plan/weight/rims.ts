/**
 * Gives away patches that are no things: rims of mixed cells where two colours meet, hairlines, specks.
 *
 * In the flow: [patches]. A patch with no cell that has its own kind all around it, or with too few cells, is taken
 * apart; round by round its cells join the patch beside them whose colour is nearest. All cells of a round are settled
 * together, so that mirroring changes nothing. Pure.
 */
import type { SmallPicture } from './small-picture.ts';

const FREE = -1;

/** Calls `see` for a cell and those of the eight around it that lie in the picture. */
function around(x: number, y: number, columns: number, rows: number, see: (cell: number) => void): void {
  for (let v = Math.max(0, y - 1); v <= Math.min(rows - 1, y + 1); v++) {
    for (let u = Math.max(0, x - 1); u <= Math.min(columns - 1, x + 1); u++) see(v * columns + u);
  }
}

/** 1 for each cell that has its own kind all around it, so that no other colour is mixed into it. */
export function coreCells(columns: number, rows: number, labels: Int32Array): Uint8Array {
  const core = new Uint8Array(labels.length).fill(1);
  for (let y = 0, cell = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++, cell++) {
      around(x, y, columns, rows, (other) => {
        if (labels[other] !== labels[cell]) core[cell] = 0;
      });
    }
  }
  return core;
}

interface Mean {
  cells: number;
  L: number;
  a: number;
  b: number;
}

function meansOf({ lab }: SmallPicture, labels: Int32Array): Map<number, Mean> {
  const sums = new Map<number, Mean>();
  labels.forEach((label, cell) => {
    const sum = sums.get(label) ?? { cells: 0, L: 0, a: 0, b: 0 };
    sum.cells++;
    sum.L += lab.lightness[cell] as number;
    sum.a += lab.a[cell] as number;
    sum.b += lab.b[cell] as number;
    sums.set(label, sum);
  });
  return sums;
}

/** The patch beside a free cell that is nearest to it in colour; `FREE` where none is. */
function nearestBeside(
  { columns, rows, lab }: SmallPicture,
  labels: Int32Array,
  means: ReadonlyMap<number, Mean>,
  cell: number,
): number {
  let [best, least] = [FREE, Number.POSITIVE_INFINITY];
  around(cell % columns, Math.floor(cell / columns), columns, rows, (other) => {
    const label = labels[other] as number;
    const mean = means.get(label);
    if (label === FREE || !mean) return;
    const away = Math.hypot(
      (lab.lightness[cell] as number) - mean.L / mean.cells,
      (lab.a[cell] as number) - mean.a / mean.cells,
      (lab.b[cell] as number) - mean.b / mean.cells,
    );
    if (away < least) [best, least] = [label, away];
  });
  return best;
}

/** Changes `labels` in place. @param least cells under which a patch is given away. */
export function giveAwayRims(picture: SmallPicture, labels: Int32Array, least: number): void {
  const cores = coreCells(picture.columns, picture.rows, labels);
  const core = new Set(labels.filter((_, cell) => cores[cell] === 1));
  const means = meansOf(picture, labels);
  const stays = (label: number): boolean => core.has(label) && (means.get(label)?.cells ?? 0) >= least;
  if (![...means.keys()].some(stays)) return;
  let free: number[] = [];
  labels.forEach((label, cell) => {
    if (stays(label)) return;
    labels[cell] = FREE;
    free.push(cell);
  });
  while (free.length > 0) {
    const settled = free.map((cell) => nearestBeside(picture, labels, means, cell));
    free.forEach((cell, at) => {
      labels[cell] = settled[at] as number;
    });
    free = free.filter((cell) => labels[cell] === FREE);
  }
}
