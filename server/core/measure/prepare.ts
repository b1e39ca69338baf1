/**
 * Everything about a plate that does not depend on where the outlines run, worked out once.
 *
 * In the flow: plate -> [prepare] -> measure-planes. Dragging an outline measures again from the same
 * `Prepared` and never blurs again. Figures are taken from the cells of the blurred plate: its pixels, or on
 * large plates blocks of 2 × 2, since the blur leaves nothing finer. Pure.
 */
import type { PhotoFacts } from '../capture/photo-facts.ts';
import { HALVING_VARIANCE, linearBlocks, meanOfBlocks } from '../image/blocks.ts';
import { blockVariance, gaussianBlur, sigmaLeft } from '../image/gaussian.ts';
import { type LabPlanes, labPlanesFromLinear, lightnessOfPixels } from '../image/light-tables.ts';
import { clipMap, type MeasurablePlate } from '../image/raster.ts';

/** Blur before colour figures, as a share of the long side. */
const COLOUR_BLUR = 0.0015;
/** Blur that fine detail is measured against, as a share of the long side. */
export const DETAIL_BLUR = 0.004;
/** Long side under which detail and edges are not measured, pixels. */
export const DETAIL_LIMIT_PX = 1200;
/** Blur, in pixels, from which the plate is halved first: nothing that remains is lost by it. */
const HALVING_SIGMA_PX = 2.25;
/** Side of the blocks from which the wide blur of detail is taken. */
const DETAIL_BLOCK_PX = 4;

export interface Prepared {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly longSidePx: number;
  /** Side of a cell in pixels. */
  readonly side: 1 | 2;
  readonly columns: number;
  readonly rows: number;
  /** Blurred linear RGB of each cell, interleaved. */
  readonly linear: Float32Array;
  /** CIELAB of each cell of the blurred plate. */
  readonly lab: LabPlanes;
  /** Clip value of each cell (`CLIP`). */
  readonly clipped: Uint8Array;
  /** 1 for each cell that glare reaches; null where there is none. */
  readonly glare: Uint8Array | null;
  /** How a painting was photographed; null for a reference, or where nothing is known. */
  readonly facts: PhotoFacts | null;
  /** L* of every pixel, unblurred; null when the plate is too small for detail. */
  readonly pixelLightness: Float32Array | null;
  /** Mean over each cell of the square of L* minus its blurred surroundings; null when the plate is too small. */
  readonly squaredDeviation: Float32Array | null;
}

/** Mean square of L* minus blurred L* in each cell; the blur is read between the cells of a coarser grid. */
function squaredDeviations(
  lightness: Float32Array,
  widthPx: number,
  heightPx: number,
  side: number,
): Float32Array {
  const sigma = DETAIL_BLUR * Math.max(widthPx, heightPx);
  const coarse = meanOfBlocks(lightness, widthPx, heightPx, DETAIL_BLOCK_PX);
  const surroundings = gaussianBlur(
    coarse,
    sigmaLeft(sigma, blockVariance(DETAIL_BLOCK_PX), DETAIL_BLOCK_PX),
  );
  const [columns, rows] = [Math.ceil(widthPx / side), Math.ceil(heightPx / side)];
  const across = placesBetween(columns, side / DETAIL_BLOCK_PX, coarse.columns);
  const down = placesBetween(rows, side / DETAIL_BLOCK_PX, coarse.rows);
  const result = new Float32Array(columns * rows);
  for (let row = 0, to = 0; row < rows; row++) {
    const upper = (down.index[row] as number) * coarse.columns;
    const lower = Math.min(upper + coarse.columns, surroundings.length - coarse.columns);
    const low = down.rest[row] as number;
    for (let column = 0; column < columns; column++, to++) {
      const left = across.index[column] as number;
      const right = Math.min(left + 1, coarse.columns - 1);
      const far = across.rest[column] as number;
      const above =
        (1 - far) * (surroundings[upper + left] as number) + far * (surroundings[upper + right] as number);
      const below =
        (1 - far) * (surroundings[lower + left] as number) + far * (surroundings[lower + right] as number);
      result[to] = meanSquareAround((1 - low) * above + low * below, lightness, widthPx, column, row, side);
    }
  }
  return result;
}

