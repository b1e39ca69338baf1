/**
 * Smaller copies by averaging square blocks of pixels. Blocks at the right and lower border may be cut short.
 *
 * In the flow: plate -> [blocks] -> gaussian. Pure.
 */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { Grid } from './gaussian.ts';
import type { EncodedRaster } from './raster.ts';

/** Every pixel in linear light. */
function linearPixels(raster: EncodedRaster): Float32Array {
  const { samples } = raster;
  const linear = new Float32Array(samples.length);
  for (let at = 0; at < linear.length; at++) linear[at] = LINEAR_OF_CODE[samples[at] as number] as number;
  return linear;
}

/** Means of 2×2 pixels in linear light. */
function linearPairs(raster: EncodedRaster): Grid {
  const { widthPx, heightPx, samples } = raster;
  const [columns, rows] = [Math.ceil(widthPx / 2), Math.ceil(heightPx / 2)];
  const linear = new Float32Array(columns * rows * 3);
  for (let row = 0, to = 0; row < rows; row++) {
    const upper = row * 2 * widthPx * 3;
    const lower = Math.min(heightPx - 1, row * 2 + 1) * widthPx * 3;
    for (let column = 0; column < columns; column++) {
      const left = column * 6;
      const right = column * 2 + 1 < widthPx ? left + 3 : left;
      for (let channel = 0; channel < 3; channel++, to++) {
        linear[to] =
          ((LINEAR_OF_CODE[samples[upper + left + channel] as number] as number) +
            (LINEAR_OF_CODE[samples[upper + right + channel] as number] as number) +
            (LINEAR_OF_CODE[samples[lower + left + channel] as number] as number) +
            (LINEAR_OF_CODE[samples[lower + right + channel] as number] as number)) /
          4;
      }
    }
  }
  return { columns, rows, channels: 3, samples: linear };
}

/** Linear light of a plate as it is (`side` 1) or halved (`side` 2). */
export function linearBlocks(raster: EncodedRaster, side: 1 | 2): Grid {
  if (side === 2) return linearPairs(raster);
  return { columns: raster.widthPx, rows: raster.heightPx, channels: 3, samples: linearPixels(raster) };
}

/** Means of square blocks of one channel. @param side pixels, at least 1. */
export function meanOfBlocks(values: Float32Array, widthPx: number, heightPx: number, side: number): Grid {
  const [columns, rows] = [Math.ceil(widthPx / side), Math.ceil(heightPx / side)];
  const samples = new Float32Array(columns * rows);
  const sums = new Float64Array(columns);
  for (let row = 0; row < rows; row++) {
    const bottom = Math.min(heightPx, (row + 1) * side);
    sums.fill(0);
    for (let y = row * side; y < bottom; y++) {
      for (let x = 0, at = y * widthPx; x < widthPx; x++, at++) {
        const column = (x / side) | 0;
        sums[column] = (sums[column] as number) + (values[at] as number);
      }
    }
    for (let column = 0; column < columns; column++) {
      const across = Math.min(side, widthPx - column * side);
      samples[row * columns + column] = (sums[column] as number) / (across * (bottom - row * side));
    }
  }
  return { columns, rows, channels: 1, samples };
}
