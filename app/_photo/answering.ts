/**
 * What can be asked about one photo of a painting, and the answers, by the server's own formulas.
 *
 * In the flow: photo worker -> [answering] -> corners, a card's box, the photo put right. Pure.
 */
import { smallPaintingNote } from '#server/core/capture/small-painting.ts';
import { viewOf } from '#server/core/capture/view-facts.ts';
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import { isProblem } from '#server/core/problem.ts';
import { applyCorrection, planCorrection } from '#server/core/rectify/correct-photo.ts';
import { changesNoLight, EVEN_LIGHT } from '#server/core/rectify/light-field.ts';

export interface Righted {
  raster: EncodedRaster;
  /** Whether cards or border change the light. */
  lit: boolean;
  /** What could not be used, and what should be known, in whole sentences. */
  notes: readonly string[];
}

export interface RightedWish {
  photo: PhotoCorrection;
  /** Squared only, the light as it came: for holding before against after. */
  lightAsCame: boolean;
  /** Long side of the photo as it was taken, pixels. */
  fullSidePx: number;
}

/** @returns The photo put right, or the sentence that says why it cannot be. */
export function putRight(
  raster: EncodedRaster,
  { photo, lightAsCame, fullSidePx }: RightedWish,
): Righted | string {
  try {
    const plan = planCorrection(raster, photo);
    const enlarge = fullSidePx / Math.max(raster.widthPx, raster.heightPx);
    const { shortSidePx, fillsPhoto } = viewOf(photo, raster.widthPx * enlarge, raster.heightPx * enlarge);
    const small = smallPaintingNote(shortSidePx, fillsPhoto);
    return {
      raster: applyCorrection(raster, lightAsCame ? { ...plan, light: EVEN_LIGHT } : plan),
      lit: !changesNoLight(plan.light),
      notes: small ? [...plan.light.reasons, small] : plan.light.reasons,
    };
  } catch (thrown) {
    if (isProblem(thrown)) return thrown.message;
    throw thrown;
  }
}
