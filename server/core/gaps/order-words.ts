/**
 * Two neighbouring planes that have changed places in lightness, in a sentence. Pure.
 *
 * Said only where the painting's own step is larger than its doubt: relations survive a wrong exposure, but not every
 * one. In the flow: step + its doubt -> [order-words] -> ladder, headless table.
 */

import type { MeasureDocument, Step } from '../contract/measures.ts';
import { say } from '../say/say.ts';
import { SAME_LIGHTNESS } from './gap-words.ts';

/** 1 when near lies above far, −1 when below, 0 when they cannot be told apart. @param half of the 90 % interval, L*. */
function orderOf(step: number | null, half: number): number {
  if (step === null || Math.abs(step) < Math.max(SAME_LIGHTNESS, half)) return 0;
  return Math.sign(step);
}

/**
 * Says when two neighbours have changed places in lightness; null when their order holds or can't be told.
 * The target's step is the painting's step minus its gap.
 */
export function swappedWords(step: Step, target: MeasureDocument['target'] = 'reference'): string | null {
  const { painting, gap } = step;
  if (painting.mid === null || !gap || gap.mid === null) return null;
  const [low, high] = step.doubt?.painting.mid ?? [0, 0];
  const here = orderOf(painting.mid, (high - low) / 2);
  if (here === 0 || orderOf(painting.mid - gap.mid, 0) !== -here) return null;
  const [lighter, darker] = here > 0 ? [step.far, step.near] : [step.near, step.far];
  return target === 'plan'
    ? say`In the plan the ${lighter} is lighter than the ${darker}; here it is the other way round.`
    : say`In the reference the ${lighter} is lighter than the ${darker}; here it is the other way round.`;
}
