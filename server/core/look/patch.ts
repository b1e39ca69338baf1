/**
 * A patch of colour taken from a picture: the mean of a small disc in linear light.
 *
 * In the flow: lit photo + place -> [patch] -> patch words, swatches. Pure.
 */
import { hexFromLinear } from '../colour/hex.ts';
import { chromaOf, labFromRgb } from '../colour/lab.ts';
import { warmCoolKernel } from '../colour/temperature.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { FractionPoint, LabColour } from '../contract/setup.ts';
import { CLIP, clipOf, type EncodedRaster } from '../image/raster.ts';

export interface Patch {
  readonly lab: LabColour;
  /** C*ab. */
  readonly chroma: number;
  /** C^1.07 · cos(h − 50°): + warm, − cool. */
  readonly warmCool: number;
  /** `#rrggbb` of the mean. */
  readonly hex: string;
  /** Part of its pixels that are blown or crushed, 0..1. */
  readonly clipped: number;
}

/** Radius of the disc, share of the long side. */
export const PATCH_RADIUS = 0.008;
const LEAST_RADIUS_PX = 1.5;

/** @param point 0..1 of the raster. @returns null outside it. */
export function patchAt(
  raster: EncodedRaster,
  [x, y]: FractionPoint,
  radius: number = PATCH_RADIUS,
): Patch | null {
  if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) return null;
  const { samples, widthPx, heightPx } = raster;
  const radiusPx = Math.max(LEAST_RADIUS_PX, radius * Math.max(widthPx, heightPx));
  const [middleX, middleY] = [x * widthPx, y * heightPx];
  let [red, green, blue, clipped, pixels] = [0, 0, 0, 0, 0];
  const to = (middle: number, length: number): number => Math.min(length - 1, Math.ceil(middle + radiusPx));
  for (let row = Math.max(0, Math.floor(middleY - radiusPx)); row <= to(middleY, heightPx); row++) {
    for (let column = Math.max(0, Math.floor(middleX - radiusPx)); column <= to(middleX, widthPx); column++) {
      if (Math.hypot(column + 0.5 - middleX, row + 0.5 - middleY) > radiusPx) continue;
      const at = (row * widthPx + column) * 3;
      const [r, g, b] = [samples[at] as number, samples[at + 1] as number, samples[at + 2] as number];
      red += LINEAR_OF_CODE[r] as number;
      green += LINEAR_OF_CODE[g] as number;
      blue += LINEAR_OF_CODE[b] as number;
      if (clipOf(r, g, b) !== CLIP.none) clipped++;
      pixels++;
    }
  }
  const lab = labFromRgb([red / pixels, green / pixels, blue / pixels]);
  return {
    lab,
    chroma: chromaOf(lab.a, lab.b),
    warmCool: warmCoolKernel(lab.a, lab.b),
    hex: hexFromLinear(red / pixels, green / pixels, blue / pixels),
    clipped: clipped / pixels,
  };
}
