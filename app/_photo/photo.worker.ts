/**
 * Puts photos right beside the page, so that neither hand nor eye waits for it.
 *
 * In the flow: photo-line -> [photo worker] -> photo-line, on copies of one picture. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { bitmapOf, copyAt } from '#app/_workers/copies.ts';
import { proposeCorners } from '#server/core/capture/propose-corners.ts';
import type { FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';
import { proposeCard } from '#server/core/rectify/propose-card.ts';
import { putRight, type RightedWish } from './answering.ts';

export type PhotoAsk =
  | { ask: 'corners' }
  | { ask: 'card'; at: FractionPoint }
  | ({ ask: 'right' } & RightedWish);

/** `address` of the copy that the question is about, whole. */
export type PhotoQuestion = { address: string } & PhotoAsk;

export interface RightedPicture {
  bitmap: ImageBitmap;
  lit: boolean;
  notes: readonly string[];
}

/** `corners` and `box` are null where nothing was found for sure. */
export type PhotoAnswer =
  | { corners: NonNullable<PhotoCorrection['corners']> | null }
  | { box: [number, number, number, number] | null }
  | { righted: RightedPicture | string };

answerQuestions(
  async (question: PhotoQuestion): Promise<PhotoAnswer> => {
    const raster = await copyAt(question.address);
    if (question.ask === 'corners') {
      const [a, b, c, d] = proposeCorners(raster) ?? [];
      return { corners: a && b && c && d ? [a, b, c, d] : null };
    }
    if (question.ask === 'card') return { box: proposeCard(raster, question.at) };
    const righted = putRight(raster, question);
    if (typeof righted === 'string') return { righted };
    const bitmap = await bitmapOf(righted.raster);
    return { righted: { bitmap, lit: righted.lit, notes: righted.notes } };
  },
  (given) => ('righted' in given && typeof given.righted !== 'string' ? [given.righted.bitmap] : []),
);
