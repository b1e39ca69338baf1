/**
 * Plans of photographs, worked out when they are asked for and kept by everything that went into them.
 *
 * In the flow: services -> [planner] -> worker -> store. A thread of its own, so that no ladder waits for a plan. Main
 * process only. IO: the database, a worker thread.
 */
import type { Pending } from '../core/contract/responses.ts';
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import { isProblem, type Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { PLAN_SECONDS } from '../imaging/limits.ts';
import { findPlan, savePlan } from '../store/measures.ts';
import type { OneWorker } from './one-worker.ts';
import { type PlanInputs, readPlanInputs } from './plan-inputs.ts';
import { FORMULA_VERSION } from './version.ts';

export interface Planner {
  /**
   * The plan for the inputs as they are now, or what is being done about it.
   *
   * @throws Problem of `readPlanInputs`, and of inputs that cannot be planned from until they change.
   */
  planOf(boardId: string, pictureId: string): Promise<PicturePlan | Pending>;
}

/** Tried again at `againAt`, by `performance.now()`; or never, for what stays as it is. */
type Refused = { readonly hash: string } & (
  | { readonly sentence: string; readonly againAt: number }
  | { readonly problem: Problem }
);

/** A machine that was busy may not be so in a minute. */
const AGAIN_MS = 60_000;
const TOO_SLOW = say`Planning from this photograph took longer than ${PLAN_SECONDS} seconds, so it was stopped. It is tried again in a minute.`;
const FAILED = say`Planning from this photograph broke off through a fault of the server, which is written down in its log. It is tried again in a minute.`;
const UNDER_WAY = say`Looking for frames, weight and planes in the photograph.`;

/** @param onError Where a bug met in the background is written down. */
export function createPlanner(
  worker: OneWorker,
  onError?: (thrown: unknown, boardId: string, pictureId: string) => void,
): Planner {
  /** Hashes being worked out. */
  const running = new Set<string>();
  /** Why the newest inputs of a picture could not be planned. */
  const refused = new Map<string, Refused>();

  async function workOut(boardId: string, pictureId: string, { hash, job }: PlanInputs): Promise<void> {
    try {
      const plan = await worker.run(job, PLAN_SECONDS);
      await savePlan(pictureId, hash, FORMULA_VERSION, plan);
      refused.delete(pictureId);
    } catch (thrown) {
      if (!isProblem(thrown)) {
        onError?.(thrown, boardId, pictureId);
        // Every page that waits asks again within seconds: without a pause the same fault would be met without end.
        refused.set(pictureId, { hash, sentence: FAILED, againAt: performance.now() + AGAIN_MS });
      } else if (thrown.code === 'picture-too-slow') {
        refused.set(pictureId, { hash, sentence: TOO_SLOW, againAt: performance.now() + AGAIN_MS });
      } else if (thrown.code !== 'stopping') {
        refused.set(pictureId, { hash, problem: thrown });
      }
    } finally {
      running.delete(hash);
    }
  }

  return {
    async planOf(boardId, pictureId) {
      const inputs = await readPlanInputs(boardId, pictureId);
      const found = await findPlan(pictureId, inputs.hash);
      if (found) return found;
      const known = refused.get(pictureId);
      if (known?.hash === inputs.hash) {
        if ('problem' in known) throw known.problem;
        if (performance.now() < known.againAt) return { pending: known.sentence };
      }
      if (!running.has(inputs.hash)) {
        running.add(inputs.hash);
        void workOut(boardId, pictureId, inputs);
      }
      return { pending: UNDER_WAY };
    },
  };
}
