/**
 * What each patch is: its size, where it lies, its colour.
 *
 * In the flow: patches -> [patch-figures] -> surround, balance, crops. Pure.
 */
import { chromaOf } from '../../colour/lab.ts';
import type { PatchMap } from './patches.ts';
import type { SmallPicture } from './small-picture.ts';

export interface PatchFigures {
  /** Cells. */
  readonly size: number;
  /** Patch area / picture area, 0..1. */
  readonly area: number;
  /** Middle of its cells, 0..1 of the picture. */
  readonly middle: readonly [x: number, y: number];
  /** x0, y0, x1, y1 of the box around it, 0..1 of the picture. */
  readonly box: readonly [x0: number, y0: number, x1: number, y1: number];
  /** Mean L* of its cells that no other colour is mixed into. */
  readonly lightness: number;
  /** C*ab of the mean a*, b*. */
  readonly chroma: number;
}

interface Sums {
  size: number;
  x: number;
  y: number;
  /** Cells that the colour is taken from, all of its core or else all. */
  coloured: number;
  L: number;
  a: number;
  b: number;
  box: [number, number, number, number];
}

const nothing = (): Sums => ({
  size: 0,
  x: 0,
  y: 0,
  coloured: 0,
  L: 0,
  a: 0,
  b: 0,
  box: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0, 0],
});

function addColour(sums: Sums, { lab }: SmallPicture, cell: number): void {
  sums.coloured++;
  sums.L += lab.lightness[cell] as number;
  sums.a += lab.a[cell] as number;
  sums.b += lab.b[cell] as number;
}

function addPlace(sums: Sums, x: number, y: number): void {
  sums.size++;
  sums.x += x + 0.5;
  sums.y += y + 0.5;
  const [x0, y0, x1, y1] = sums.box;
  sums.box = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x + 1), Math.max(y1, y + 1)];
}

/** Figures of every patch, by its number. */
export function patchFigures(picture: SmallPicture, { labels, count, core }: PatchMap): PatchFigures[] {
  const { columns, rows } = picture;
  const all = Array.from({ length: count }, nothing);
  for (let y = 0, cell = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++, cell++) {
      const sums = all[labels[cell] as number] as Sums;
      addPlace(sums, x, y);
      if (core[cell] === 1) addColour(sums, picture, cell);
    }
  }
  const coreless = new Set(all.flatMap(({ coloured }, at) => (coloured === 0 ? [at] : [])));
  labels.forEach((label, cell) => {
    if (coreless.has(label)) addColour(all[label] as Sums, picture, cell);
  });
  return all.map(({ size, x, y, coloured, L, a, b, box }) => ({
    size,
    area: size / labels.length,
    middle: [x / size / columns, y / size / rows],
    box: [box[0] / columns, box[1] / rows, box[2] / columns, box[3] / rows],
    lightness: L / coloured,
    chroma: chromaOf(a / coloured, b / coloured),
  }));
}
