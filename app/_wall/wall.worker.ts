/**
 * Squares, squints, groups into values and takes palettes beside the page, so that neither hand nor eye waits.
 *
 * In the flow: wall-line -> [wall worker] -> wall-line, on copies of paintings. IO: messages; HTTP.
 */
import { litRaster, squinted } from '#app/_look/look-pixels.ts';
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { bitmapOf, copyAt } from '#app/_workers/copies.ts';
import type { Outline, PhotoCorrection } from '#server/core/contract/setup.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import type { ValueNumber } from '#server/core/look/value-numbers.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import { type PaletteColour, paletteOf } from '#server/core/wall/palette.ts';
import { valueMap } from '#server/core/wall/value-map.ts';

export type WallAsk =
  | { ask: 'squared' }
  /** Sigma of the softening, share of the long side. */
  | { ask: 'squint'; squint: number }
  | { ask: 'values'; count: ValueNumber }
  /** Outlines far to near, 0..1 of the squared painting. */
  | { ask: 'palette'; planes: readonly Outline[] };

/** `address` of the copy, whole. */
export type WallQuestion = { address: string; photo: PhotoCorrection } & WallAsk;

export type WallAnswer = { bitmap: ImageBitmap } | { palette: PaletteColour[] };

const lit = new Map<string, EncodedRaster>();
/** Squared paintings kept: as many as hang at once. */
const LIT_KEPT = 12;

/** A painting squared and in the light of its cards, kept for the next way of looking at it. */
async function litAt({ address, photo }: WallQuestion): Promise<EncodedRaster> {
  const key = JSON.stringify([address, photo]);
  const raster = lit.get(key) ?? litRaster(await copyAt(address), { photo, squared: true });
  lit.set(key, raster);
  for (const old of [...lit.keys()].slice(0, -LIT_KEPT)) lit.delete(old);
  return raster;
}

answerQuestions(
  async (question: WallQuestion): Promise<WallAnswer> => {
    const raster = await litAt(question);
    if (question.ask === 'squared') return { bitmap: await bitmapOf(raster) };
    if (question.ask === 'squint') return { bitmap: await bitmapOf(squinted(raster, question.squint)) };
    if (question.ask === 'values') return { bitmap: await bitmapOf(valueMap(raster, question.count)) };
    const { planes } = question;
    const labels = planes.length > 0 ? drawLabelMap(raster.widthPx, raster.heightPx, planes) : null;
    return { palette: paletteOf(raster, labels && { labels, count: planes.length }) };
  },
  (given) => ('bitmap' in given ? [given.bitmap] : []),
);
