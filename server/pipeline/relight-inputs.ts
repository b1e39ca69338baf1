/**
 * Everything that the planned picture of one photograph depends on, read from the store: the picture, its planes, the
 * steps of rearranging, the wishes of the plan.
 *
 * In the flow: store -> [relight-inputs] -> relighter. IO: the database.
 */
import type * as Y from 'yjs';
import { readOutlinesOf } from '../core/live/outlines.ts';
import { readCrop } from '../core/live/plan/crops.ts';
import { readRearranging } from '../core/live/plan/rearranging.ts';
import { readHandles, readWishes } from '../core/live/plan/wishes.ts';
import { readPlanes } from '../core/live/planes.ts';
import { readAir, readConditions } from '../core/live/scene.ts';
import { WHOLE } from '../core/plan/in-frame.ts';
import type { PlanGround, PlanWish } from '../core/plan/ladder/plan-ground.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { findPicture } from '../store/pictures.ts';
import { essence, pictureNotFound, readDocument, sourceOf } from './inputs.ts';
import { hashOfInputs } from './inputs-hash.ts';
import type { RelightJob } from './jobs.ts';
import { FORMULA_VERSION } from './version.ts';

export interface RelightInputs {
  /** Of everything the picture depends on, the formulas' version among it. */
  readonly hash: string;
  readonly job: RelightJob;
}

function groundOf(setup: Y.Doc, pictureId: string): PlanGround {
  const outlines = readOutlinesOf(setup, pictureId);
  const { cropId } = readWishes(setup);
  const frame = cropId === null ? null : readCrop(setup, cropId);
  return {
    planes: readPlanes(setup).flatMap(({ id, name, kind }) => {
      const outline = outlines.get(id);
      return outline ? [{ id, name, kind, outline }] : [];
    }),
    air: readAir(setup).get(pictureId) ?? null,
    box: frame?.pictureId === pictureId ? frame.box : WHOLE,
  };
}

function wishOf(setup: Y.Doc): PlanWish {
  const { count, air, strength } = readWishes(setup);
  return {
    ...{ count, air, strength },
    conditions: readConditions(setup),
    handles: Object.fromEntries(readHandles(setup)),
  };
}

/**
 * @param lit whether it is to be in the planned light, or rearranged alone.
 * @throws Problem `picture-not-found`; `bad-request` when it is a painting; `planes-missing` without planes to light.
 */
export async function readRelightInputs(
  boardId: string,
  pictureId: string,
  lit: boolean,
): Promise<RelightInputs> {
  const picture = await findPicture(boardId, pictureId);
  if (!picture) throw pictureNotFound();
  if (picture.kind !== 'reference') {
    throw new Problem(
      'bad-request',
      say`This picture is a painting, and a plan is made from a photograph. Choose one of the references.`,
    );
  }
  const setup = await readDocument(boardId, 'setup');
  const ground = groundOf(setup, pictureId);
  if (lit && ground.planes.length === 0) {
    throw new Problem(
      'planes-missing',
      say`No plane is outlined on this photograph, so there is no plan to see it in. Outline at least one, far to near.`,
    );
  }
  const asked = { ground, steps: readRearranging(setup, pictureId), wish: lit ? wishOf(setup) : null };
  const parts = ['relight', FORMULA_VERSION, essence(picture), asked];
  return {
    hash: hashOfInputs(parts),
    job: { kind: 'relight', photograph: await sourceOf(picture), ...asked },
  };
}
