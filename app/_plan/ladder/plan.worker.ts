/**
 * Plans the ladder, and tells weight and shapes, beside the page, so that a hand on a handle never waits for them.
 *
 * In the flow: plan-line -> [plan worker] -> use-planned, use-weight. What does not depend on the wishes is worked out
 * once. IO: messages; HTTP, for the lossless small copy.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import type { FractionPoint, LabColour } from '#server/core/contract/setup.ts';
import { patchAt } from '#server/core/look/patch.ts';
import type { PictureToPlan } from '#server/core/plan/ladder/picture-to-plan.ts';
import { type PlanGround, type PlanWish, planGround } from '#server/core/plan/ladder/plan-ground.ts';
import { isProblem } from '#server/core/problem.ts';
import { type LookedAt, lookAt, type ToLookAt } from '../weight/look-at.ts';
import { type PlannedView, plannedView } from './planned-view.ts';

/** `address` of the copy, whole. */
export type PlanQuestion =
  | { ask: 'ladder'; address: string; ground: PlanGround; wish: PlanWish }
  | ({ ask: 'weight'; address: string } & ToLookAt)
  | { ask: 'colour'; address: string; point: FractionPoint };

/** `sentence` where the outlines or the wishes cannot be planned by; `colour` null outside the picture. */
export type PlanAnswer =
  | { planned: PlannedView }
  | { looked: LookedAt }
  | { colour: LabColour | null }
  | { sentence: string };

/** The last picture that was made ready, and what it was made from. */
let ready: { key: string; picture: PictureToPlan } | null = null;

async function groundOf(address: string, ground: PlanGround): Promise<PictureToPlan> {
  const key = JSON.stringify([address, ground]);
  if (ready?.key === key) return ready.picture;
  const picture = planGround(await copyAt(address), ground);
  ready = { key, picture };
  return picture;
}

answerQuestions(async (question: PlanQuestion): Promise<PlanAnswer> => {
  try {
    if (question.ask === 'colour') {
      return { colour: patchAt(await copyAt(question.address), question.point)?.lab ?? null };
    }
    if (question.ask === 'weight') {
      const { address, ask: _, ...toLookAt } = question;
      return { looked: lookAt(toLookAt.rearranged ?? (await copyAt(address)), toLookAt) };
    }
    return { planned: plannedView(await groundOf(question.address, question.ground), question.wish) };
  } catch (thrown) {
    if (isProblem(thrown)) return { sentence: thrown.message };
    throw thrown;
  }
});