/** Where the centres of `count` cells lie between the centres of coarser ones, `ratio` of these a cell. */
function placesBetween(
  count: number,
  ratio: number,
  coarseCount: number,
): { index: Int32Array; rest: Float64Array } {
  const places = Float64Array.from({ length: count }, (_, cell) =>
    Math.min(coarseCount - 1, Math.max(0, (cell + 0.5) * ratio - 0.5)),
  );
  return {
    index: Int32Array.from(places, Math.floor),
    rest: places.map((place) => place - Math.floor(place)),
  };
}

/** Mean square of L* − `level` over the pixels of one cell. Only whole cells lie inside a plane. */
function meanSquareAround(
  level: number,
  lightness: Float32Array,
  widthPx: number,
  column: number,
  row: number,
  side: number,
): number {
  let sum = 0;
  for (let dy = 0; dy < side; dy++) {
    const start = (row * side + dy) * widthPx + column * side;
    for (let dx = 0; dx < side; dx++) {
      const away = (lightness[start + dx] ?? level) - level; // beyond the last row there is nothing
      sum += away * away;
    }
  }
  return sum / (side * side);
}

/** Clip value of each cell: that of its upper left pixel. */
function clippedCells(plate: MeasurablePlate, side: number): Uint8Array {
  const { widthPx, heightPx } = plate.raster;
  const map = plate.clipped ?? clipMap(plate.raster);
  if (side === 1) return map;
  const cells = new Uint8Array(Math.ceil(widthPx / side) * Math.ceil(heightPx / side));
  for (let y = 0, to = 0; y < heightPx; y += side) {
    for (let x = 0; x < widthPx; x += side, to++) cells[to] = map[y * widthPx + x] as number;
  }
  return cells;
}

/** Cells with at least one pixel of glare. */
function glareCells(plate: MeasurablePlate, side: number): Uint8Array | null {
  const { glare } = plate;
  if (!glare || side === 1) return glare ?? null;
  const { widthPx, heightPx } = plate.raster;
  const columns = Math.ceil(widthPx / side);
  const cells = new Uint8Array(columns * Math.ceil(heightPx / side));
  for (let y = 0, at = 0; y < heightPx; y++) {
    const row = ((y / side) | 0) * columns;
    for (let x = 0; x < widthPx; x++, at++) if (glare[at] === 1) cells[row + ((x / side) | 0)] = 1;
  }
  return cells;
}

/** @param plate corrected and upright; a clip map, when given, has one byte a pixel. */
export function prepareMeasurable(plate: MeasurablePlate): Prepared {
  const { widthPx, heightPx } = plate.raster;
  const longSidePx = Math.max(widthPx, heightPx);
  const sigmaPx = COLOUR_BLUR * longSidePx;
  const side = sigmaPx >= HALVING_SIGMA_PX ? 2 : 1;
  const blocks = linearBlocks(plate.raster, side);
  const linear = gaussianBlur(blocks, sigmaLeft(sigmaPx, side === 2 ? HALVING_VARIANCE : 0, side));
  const pixelLightness = longSidePx >= DETAIL_LIMIT_PX ? lightnessOfPixels(plate.raster) : null;
  return {
    widthPx,
    heightPx,
    longSidePx,
    side,
    columns: blocks.columns,
    rows: blocks.rows,
    linear,
    lab: labPlanesFromLinear(linear),
    clipped: clippedCells(plate, side),
    glare: glareCells(plate, side),
    facts: plate.facts ?? null,
    pixelLightness,
    squaredDeviation: pixelLightness && squaredDeviations(pixelLightness, widthPx, heightPx, side),
  };
}
