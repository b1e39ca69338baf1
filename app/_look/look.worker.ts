/**
 * Works out values, patches and squints beside the page, so that neither hand nor eye waits for it.
 *
 * In the flow: look-line -> [look worker] -> look-line, on the lossless small copy of a picture. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { bitmapOf, copyAt } from '#app/_workers/copies.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import { type LookAs, type LookPixels, litRaster, lookPixels, squinted } from './look-pixels.ts';

/** `address` of the copy, whole. */
export interface LookQuestion {
  address: string;
  as: LookAs;
  ask: 'pixels' | 'squinted';
}

export type LookAnswer = { pixels: LookPixels } | { squinted: ImageBitmap };

const lit = new Map<string, EncodedRaster>();
/** Lit pictures kept: two, squared and as photographed. */
const LIT_KEPT = 4;

/** A picture in its light, kept for the next strength of squinting. */
async function litAt({ address, as: { photo, squared } }: LookQuestion): Promise<EncodedRaster> {
  const raw = await copyAt(address);
  const key = JSON.stringify([address, photo, squared]);
  const raster = lit.get(key) ?? litRaster(raw, { photo, squared });
  lit.set(key, raster);
  for (const old of [...lit.keys()].slice(0, -LIT_KEPT)) lit.delete(old);
  return raster;
}

answerQuestions(
  async (question: LookQuestion): Promise<LookAnswer> => {
    const { as, ask } = question;
    const raster = await litAt(question);
    if (ask === 'pixels') return { pixels: lookPixels(raster, as.squint) };
    return { squinted: await bitmapOf(squinted(raster, as.squint)) };
  },
  (given) => ('squinted' in given ? [given.squinted] : []),
);
