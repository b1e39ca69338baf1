/**
 * Whether a photo is out of focus or shaken: even its hardest edges are wide.
 *
 * In the flow: plate -> [softness] -> photo facts. Along thinned rows and columns every rise or fall of lightness is one
 * edge, read from the green channel; its width is its contrast over its steepest slope. Pure. The limits are our own.
 */
import { lightnessFromLuminance } from '../colour/lab.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { EncodedRaster } from '../image/raster.ts';

/** Long side under which focus can't be told, pixels. */
const SMALLEST_PX = 600;
/** Least contrast of an edge, in L*. */
const CONTRAST = 12;
const FEWEST_EDGES = 120;
/** The edges looked at are the hardest twentieth. */
const HARDEST = 0.05;
/** Width of the hardest edges, as a share of the long side, from which a photo is soft. */
const SOFT = 0.0035;
/** Every so many rows and columns is looked at. */
const EVERY = 5;

const LIGHTNESS_OF_CODE = LINEAR_OF_CODE.map(lightnessFromLuminance);

/** Widths of the edges along one line of samples, in pixels. */
function widthsAlong(
  values: ArrayLike<number>,
  start: number,
  step: number,
  count: number,
  into: number[],
): void {
  let began = LIGHTNESS_OF_CODE[values[start] as number] as number;
  let before = began;
  let steepest = 0;
  let sign = 0;
  for (let at = 1; at < count; at++) {
    const now = LIGHTNESS_OF_CODE[values[start + at * step] as number] as number;
    const slope = now - before;
    if (slope !== 0 && Math.sign(slope) !== sign) {
      const contrast = Math.abs(before - began);
      if (contrast >= CONTRAST) into.push(contrast / steepest);
      began = before;
      steepest = 0;
      sign = Math.sign(slope);
    }
    steepest = Math.max(steepest, Math.abs(slope));
    before = now;
  }
  const contrast = Math.abs(before - began);
  if (contrast >= CONTRAST) into.push(contrast / steepest);
}

/** True when soft; null when the picture is too small or shows too few edges to tell. */
export function isSoft(plate: EncodedRaster): boolean | null {
  const { widthPx, heightPx } = plate;
  const longSidePx = Math.max(widthPx, heightPx);
  if (longSidePx < SMALLEST_PX) return null;
  const { samples } = plate;
  const widths: number[] = [];
  for (let y = 0; y < heightPx; y += EVERY) widthsAlong(samples, y * widthPx * 3 + 1, 3, widthPx, widths);
  for (let x = 0; x < widthPx; x += EVERY) widthsAlong(samples, x * 3 + 1, widthPx * 3, heightPx, widths);
  if (widths.length < FEWEST_EDGES) return null;
  widths.sort((p, q) => p - q);
  return (widths[Math.floor(widths.length * HARDEST)] as number) > SOFT * longSidePx;
}
