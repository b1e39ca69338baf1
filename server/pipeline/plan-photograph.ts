/**
 * The plan of one photograph from stored files: plate -> planes -> frames, balance, shapes, ladder.
 *
 * In the flow: worker -> [plan-photograph] -> planner. IO: reads the stored files.
 */
import { readFile } from 'node:fs/promises';
import { type PicturePlan, planPicture } from '../core/plan/plan-picture.ts';
import { readPlateFiles } from '../imaging/plate.ts';
import type { PlanJob } from './jobs.ts';
import { soundPlanes } from './sound-planes.ts';

/** A plane whose outline crosses itself or encloses nothing is left out, and said so; without any they are proposed. */
export async function planPhotograph({ photograph, setup }: PlanJob): Promise<PicturePlan> {
  const [colours, clipMap] = await Promise.all([
    readFile(photograph.platePath),
    readFile(photograph.clipMapPath),
  ]);
  const { planes, leftOut } = soundPlanes(setup?.planes ?? []);
  const plan = planPicture(
    await readPlateFiles(colours, clipMap),
    setup && planes.length > 0 ? { ...setup, planes } : null,
    photograph.longSidePx,
  );
  return { ...plan, notes: [...leftOut, ...plan.notes] };
}
