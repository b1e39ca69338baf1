/**
 * A picture and what is outlined on it, as they stand inside one frame of it.
 *
 * In the flow: plate + outlines + kept frame -> [in-frame] -> planned ladder, weight and shapes. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '../image/raster.ts';
import type { Box } from './crops/crop-scene.ts';

/** The whole picture as a frame. */
export const WHOLE: Box = [0, 0, 1, 1];

/** Points of outlines may lie outside of a picture, but not farther than this many of its sides. */
const FARTHEST = 9;

/** The pixels inside a frame: whole ones, at least one. */
export function rasterInFrame(raster: EncodedRaster, [x0, y0, x1, y1]: Box): EncodedRaster {
  const { widthPx, heightPx, samples } = raster;
  const [left, top] = [Math.round(x0 * widthPx), Math.round(y0 * heightPx)];
  const width = Math.max(1, Math.round(x1 * widthPx) - left);
  const height = Math.max(1, Math.round(y1 * heightPx) - top);
  if (width === widthPx && height === heightPx) return raster;
  const inside = new Uint8Array(width * height * 3);
  for (let row = 0; row < height; row++) {
    const from = ((top + row) * widthPx + left) * 3;
    inside.set(samples.subarray(from, from + width * 3), row * width * 3);
  }
  return encodedRaster(width, height, inside);
}

/** From 0..1 of the picture to 0..1 of the frame; outside of it where the point lies outside. */
export function pointInFrame([x, y]: FractionPoint, [x0, y0, x1, y1]: Box): FractionPoint {
  const held = (share: number): number => Math.min(1 + FARTHEST, Math.max(-FARTHEST, share));
  return [held((x - x0) / (x1 - x0)), held((y - y0) / (y1 - y0))];
}

/** From 0..1 of the frame to 0..1 of the picture. */
export function pointOfFrame([x, y]: FractionPoint, [x0, y0, x1, y1]: Box): FractionPoint {
  return [x0 + x * (x1 - x0), y0 + y * (y1 - y0)];
}
