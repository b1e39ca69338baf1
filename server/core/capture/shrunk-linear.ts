/** A small copy of a picture in linear light, by means of its pixels. Pure. */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { EncodedRaster } from '../image/raster.ts';

/** @param longSide of the copy, at most; a smaller picture keeps its size. */
export function shrunkLinear(
  { widthPx, heightPx, samples }: EncodedRaster,
  longSide: number,
): { linear: Float32Array; columns: number; rows: number } {
  const shrink = Math.min(1, longSide / Math.max(widthPx, heightPx));
  const columns = Math.max(1, Math.round(widthPx * shrink));
  const rows = Math.max(1, Math.round(heightPx * shrink));
  const linear = new Float32Array(columns * rows * 3);
  const counts = new Uint32Array(columns * rows);
  const columnOf = Int32Array.from({ length: widthPx }, (_, x) => Math.floor((x * columns) / widthPx));
  for (let y = 0, at = 0; y < heightPx; y++) {
    const row = Math.floor((y * rows) / heightPx) * columns;
    for (let x = 0; x < widthPx; x++, at += 3) {
      const cell = row + (columnOf[x] as number);
      counts[cell] = (counts[cell] as number) + 1;
      for (let channel = 0; channel < 3; channel++) {
        const to = cell * 3 + channel;
        linear[to] = (linear[to] as number) + (LINEAR_OF_CODE[samples[at + channel] as number] as number);
      }
    }
  }
  for (let to = 0; to < linear.length; to++) {
    linear[to] = (linear[to] as number) / (counts[Math.floor(to / 3)] as number);
  }
  return { linear, columns, rows };
}
