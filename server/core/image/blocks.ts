/**
 * Smaller copies of a plate, from which wide blurs are taken.
 *
 * In the flow: plate -> [blocks] -> gaussian. Pure.
 */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import { type Grid, mirrorIndex } from './gaussian.ts';
import type { EncodedRaster } from './raster.ts';

/** In single precision: the smaller table stays nearer the processor. */
const LIGHT_OF_CODE = Float32Array.from(LINEAR_OF_CODE);

/** Every pixel in linear light. */
function linearPixels(raster: EncodedRaster): Float32Array {
  const { samples } = raster;
  const linear = new Float32Array(samples.length);
  for (let at = 0; at < linear.length; at++) linear[at] = LIGHT_OF_CODE[samples[at] as number] as number;
  return linear;
}

/** Variance, in pixels², of the weights 1, 3, 3, 1 that halving averages with. */
export const HALVING_VARIANCE = 0.75;

/** Row `y` in linear light with one pixel mirrored at its left end and two at its right. */
function decodeRow(raster: EncodedRaster, y: number, line: Float32Array): void {
  const { widthPx, samples } = raster;
  const start = y * widthPx * 3;
  const length = widthPx * 3;
  for (let at = 0; at < length; at++) line[at + 3] = LIGHT_OF_CODE[samples[start + at] as number] as number;
  line.copyWithin(0, 3, 6);
  line.copyWithin(length + 3, length, length + 3);
  line.copyWithin(length + 6, Math.max(3, length - 3), Math.max(6, length));
}

/** Weighs 1, 3, 3, 1 around every second place between two pixels. */
function halveRow(line: Float32Array, out: Float32Array): void {
  for (let to = 0, at = 0; to < out.length; to += 3, at += 6) {
    out[to] =
      ((line[at] as number) +
        3 * ((line[at + 3] as number) + (line[at + 6] as number)) +
        (line[at + 9] as number)) /
      8;
    out[to + 1] =
      ((line[at + 1] as number) +
        3 * ((line[at + 4] as number) + (line[at + 7] as number)) +
        (line[at + 10] as number)) /
      8;
    out[to + 2] =
      ((line[at + 2] as number) +
        3 * ((line[at + 5] as number) + (line[at + 8] as number)) +
        (line[at + 11] as number)) /
      8;
  }
}

/**
 * Half as many rows and columns, in linear light. Weights 1, 3, 3, 1 both ways, so that a canvas' weave, close
 * to the finest a plate can show, does not come back as a coarse pattern.
 */
function halved(raster: EncodedRaster): Grid {
  const { widthPx, heightPx } = raster;
  const [columns, rows] = [Math.ceil(widthPx / 2), Math.ceil(heightPx / 2)];
  const rowLength = columns * 3;
  const line = new Float32Array((2 * columns + 2) * 3 + 3);
  const ring = Array.from({ length: 4 }, () => new Float32Array(rowLength));
  const rowAt = (y: number): Float32Array => ring[mirrorIndex(y, heightPx) % 4] as Float32Array;
  const samples = new Float32Array(rowLength * rows);
  for (let row = 0, read = 0, to = 0; row < rows; row++) {
    for (; read <= Math.min(heightPx - 1, row * 2 + 2); read++) {
      decodeRow(raster, read, line);
      halveRow(line, ring[read % 4] as Float32Array);
    }
    const [p, q, r, s] = [rowAt(row * 2 - 1), rowAt(row * 2), rowAt(row * 2 + 1), rowAt(row * 2 + 2)];
    for (let at = 0; at < rowLength; at++, to++) {
      samples[to] = ((p[at] as number) + 3 * ((q[at] as number) + (r[at] as number)) + (s[at] as number)) / 8;
    }
  }
  return { columns, rows, channels: 3, samples };
}

/** Linear light of a plate as it is (`side` 1) or halved (`side` 2). */
export function linearBlocks(raster: EncodedRaster, side: 1 | 2): Grid {
  if (side === 2) return halved(raster);
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
