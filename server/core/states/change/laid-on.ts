/**
 * A later photograph as it lies on an earlier one, pixel for pixel. In the flow: plates + alignment -> [laid-on] -> stage,
 * change map. Read between pixels in code values: it is for looking at, nothing is measured on it. Pure.
 */
import { project } from '../../geometry/homography.ts';
import type { Matrix3 } from '../../geometry/matrix3.ts';
import { type EncodedRaster, encodedRaster } from '../../image/raster.ts';

/**
 * @param later squared, best at about the size asked for. @param toLater from fractions of the earlier picture to fractions
 *   of it; what lies outside it repeats its border.
 */
export function laidOn(
  later: EncodedRaster,
  toLater: Matrix3,
  widthPx: number,
  heightPx: number,
): EncodedRaster {
  const result = new Uint8Array(widthPx * heightPx * 3);
  for (let row = 0, to = 0; row < heightPx; row++) {
    for (let column = 0; column < widthPx; column++, to += 3) {
      const [u, v] = project(toLater, [(column + 0.5) / widthPx, (row + 0.5) / heightPx]);
      writeBetween(later, u * later.widthPx - 0.5, v * later.heightPx - 0.5, result, to);
    }
  }
  return encodedRaster(widthPx, heightPx, result);
}

/** @param x, y in pixels, 0 = the middle of the first. */
function writeBetween(
  { widthPx, heightPx, samples }: EncodedRaster,
  x: number,
  y: number,
  result: Uint8Array,
  to: number,
): void {
  const px = Math.min(widthPx - 1, Math.max(0, x));
  const py = Math.min(heightPx - 1, Math.max(0, y));
  const [left, top] = [px | 0, py | 0];
  const [along, down] = [px - left, py - top];
  const upper = (top * widthPx + left) * 3;
  const right = left + 1 < widthPx ? 3 : 0;
  const lower = top + 1 < heightPx ? upper + widthPx * 3 : upper;
  for (let channel = 0; channel < 3; channel++) {
    const p = samples[upper + channel] as number;
    const q = samples[upper + right + channel] as number;
    const r = samples[lower + channel] as number;
    const s = samples[lower + right + channel] as number;
    const above = p + along * (q - p);
    result[to + channel] = Math.round(above + down * (r + along * (s - r) - above));
  }
}
