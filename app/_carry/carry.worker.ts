/**
 * Carries planes from one picture to another beside the page, so that the hand never waits for it.
 *
 * In the flow: carry-line -> [carry worker] -> carry-line. Both pictures are squared where their corners are set; what
 * comes back is in 0..1 of the squared painting. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import type { Outline } from '#server/core/contract/setup.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import { Carrying } from '#server/core/planes/carry/carry-planes.ts';
import type { Carried } from '#server/core/planes/carry/lay-planes.ts';
import type { Placement, PlaneMove } from '#server/core/planes/carry/placement.ts';
import { isProblem } from '#server/core/problem.ts';
import { applyCorrection, planCorrection } from '#server/core/rectify/correct-photo.ts';
import { fractionMapper } from '#server/core/rectify/fraction-mapper.ts';
import { EVEN_LIGHT } from '#server/core/rectify/light-field.ts';

export interface CarryPicture {
  /** Of the copy, whole. */
  address: string;
  /** Corners and size, as far as they are set. */
  photo: Pick<LivePhoto, 'corners' | 'size'>;
}

export interface CarryQuestion {
  from: CarryPicture;
  to: CarryPicture;
  /** Far to near; outlines in 0..1 of the upright picture that they come from. */
  planes: readonly { id: string; name: string; outline: Outline }[];
  /** Null = find it. */
  laid: { placement: Placement; moves: ReadonlyMap<string, PlaneMove> } | null;
  /** Whether ridges are drawn to the painting's own edges. */
  fit: boolean;
}

export interface CarryAnswer extends Carried {
  placement: Placement;
  moves: ReadonlyMap<string, PlaneMove>;
  /** Why the place could not be found, in a whole sentence, or null. */
  trouble: string | null;
}

/** The answer, or the sentence why there is none. */
export type CarryReply = CarryAnswer | string;

function squared(raster: EncodedRaster, photo: CarryPicture['photo']): EncodedRaster {
  if (!photo.corners) return raster;
  return applyCorrection(raster, { ...planCorrection(raster, photo), light: EVEN_LIGHT });
}

/** The last pair of pictures with its planes: the hand asks for the same again and again. */
let kept: { key: string; carrying: Carrying } | null = null;

async function carryingOf({ from, to, planes }: CarryQuestion): Promise<Carrying> {
  const key = JSON.stringify([from, to, planes]);
  if (kept?.key === key) return kept.carrying;
  const [first, painting] = await Promise.all([copyAt(from.address), copyAt(to.address)]);
  const { toSquared } = fractionMapper(from.photo);
  const carrying = new Carrying(
    squared(first, from.photo),
    squared(painting, to.photo),
    planes.map((plane) => ({ ...plane, outline: plane.outline.map(toSquared) })),
  );
  kept = { key, carrying };
  return carrying;
}

answerQuestions(async (question: CarryQuestion): Promise<CarryReply> => {
  try {
    const carrying = await carryingOf(question);
    const found = question.laid ? null : carrying.whole();
    const placement = found?.placement ?? question.laid?.placement;
    if (!placement) throw new Error('A place is given or found.');
    const moves = question.laid?.moves ?? (found?.trouble ? new Map() : carrying.moves(placement));
    const fits = question.fit && !found?.trouble;
    const carried = fits ? carrying.fitted(placement, moves) : carrying.laid(placement, moves);
    return { ...carried, placement, moves, trouble: found?.trouble ?? null };
  } catch (thrown) {
    if (isProblem(thrown)) return thrown.message;
    throw thrown;
  }
});
