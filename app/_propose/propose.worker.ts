/**
 * Looks for planes in a picture beside the page, so that nothing on the screen waits for it.
 *
 * In the flow: proposal-line -> [propose worker] -> proposal-line. A painting whose corners are set is squared first,
 * and what is found is given back in 0..1 of its upright original. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import type { FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';
import { project } from '#server/core/geometry/homography.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import { proposePlanes } from '#server/core/planes/propose/propose.ts';
import { isProblem } from '#server/core/problem.ts';
import { applyCorrection, type CorrectionPlan, planCorrection } from '#server/core/rectify/correct-photo.ts';
import { EVEN_LIGHT } from '#server/core/rectify/light-field.ts';
import { type Groupings, groupingsOf } from './groupings.ts';

export interface ProposeQuestion {
  /** Of the copy, whole. */
  address: string;
  /** Corners and size of a painting, as far as they are set. */
  photo: Pick<PhotoCorrection, 'corners' | 'size'>;
  /** The copy is fetched by one question and looked at by the next, so that the page can say which it is. */
  ask: 'fetch' | 'propose';
}

/** Null once the copy is there. */
export type ProposeAnswer = Groupings | null;

/** How the painting is squared; null where there are no corners that anything can be squared by. */
function squaringOf(raster: EncodedRaster, photo: ProposeQuestion['photo']): CorrectionPlan | null {
  if (!photo.corners) return null;
  try {
    return { ...planCorrection(raster, photo), light: EVEN_LIGHT };
  } catch (thrown) {
    if (isProblem(thrown)) return null;
    throw thrown;
  }
}

answerQuestions(async ({ address, photo, ask }: ProposeQuestion): Promise<ProposeAnswer> => {
  const raster = await copyAt(address);
  if (ask === 'fetch') return null;
  const plan = squaringOf(raster, photo);
  if (!plan) return groupingsOf(proposePlanes(raster), (point) => point);
  const original = (point: FractionPoint): FractionPoint => {
    const [x, y] = project(plan.toPhoto, point);
    return [x, y];
  };
  return groupingsOf(proposePlanes(applyCorrection(raster, plan)), original);
});
