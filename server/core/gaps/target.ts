/**
 * What a painting is compared with: the reference, the planned ladder, or nothing.
 *
 * In the flow: measures -> [target] -> gap, steps, fit, recession. Pure.
 */
import { luminanceFromLightness } from '../colour/lab.ts';
import { munsellFromLuminancePercent } from '../colour/munsell-value.ts';
import { GAP_KEYS, type GapKey, type PlaneMeasures } from '../contract/measures.ts';
import type { PlannedPlane } from '../contract/setup.ts';

/** The figures of one plane that can be compared. */
export type Figures = Record<GapKey, number | null>;

const NO_FIGURES: Figures = Object.fromEntries(GAP_KEYS.map((key) => [key, null])) as Figures; // every key is there

/** The comparable figures of a measured plane. */
export function figuresOf(measures: PlaneMeasures): Figures {
  const figures = { ...NO_FIGURES };
  for (const key of GAP_KEYS) figures[key] = measures[key];
  return figures;
}

/** The figures that a planned plane carries; the rest is null. */
export function figuresOfPlan(planned: PlannedPlane): Figures {
  const { dark, mid, light, chroma, strong, warmCool, airDistance } = planned;
  return {
    ...NO_FIGURES,
    dark,
    mid,
    light,
    spread: light - dark,
    munsellValue: munsellFromLuminancePercent(luminanceFromLightness(mid) * 100),
    chroma,
    strong,
    warmCool,
    airDistance,
  };
}
