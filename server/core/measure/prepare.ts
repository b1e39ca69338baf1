/**
 * Everything about a plate that does not depend on where the outlines run, worked out once.
 *
 * In the flow: plate -> [prepare] -> measure-planes. Dragging an outline measures again from the same
 * `Prepared` and never blurs again. Figures are taken on a grid of every `stride`-th pixel of the blurred
 * plate; the grid is every pixel where the blur is finer than that could show. Pure.
 */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import { blurToGrid } from '../image/gaussian.ts';
import { type LabPlanes, labPlanesFromLinear, lightnessOfPixels } from '../image/light-tables.ts';
import { clipOf, type EncodedRaster, type MeasurablePlate } from '../image/raster.ts';

/** Blur before colour figures, as a share of the long side. */
const COLOUR_BLUR = 0.0015;
/** Blur that fine detail is measured against, as a share of the long side. */
const DETAIL_BLUR = 0.004;
/** Long side under which detail and edges are not measured, pixels. */
export const DETAIL_LIMIT_PX = 1200;
/** Blur, in pixels, from which every second pixel shows all there is. */
const SPARSE_GRID_SIGMA_PX = 1.75;

export interface Prepared {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly longSidePx: number;
  /** Pixels between neighbouring cells of the grid. */
  readonly stride: number;
  readonly columns: number;
  readonly rows: number;
  /** Blurred linear RGB of each cell, interleaved. */
  readonly linear: Float32Array;
  /** CIELAB of each cell of the blurred plate. */
  readonly lab: LabPlanes;
  /** Clip value of each cell (`CLIP`). */
  readonly clipped: Uint8Array;
  /** L* of every pixel, unblurred; null when the plate is too small for detail. */
  readonly pixelLightness: Float32Array | null;
  /** L* of each cell minus its blurred surroundings; null when the plate is too small. */
  readonly deviation: Float32Array | null;
}

function blurColours(raster: EncodedRaster, sigmaPx: number, stride: number): Float32Array {
  const { widthPx, heightPx, samples } = raster;
  return blurToGrid({
    widthPx,
    heightPx,
    channels: 3,
    sigmaPx,
    stride,
    readRow: (y, line, offset) => {
      const start = y * widthPx * 3;
      for (let at = 0; at < widthPx * 3; at++) {
        line[offset + at] = LINEAR_OF_CODE[samples[start + at] as number] as number;
      }
    },
  });
}

/** L* minus Gaussian L* at the cells; the Gaussian is worked out on a coarse grid and read between its cells. */
function deviationsAt(
  lightness: Float32Array,
  widthPx: number,
  heightPx: number,
  sigmaPx: number,
  stride: number,
): Float32Array {
  const coarse = 4;
  const surroundings = blurToGrid({
    widthPx,
    heightPx,
    channels: 1,
    sigmaPx,
    stride: coarse,
    readRow: (y, line, offset) => line.set(lightness.subarray(y * widthPx, (y + 1) * widthPx), offset),
  });
  const coarseColumns = Math.ceil(widthPx / coarse);
  const coarseRows = Math.ceil(heightPx / coarse);
  const columns = Math.ceil(widthPx / stride);
  const result = new Float32Array(columns * Math.ceil(heightPx / stride));
  for (let y = 0, to = 0; y < heightPx; y += stride) {
    const top = Math.floor(y / coarse);
    const down = y / coarse - top;
    const upper = top * coarseColumns;
    const lower = Math.min(top + 1, coarseRows - 1) * coarseColumns;
    for (let x = 0; x < widthPx; x += stride, to++) {
      const left = Math.floor(x / coarse);
      const right = Math.min(left + 1, coarseColumns - 1);
      const along = x / coarse - left;
      const above =
        (1 - along) * (surroundings[upper + left] as number) +
        along * (surroundings[upper + right] as number);
      const below =
        (1 - along) * (surroundings[lower + left] as number) +
        along * (surroundings[lower + right] as number);
      result[to] = (lightness[y * widthPx + x] as number) - ((1 - down) * above + down * below);
    }
  }
  return result;
}

function clippedCells(plate: MeasurablePlate, stride: number): Uint8Array {
  const { widthPx, heightPx, samples } = plate.raster;
  const map = plate.clipped ?? null;
  const cells = new Uint8Array(Math.ceil(widthPx / stride) * Math.ceil(heightPx / stride));
  for (let y = 0, to = 0; y < heightPx; y += stride) {
    for (let x = 0; x < widthPx; x += stride, to++) {
      const pixel = y * widthPx + x;
      const at = pixel * 3;
      cells[to] = map
        ? (map[pixel] as number)
        : clipOf(samples[at] as number, samples[at + 1] as number, samples[at + 2] as number);
    }
  }
  return cells;
}

/**
 * @param plate corrected and upright; a clip map, when given, has one byte a pixel.
 * @returns about 16 bytes a pixel of the plate (at 2,048 px; 50 on small plates).
 */
export function prepareMeasurable(plate: MeasurablePlate): Prepared {
  const { widthPx, heightPx } = plate.raster;
  const longSidePx = Math.max(widthPx, heightPx);
  const sigmaPx = COLOUR_BLUR * longSidePx;
  const stride = sigmaPx >= SPARSE_GRID_SIGMA_PX ? 2 : 1;
  const linear = blurColours(plate.raster, sigmaPx, stride);
  const pixelLightness = longSidePx >= DETAIL_LIMIT_PX ? lightnessOfPixels(plate.raster) : null;
  return {
    widthPx,
    heightPx,
    longSidePx,
    stride,
    columns: Math.ceil(widthPx / stride),
    rows: Math.ceil(heightPx / stride),
    linear,
    lab: labPlanesFromLinear(linear),
    clipped: clippedCells(plate, stride),
    pixelLightness,
    deviation:
      pixelLightness && deviationsAt(pixelLightness, widthPx, heightPx, DETAIL_BLUR * longSidePx, stride),
  };
}
