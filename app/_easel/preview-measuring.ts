/**
 * The server's own formulas on small copies of two pictures, quick enough to follow a drag.
 *
 * In the flow: preview worker -> [preview-measuring] -> measures for the ladder. Doubt is left out: it needs time
 * that a drag does not have. Pure.
 */
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { type EncodedRaster, encodedFromRgba } from '#server/core/image/raster.ts';
import { measurePrepared } from '#server/core/measure/measure-pair.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { isProblem } from '#server/core/problem.ts';
import { type PreviewSource, previewSetup } from './preview-setup.ts';

/** A picture's pixels as a canvas gives them: red, green, blue, alpha. */
export interface CanvasPixels {
  widthPx: number;
  heightPx: number;
  rgba: Uint8ClampedArray;
}

/** @param reference Null when painted from life. @returns The measures, or null while an outline cannot be one. */
export function previewMeasuring(
  reference: CanvasPixels | null,
  painting: CanvasPixels,
): (source: PreviewSource) => MeasureDocument | null {
  const [there, here] = [
    reference && prepareMeasurable(plateOf(reference)),
    prepareMeasurable(plateOf(painting)),
  ];
  return (source) => {
    try {
      const setup = previewSetup(source);
      return setup && measurePrepared(there, here, setup, { doubt: false });
    } catch (thrown) {
      if (isProblem(thrown)) return null;
      throw thrown;
    }
  };
}

function plateOf({ widthPx, heightPx, rgba }: CanvasPixels): { raster: EncodedRaster } {
  return { raster: encodedFromRgba(widthPx, heightPx, rgba) };
}
