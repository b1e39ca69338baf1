/**
 * Gap of one plane and step gaps between neighbours. Pure.
 *
 * gap = painting − target; step = near − far in one picture; hue differences wrap to ±180°.
 */
import { hueDifferenceDeg } from '../colour/difference.ts';
import { GAP_KEYS, type PlaneGap, STEP_KEYS, type StepFigures } from '../contract/measures.ts';
import type { Figures } from './target.ts';

/** Difference of two figures; null when either is. */
function minus(to: number | null, from: number | null): number | null {
  return to === null || from === null ? null : to - from;
}

/** painting − target for every figure that both have. */
export function gapOf(painting: Figures, target: Figures): PlaneGap {
  const gap = { ...painting };
  for (const key of GAP_KEYS) gap[key] = minus(painting[key], target[key]);
  gap.hue = painting.hue === null || target.hue === null ? null : hueDifferenceDeg(painting.hue, target.hue);
  return gap;
}

function eachStepKey(of: (key: (typeof STEP_KEYS)[number]) => number | null): StepFigures {
  return Object.fromEntries(STEP_KEYS.map((key) => [key, of(key)])) as StepFigures; // every key is there
}

/** near − far of two planes of one picture. */
export function stepOf(far: Figures, near: Figures): StepFigures {
  return eachStepKey((key) => minus(near[key], far[key]));
}

/** Painting's step − target's step. */
export function stepGapOf(painting: StepFigures, target: StepFigures): StepFigures {
  return eachStepKey((key) => minus(painting[key], target[key]));
}
