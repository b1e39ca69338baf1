/**
 * A picture as carrying looks at it: lightness and colour on a grid, and ever coarser copies of it.
 *
 * In the flow: picture -> [sight] -> find-placement, find-moves, fit-ridges. Pure.
 */
import { shrunkLinear } from '../../capture/shrunk-linear.ts';
import { gaussianBlur } from '../../image/gaussian.ts';
import { labPlanesFromLinear } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';

/** CIELAB on a grid, row by row. */
export interface Sight {
  readonly columns: number;
  readonly rows: number;
  /** L*, a*, b*. */
  readonly channels: readonly [Float32Array, Float32Array, Float32Array];
}

/** @param longSide of the grid, cells; a smaller picture keeps its size. */
export function sightOf(raster: EncodedRaster, longSide: number): Sight {
  const { linear, columns, rows } = shrunkLinear(raster, longSide);
  const { lightness, a, b } = labPlanesFromLinear(linear);
  return { columns, rows, channels: [lightness, a, b] };
}

/** Blur, cells: less than a cell's shift of a plane then changes little. */
const SOFT = 1;

/** The same, a little blurred. */
export function softer({ columns, rows, channels }: Sight): Sight {
  const soft = channels.map((samples) => gaussianBlur({ columns, rows, channels: 1, samples }, SOFT));
  return { columns, rows, channels: soft as [Float32Array, Float32Array, Float32Array] }; // three in
}

/** The same on a coarser grid, by means. */
export function coarser({ columns, rows, channels }: Sight, longSide: number): Sight {
  const shrink = Math.min(1, longSide / Math.max(columns, rows));
  const [across, down] = [Math.max(1, Math.round(columns * shrink)), Math.max(1, Math.round(rows * shrink))];
  const counts = new Float32Array(across * down);
  const sums = channels.map(() => new Float32Array(across * down));
  const columnOf = Int32Array.from({ length: columns }, (_, x) => Math.floor((x * across) / columns));
  for (let y = 0, cell = 0; y < rows; y++) {
    const row = Math.floor((y * down) / rows) * across;
    for (let x = 0; x < columns; x++, cell++) {
      const to = row + (columnOf[x] as number);
      counts[to] = (counts[to] as number) + 1;
      sums.forEach((sum, channel) => {
        sum[to] = (sum[to] as number) + ((channels[channel] as Float32Array)[cell] as number);
      });
    }
  }
  const means = sums.map((sum) => sum.map((value, cell) => value / (counts[cell] as number)));
  return { columns: across, rows: down, channels: means as [Float32Array, Float32Array, Float32Array] }; // three in
}

/** Standard deviation of L*: how much there is to see at all. */
export function toneDeviation({ channels: [lightness] }: Sight): number {
  let [sum, squares] = [0, 0];
  for (const value of lightness) {
    sum += value;
    squares += value * value;
  }
  const mean = sum / lightness.length;
  return Math.sqrt(Math.max(0, squares / lightness.length - mean * mean));
}
