/**
 * The gap in words of order only: lighter or darker, warmer or cooler, stronger or greyer, never how much.
 *
 * Used while no capture grade exists: a photograph of unknown light can say which way, not how far. Pure.
 * Dead zones are about the smallest difference a painter mixes on purpose (common practice, no source).
 */
import type { MeasureDocument, PlaneGap, Step } from '../contract/measures.ts';

/** L* below which lightness holds. */
const SAME_LIGHTNESS = 2;
/** C*ab, and units of warmCool, below which colour holds. */
const SAME_COLOUR = 3;

type Target = MeasureDocument['target'];
const THAN: Record<Target, string> = {
  reference: 'than in the reference',
  plan: 'than planned',
  none: '',
};

/** Word of a difference, or null inside its dead zone. */
function wordOf(difference: number | null, same: number, more: string, less: string): string | null {
  if (difference === null || Math.abs(difference) < same) return null;
  return difference > 0 ? more : less;
}

/**
 * How one plane of the painting stands to its target, for example `['lighter than in the reference', 'cooler']`.
 *
 * The first phrase names the target, the others lean on it. `['holds']` where nothing differs by a touch;
 * empty where nothing could be compared.
 */
export function orderWords(gap: PlaneGap, target: Target = 'reference'): string[] {
  if (gap.mid === null && gap.warmCool === null && gap.chroma === null) return [];
  const words = [
    wordOf(gap.mid, SAME_LIGHTNESS, 'lighter', 'darker'),
    wordOf(gap.warmCool, SAME_COLOUR, 'warmer', 'cooler'),
    wordOf(gap.chroma, SAME_COLOUR, 'stronger in colour', 'greyer'),
  ].filter((word) => word !== null);
  const [first, ...others] = words;
  return first === undefined ? ['holds'] : [`${first} ${THAN[target]}`.trim(), ...others];
}

/** 1 when near lies above far, −1 when below, 0 inside the dead zone. */
function orderOf(step: number | null): number {
  if (step === null || Math.abs(step) < SAME_LIGHTNESS) return 0;
  return Math.sign(step);
}

/**
 * Says when two neighbours have changed places in lightness; null when their order holds or can't be told.
 * The target's step is the painting's step minus its gap.
 */
export function swappedWords(step: Step, target: Target = 'reference'): string | null {
  const { painting, gap } = step;
  if (painting.mid === null || !gap || gap.mid === null) return null;
  const here = orderOf(painting.mid);
  if (here === 0 || orderOf(painting.mid - gap.mid) !== -here) return null;
  const [lighter, darker] = here > 0 ? [step.far, step.near] : [step.near, step.far];
  const place = target === 'plan' ? 'In the plan' : 'In the reference';
  return `${place} the ${lighter} is lighter than the ${darker}; here it is the other way round.`;
}
