/**
 * What a planned ladder wants of each plane's light.
 *
 * In the flow: picture-to-plan + planned ladder -> [wanted-lights] -> preview-ground. Pure.
 */
import type { PlaneMeasures } from '../../contract/measures.ts';
import type { PictureToPlan } from '../ladder/picture-to-plan.ts';
import type { LadderPlan } from '../ladder/plan-ladder.ts';
import { FITTED, type LightFigures } from './light-figures.ts';
import type { WantedLight } from './preview-ground.ts';

/** Null where one was not measured. */
function figuresOf(measures: PlaneMeasures): LightFigures | null {
  const figures = {} as Record<(typeof FITTED)[number], number>;
  for (const key of FITTED) {
    const figure = measures[key];
    if (figure === null) return null;
    figures[key] = figure;
  }
  return figures;
}

/**
 * By place of the plane; null for planes that the plan leaves out.
 * @param unchanged true where the preview is made of the same picture, at whatever size, that the plan was made from.
 */
export function wantedLights(
  { planes }: PictureToPlan,
  { ladder, changes }: LadderPlan,
  unchanged: boolean,
): (WantedLight | null)[] {
  let at = 0;
  return planes.map(({ measures }): WantedLight | null => {
    if (measures.mid === null) return null;
    const [rung, change] = [ladder[at], changes[at]];
    at++;
    if (!rung) return null;
    return { rung, before: unchanged ? figuresOf(measures) : null, change: change ?? null };
  });
}
