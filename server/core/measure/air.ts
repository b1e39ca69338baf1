/**
 * The colour of the air, and how much of it lies over a plane.
 *
 * In the flow: eroded grid + prepared plate -> [air] -> figures. Pure.
 * Source of the share: dark channel, He, Sun & Tang (2009), with omega 1.
 */
import { rgbFromLab } from '../colour/lab.ts';
import type { LabColour } from '../contract/setup.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, percentiles, type Range } from '../image/percentiles.ts';
import { slidingMinimum } from '../image/sliding-minimum.ts';
import { valuesOf } from './plane-cells.ts';
import type { Prepared } from './prepare.ts';

/** Share of a column's sky, above the ridge, that shows the colour of the air. */
const BAND = 0.1;
const FEWEST_ROWS_PX = 3;
const FEWEST_PIXELS = 200;
/** Side of the window of the dark channel, as a share of the long side. */
const WINDOW = 0.025;
/** A channel of air darker than this says nothing about how much air there is. */
const DARKEST_AIR = 1e-4;

/** Cells of the sky just above the ridge, for one column of the grid. */
function bandOfColumn(
  prepared: Prepared,
  labels: Uint8Array,
  kept: Uint8Array,
  isSky: readonly boolean[],
  column: number,
): number[] {
  const { columns, rows, side, widthPx, heightPx } = prepared;
  let skyHeightPx = 0;
  let ridgePx = -1;
  for (let y = 0, at = column * side; y < heightPx; y++, at += widthPx) {
    if (isSky[labels[at] as number] !== true) continue;
    skyHeightPx++;
    ridgePx = y + 1;
  }
  const band: number[] = [];
  for (let row = Math.min(rows - 1, Math.floor(ridgePx / side)); row >= 0; row--) {
    const cell = row * columns + column;
    if (isSky[kept[cell] as number] !== true) continue;
    const withinBand = ridgePx - row * side <= BAND * skyHeightPx;
    if (!withinBand && band.length * side >= FEWEST_ROWS_PX) break;
    band.push(cell);
  }
  return band;
}

/**
 * Colour of the air of one picture: channel-wise median of the sky just above the farthest ridge.
 *
 * @param labels label map. @param kept eroded grid. @param isSky by label. @returns null when fewer than 200
 *   pixels of sky remain.
 */
export function airColour(
  prepared: Prepared,
  labels: Uint8Array,
  kept: Uint8Array,
  isSky: readonly boolean[],
): LabColour | null {
  if (!isSky.includes(true)) return null;
  const found: number[] = [];
  for (let column = 0; column < prepared.columns; column++) {
    for (const cell of bandOfColumn(prepared, labels, kept, isSky, column)) found.push(cell);
  }
  if (found.length * prepared.side ** 2 < FEWEST_PIXELS) return null;
  const cells = Int32Array.from(found);
  const medianOf = (values: Float32Array, range: Range): number =>
    percentiles(valuesOf(values, cells), [0.5], range)[0] as number;
  const { lightness, a, b } = prepared.lab;
  return {
    L: medianOf(lightness, LIGHTNESS_RANGE),
    a: medianOf(a, COLOUR_RANGE),
    b: medianOf(b, COLOUR_RANGE),
  };
}

interface Box {
  left: number;
  top: number;
  columns: number;
  rows: number;
}

function boxAround(cells: Int32Array, columns: number): Box {
  const top = Math.floor((cells[0] as number) / columns);
  const bottom = Math.floor((cells[cells.length - 1] as number) / columns);
  let [left, right] = [columns, 0];
  for (let at = 0; at < cells.length; at++) {
    const column = (cells[at] as number) % columns;
    if (column < left) left = column;
    if (column > right) right = column;
  }
  return { left, top, columns: right - left + 1, rows: bottom - top + 1 };
}

/** Place of each cell inside the box, row by row. */
function placesIn(box: Box, cells: Int32Array, columns: number): Int32Array {
  return cells.map((cell) => {
    const row = Math.floor(cell / columns);
    return (row - box.top) * box.columns + (cell - row * columns - box.left);
  });
}

/**
 * Share of air at each cell of a plane, 0..1: min(1, darkest I/A within a window). The plane's share is the median.
 * @param cells of the plane, in row order, at least one.
 */
export function airSharesOf(prepared: Prepared, cells: Int32Array, air: LabColour): Float32Array {
  const [red, green, blue] = rgbFromLab(air).map((channel) => 1 / Math.max(channel, DARKEST_AIR)) as [
    number,
    number,
    number,
  ];
  const { linear, columns, longSidePx, side } = prepared;
  const box = boxAround(cells, columns);
  const places = placesIn(box, cells, columns);
  const ratios = new Float32Array(box.columns * box.rows).fill(Number.POSITIVE_INFINITY);
  for (let at = 0; at < cells.length; at++) {
    const from = (cells[at] as number) * 3;
    const least = Math.min(
      (linear[from] as number) * red,
      (linear[from + 1] as number) * green,
      (linear[from + 2] as number) * blue,
    );
    ratios[places[at] as number] = Math.min(1, least);
  }
  const radius = Math.floor((WINDOW * longSidePx) / 2 / side);
  const darkest = slidingMinimum(ratios, box.columns, box.rows, radius);
  return valuesOf(darkest, places);
}
