/**
 * The server's own formulas on small copies of two pictures, quick enough to follow a drag.
 *
 * In the flow: preview worker -> [preview-measuring] -> measures for the ladder. The painting is put right first, once,
 * so that the ladder does not change its light while somebody draws. Doubt is left out: it needs time that a drag does
 * not have. Pure.
 */
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedFromRgba } from '#server/core/image/raster.ts';
import { measurePrepared } from '#server/core/measure/measure-pair.ts';
import { onSquared } from '#server/core/measure/on-squared.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { isProblem } from '#server/core/problem.ts';
import { correctPhoto } from '#server/core/rectify/correct-photo.ts';
import { type PreviewSource, previewSetup } from './preview-setup.ts';

/** A picture's pixels as a canvas gives them: red, green, blue, alpha. */
export interface CanvasPixels {
  widthPx: number;
  heightPx: number;
  rgba: Uint8ClampedArray;
}

/**
 * @param reference Null when painted from life.
 * @param painting As photographed. @param photo Its corners and cards.
 * @returns The measures, or null while an outline cannot be one, and for good when the photo cannot be put right.
 */
export function previewMeasuring(
  reference: CanvasPixels | null,
  painting: CanvasPixels,
  photo: PhotoCorrection,
): (source: PreviewSource) => MeasureDocument | null {
  return (
    unlessProblem(() => {
      const there = reference && prepareMeasurable({ raster: rasterOf(reference) });
      const here = prepareMeasurable({ raster: correctPhoto(rasterOf(painting), photo) });
      return (source: PreviewSource) =>
        unlessProblem(() => {
          const setup = previewSetup(source);
          return setup && measurePrepared(there, here, onSquared(setup), { doubt: false });
        });
    }) ?? (() => null)
  );
}

function unlessProblem<Result>(make: () => Result): Result | null {
  try {
    return make();
  } catch (thrown) {
    if (isProblem(thrown)) return null;
    throw thrown;
  }
}

function rasterOf({ widthPx, heightPx, rgba }: CanvasPixels): EncodedRaster {
  return encodedFromRgba(widthPx, heightPx, rgba);
}
