/**
 * Pixels as a painter groups them: lightness in half L*, softened as by half-closed eyes, and counted.
 *
 * In the flow: lit photo -> [value-counts] -> starting cuts, groups, shares. Pure.
 */
import { lightnessFromLuminance } from '../colour/lab.ts';
import { XYZ_FROM_RGB } from '../colour/spaces.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import { gaussianBlur } from '../image/gaussian.ts';
import type { EncodedRaster } from '../image/raster.ts';

/** Codes in one L*. */
export const CODES_PER_L = 2;
/** Codes 0..200 stand for L* 0..100. */
export const CODE_COUNT = 100 * CODES_PER_L + 1;
/** Sigma below which a blur changes nothing, pixels. */
const LEAST_SIGMA_PX = 0.3;

/** Y/Yn of every pixel, in linear light. */
function luminanceOf({ samples, widthPx, heightPx }: EncodedRaster): Float32Array {
  const [, [red, green, blue]] = XYZ_FROM_RGB;
  const result = new Float32Array(widthPx * heightPx);
  for (let pixel = 0, at = 0; pixel < result.length; pixel++, at += 3) {
    result[pixel] =
      red * (LINEAR_OF_CODE[samples[at] as number] as number) +
      green * (LINEAR_OF_CODE[samples[at + 1] as number] as number) +
      blue * (LINEAR_OF_CODE[samples[at + 2] as number] as number);
  }
  return result;
}

/**
 * L* of every pixel in codes of half an L*.
 *
 * @param squint sigma of the blur as a share of the long side; it mixes light, as the eye does, not codes.
 */
export function valueCodes(raster: EncodedRaster, squint: number): Uint8Array {
  const luminance = luminanceOf(raster);
  const sigma = squint * Math.max(raster.widthPx, raster.heightPx);
  const grid = { columns: raster.widthPx, rows: raster.heightPx, channels: 1, samples: luminance };
  const seen = sigma < LEAST_SIGMA_PX ? luminance : gaussianBlur(grid, sigma);
  const codes = new Uint8Array(seen.length);
  for (let pixel = 0; pixel < codes.length; pixel++) {
    const lightness = lightnessFromLuminance(seen[pixel] as number);
    codes[pixel] = Math.min(CODE_COUNT - 1, Math.max(0, Math.round(lightness * CODES_PER_L)));
  }
  return codes;
}

/** How many pixels have each code: `CODE_COUNT` counts. */
export function countCodes(codes: Uint8Array): Uint32Array {
  const counts = new Uint32Array(CODE_COUNT);
  for (const code of codes) counts[code] = (counts[code] ?? 0) + 1;
  return counts;
}
