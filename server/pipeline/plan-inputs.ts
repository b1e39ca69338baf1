/**
 * Everything the plan of one photograph depends on, read from the store: the picture and what is agreed about it.
 *
 * In the flow: store -> [plan-inputs] -> planner. Without an outlined plane the setup is null, and planes are proposed.
 * IO: the database.
 */
import type { Setup } from '../core/contract/setup.ts';
import { documentFrom } from '../core/live/document.ts';
import { setupFrom } from '../core/live/setup-from.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { findPicture } from '../store/pictures.ts';
import { asItStands, essence, pictureNotFound, readDocument, sourceOf } from './inputs.ts';
import { hashOfInputs } from './inputs-hash.ts';
import type { PlanJob } from './jobs.ts';
import { FORMULA_VERSION } from './version.ts';

export interface PlanInputs {
  /** Of everything the plan depends on, the formulas' version among it. */
  readonly hash: string;
  readonly job: PlanJob;
}

/** @throws Problem `picture-not-found`; `bad-request` when it is a painting. */
export async function readPlanInputs(boardId: string, pictureId: string): Promise<PlanInputs> {
  const picture = await findPicture(boardId, pictureId);
  if (!picture) throw pictureNotFound();
  if (picture.kind !== 'reference') {
    throw new Problem(
      'bad-request',
      say`This picture is a painting, and a plan is made from a photograph. Choose one of the references.`,
    );
  }
  const setup = await setupOf(boardId, pictureId);
  const parts = ['plan', FORMULA_VERSION, essence(picture), picture.widthPx, picture.heightPx, setup];
  return {
    hash: hashOfInputs(parts),
    job: { kind: 'plan', photograph: await sourceOf(picture), setup },
  };
}

/** Of a plan that was taken before, nothing goes into a new one. */
async function setupOf(boardId: string, pictureId: string): Promise<Setup | null> {
  const setup = await readDocument(boardId, 'setup');
  const painting = documentFrom(`painting/${pictureId}`, []);
  try {
    const agreed = setupFrom({ setup, painting, paintingId: pictureId, referenceId: pictureId });
    return { ...asItStands(agreed), plan: null };
  } catch (thrown) {
    if (isProblem(thrown) && thrown.code === 'planes-missing') return null;
    throw thrown;
  }
}
