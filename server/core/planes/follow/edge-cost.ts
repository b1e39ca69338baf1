/**
 * What it costs a line to pass through each pixel of a picture: little along strong edges, much across even ground.
 *
 * In the flow: small copy -> [edge-cost], once a picture -> edge-path. Pure. Sources: Di Zenzo 1986, "A note on the
 * gradient of a multi-image" (one gradient of three channels); Mortensen & Barrett 1995, "Intelligent scissors for
 * image composition" (lines that follow the least cost).
 */

import { shrunkLinear } from '../../capture/shrunk-linear.ts';
import { gaussianBlur } from '../../image/gaussian.ts';
import { labPlanesFromLinear } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { slidingMinimum } from '../../image/sliding-minimum.ts';

/** Cost of every pixel of a small copy, row by row. */
export interface EdgeCosts {
  readonly columns: number;
  readonly rows: number;
  /** 1 (on a strong edge) to `MOST_COST` (even ground). */
  readonly costs: Uint8Array | Uint16Array;
}

/** Cost of even ground, in costs of the strongest edge: how long a detour along an edge a line takes. */
export const MOST_COST = 32;

/** Long side of the copy, pixels: fine enough for a ridge, small enough for a hand that moves. */
const LONG_SIDE_PX = 640;
/** Blurs before the gradient, pixels: the fine one says where the edge is, the wide one that it is no brush mark. */
const FINE_PX = 1.4;
const WIDE_PX = 4;
/** Reach within which an edge is held against its strongest neighbour, as a share of the long side. */
const REACH = 0.03;
/** Height of a step between two colours, in CIELAB: lower ones are grain, higher ones are as good as any. */
const GRAIN = 1;
const FULL = 9;
/** How much the edge's place among its neighbours counts against its strength in the whole picture. */
const LOCAL = 0.5;

/** Length of the colour gradient in CIELAB a pixel: the larger eigenvalue of Di Zenzo's tensor. */
function gradientOf(lab: Float32Array, columns: number, rows: number): Float32Array {
  const result = new Float32Array(columns * rows);
  for (let y = 0; y < rows; y++) {
    const [above, below] = [Math.max(0, y - 1) * columns, Math.min(rows - 1, y + 1) * columns];
    for (let x = 0; x < columns; x++) {
      const [left, right] = [Math.max(0, x - 1), Math.min(columns - 1, x + 1)];
      let [xx, yy, xy] = [0, 0, 0];
      for (let channel = 0; channel < 3; channel++) {
        const at = (cell: number) => lab[cell * 3 + channel] as number;
        const dx = (at(y * columns + right) - at(y * columns + left)) / 2;
        const dy = (at(below + x) - at(above + x)) / 2;
        [xx, yy, xy] = [xx + dx * dx, yy + dy * dy, xy + dx * dy];
      }
      const larger = (xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2;
      result[y * columns + x] = Math.sqrt(larger);
    }
  }
  return result;
}

/** The strongest gradient within reach of every pixel. */
function strongestNear(gradient: Float32Array, columns: number, rows: number): Float32Array {
  const radius = Math.max(2, Math.round(REACH * Math.max(columns, rows)));
  const least = slidingMinimum(
    gradient.map((value) => -value),
    columns,
    rows,
    radius,
  );
  return least.map((value) => -value);
}

/** A step of height h, blurred by sigma, has the gradient h / (sigma √2π). */
const heightOf = (gradient: number, sigma: number) => gradient * sigma * Math.sqrt(2 * Math.PI);

/** Gradient of the picture blurred by `sigma` pixels, as the height of a step that would have it. */
function stepHeights(linear: Float32Array, columns: number, rows: number, sigma: number): Float32Array {
  const samples = gaussianBlur({ columns, rows, channels: 3, samples: linear }, sigma);
  const { lightness, a, b } = labPlanesFromLinear(samples);
  const lab = new Float32Array(samples.length);
  for (let cell = 0; cell < lightness.length; cell++) {
    lab[cell * 3] = lightness[cell] as number;
    lab[cell * 3 + 1] = a[cell] as number;
    lab[cell * 3 + 2] = b[cell] as number;
  }
  return gradientOf(lab, columns, rows).map((value) => heightOf(value, sigma));
}

/** @param raster any size; a copy of at most 640 px is looked at. */
export function edgeCosts(raster: EncodedRaster): EdgeCosts {
  const { linear, columns, rows } = shrunkLinear(raster, LONG_SIDE_PX);
  const fine = stepHeights(linear, columns, rows, FINE_PX);
  const wide = stepHeights(linear, columns, rows, WIDE_PX);
  const heights = fine.map((value, cell) => Math.sqrt(value * (wide[cell] as number)));
  const strongest = strongestNear(heights, columns, rows);
  const costs = Uint8Array.from(heights, (value, cell) => {
    const clear = Math.max(0, value - GRAIN);
    const inPicture = Math.min(1, clear / FULL);
    const amongNeighbours = clear / Math.max(strongest[cell] as number, 2 * GRAIN);
    const edge = Math.min(1, LOCAL * amongNeighbours + (1 - LOCAL) * inPicture);
    return Math.round(1 + (MOST_COST - 1) * (1 - edge) ** 2);
  });
  return { columns, rows, costs };
}
