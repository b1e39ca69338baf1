/**
 * Small strong spots of colour, and whether anything in the picture answers them.
 *
 * In the flow: Lab grid -> [accents] -> C8. A spot is a connected patch of cells with at least twice the strong of
 * its plane. Pure. Source: Poore 1903, ch. III (isolation adds weight).
 */
import { chromaOf, hueDegOf } from '../../colour/lab.ts';
import { COLOUR_RANGE, percentiles } from '../../image/percentiles.ts';
import { cellsByPlane, valuesOf } from '../../measure/plane-cells.ts';
import type { AccentFacts } from '../picture-facts.ts';
import { type LabGrid, NO_CELL } from './lab-grid.ts';
import { middleOf, type Patch, patchesOf } from './patches.ts';

const SMALLEST = 0.0002;
const LARGEST = 0.01;
const TIMES_STRONG = 2;
/** A spot must stand this far above its plane in C*, or it is a grey among greys. */
const LEAST_OVER = 10;
const ECHO_DEG = 25;
const ECHO_AWAY = 0.1;
/** What answers a spot need only have this share of its chroma. */
const ECHO_CHROMA = 0.5;

/** 90th percentile of C* of each plane. */
function strongs(grid: LabGrid, chroma: Float32Array): number[] {
  return cellsByPlane(grid.labels, grid.names.length).map((cells) => {
    if (cells.length === 0) return 0;
    return percentiles(valuesOf(chroma, cells), [0.9], COLOUR_RANGE)[0] as number;
  });
}

function accentOf(grid: LabGrid, patch: Patch, planeStrong: number): Omit<AccentFacts, 'echoed'> {
  let [a, b] = [0, 0];
  for (const cell of patch.cells) {
    a += grid.a[cell] as number;
    b += grid.b[cell] as number;
  }
  return {
    plane: grid.names[patch.value] ?? '',
    at: middleOf(patch, grid.columns, grid.rows),
    share: patch.size / grid.L.length,
    chroma: chromaOf(a, b) / patch.size,
    hueDeg: hueDegOf(a, b),
    planeStrong,
  };
}

const hueApart = (one: number, two: number) => Math.abs(((one - two + 540) % 360) - 180);

/** Whether a patch of the same family of hue and at least half the chroma lies elsewhere. */
function isEchoed(grid: LabGrid, accent: Omit<AccentFacts, 'echoed'>, chroma: Float32Array): boolean {
  const { columns, rows } = grid;
  const [x0, y0] = accent.at;
  const side = rows / columns;
  let cells = 0;
  for (let cell = 0; cell < chroma.length; cell++) {
    if ((chroma[cell] as number) < ECHO_CHROMA * accent.chroma) continue;
    const hue = hueDegOf(grid.a[cell] as number, grid.b[cell] as number);
    if (hueApart(hue, accent.hueDeg) > ECHO_DEG) continue;
    const [x, y] = [((cell % columns) + 0.5) / columns, (Math.floor(cell / columns) + 0.5) / rows];
    if (Math.hypot(x - x0, (y - y0) * side) > ECHO_AWAY) cells++;
  }
  return cells >= SMALLEST * chroma.length;
}

function chromasOf({ a, b }: LabGrid): Float32Array {
  const chroma = new Float32Array(a.length);
  for (let cell = 0; cell < chroma.length; cell++)
    chroma[cell] = chromaOf(a[cell] as number, b[cell] as number);
  return chroma;
}

/** Label of every cell that stands out of its plane by its chroma. */
function standingOut({ labels }: LabGrid, chroma: Float32Array, strong: readonly number[]): Uint8Array {
  const limits = new Float64Array(NO_CELL + 1).fill(Number.POSITIVE_INFINITY);
  strong.forEach((own, label) => {
    limits[label] = Math.max(TIMES_STRONG * own, own + LEAST_OVER);
  });
  const classes = new Uint8Array(labels.length);
  for (let cell = 0; cell < classes.length; cell++) {
    const label = labels[cell] as number;
    classes[cell] = (chroma[cell] as number) >= (limits[label] as number) ? label : NO_CELL;
  }
  return classes;
}

/** Strongest first, ten at most. */
export function accentFacts(grid: LabGrid): AccentFacts[] {
  const chroma = chromasOf(grid);
  const strong = strongs(grid, chroma);
  const classes = standingOut(grid, chroma, strong);
  return patchesOf(classes, grid.columns, NO_CELL)
    .filter(({ size }) => size >= SMALLEST * chroma.length && size <= LARGEST * chroma.length)
    .map((patch) => accentOf(grid, patch, strong[patch.value] ?? 0))
    .sort((one, two) => two.chroma - one.chroma)
    .slice(0, 10)
    .map((accent) => ({ ...accent, echoed: isEchoed(grid, accent, chroma) }));
}
