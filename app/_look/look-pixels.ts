/**
 * What the looking tools need of one picture: its lit pixels, its values counted, its squinted self.
 *
 * In the flow: look worker -> [look-pixels] -> value map, patches, squint. By the server's own formulas. Pure.
 */

import { codeOfLinear } from '#server/core/colour/transfer.ts';
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import { HALVING_VARIANCE, linearBlocks } from '#server/core/image/blocks.ts';
import { gaussianBlur, sigmaLeft } from '#server/core/image/gaussian.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { countCodes, valueCodes } from '#server/core/look/value-counts.ts';
import { isProblem } from '#server/core/problem.ts';
import { applyCorrection, type CorrectionPlan, planCorrection } from '#server/core/rectify/correct-photo.ts';

export interface LookPixels {
  /** The picture, its light made neutral where cards or a border allow; see `LookAs` for its frame. */
  lit: EncodedRaster;
  /** L* of each of its pixels in half L*, softened; see `valueCodes`. */
  codes: Uint8Array;
  counts: Uint32Array;
}

export interface LookAs {
  photo: PhotoCorrection;
  /** The painting alone, squared by its corners where it has any; else the photo in its own frame. */
  squared: boolean;
  /** Sigma of the softening, share of the long side. */
  squint: number;
}

/** Fractions of a picture to themselves. */
const AS_IT_IS: CorrectionPlan['toPhoto'] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** What the correction does, or null where there is none or it cannot be carried out on this copy. */
function planOf(raw: EncodedRaster, photo: PhotoCorrection): CorrectionPlan | null {
  if (!photo.corners && !photo.cards?.length) return null;
  try {
    return planCorrection(raw, photo);
  } catch (thrown) {
    if (isProblem(thrown)) return null;
    throw thrown;
  }
}

/** The picture as it is looked at, before any softening. */
export function litRaster(raw: EncodedRaster, { photo, squared }: Omit<LookAs, 'squint'>): EncodedRaster {
  const plan = planOf(raw, photo);
  if (!plan) return raw;
  if (squared && photo.corners) return applyCorrection(raw, plan);
  const { widthPx, heightPx } = raw;
  return applyCorrection(raw, { widthPx, heightPx, toPhoto: AS_IT_IS, light: plan.light });
}

/** @param lit as of `litRaster`. @param squint sigma of the softening, share of the long side. */
export function lookPixels(lit: EncodedRaster, squint: number): LookPixels {
  const codes = valueCodes(lit, squint);
  return { lit, codes, counts: countCodes(codes) };
}

/** The least that is left to blur after halving, in cells. */
const LEAST_SIGMA = 0.5;

/**
 * A picture as half-closed eyes see it: light mixed as light, which the browser's own blur does not do.
 * @param squint sigma as a share of the long side. @returns Half as large: nothing finer is left in it.
 */
export function squinted(raw: EncodedRaster, squint: number): EncodedRaster {
  const grid = linearBlocks(raw, 2);
  const sigmaPx = squint * Math.max(raw.widthPx, raw.heightPx);
  const sigma = Math.max(
    LEAST_SIGMA,
    sigmaPx ** 2 > HALVING_VARIANCE ? sigmaLeft(sigmaPx, HALVING_VARIANCE, 2) : 0,
  );
  const soft = gaussianBlur(grid, sigma);
  return encodedRaster(grid.columns, grid.rows, Uint8Array.from(soft, codeOfLinear));
}
