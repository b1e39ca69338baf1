/**
 * Why a condition of the scene mutes a reading, in words for the painter.
 *
 * In the flow: rules name these reasons; `mute` applies them. Pure. Sources: Leonardo, Treatise (Rigaud 1802, ch.
 * 287) and Notebooks (Richter 1883); Goethe 1810; Poore 1903; Ruskin 1843, 1853; Harrison 1909; Lynch & Mazuk
 * 2005; the rest is common practice.
 */
import type { Condition } from '../contract/setup.ts';
import { say } from '../say/say.ts';

export const CONDITION_REASONS: Record<Condition, string> = {
  snow: say`Snow is lighter than the air, so with distance its lights darken and warm.`,
  'against-light': say`Against the light near planes turn to silhouettes, and the distance can be lighter and warmer.`,
  'low-sun': say`With a low sun the air itself is warm, so the distance warms instead of cooling.`,
  fog: say`In fog the air is grey or white, and range, edges and colour are short.`,
  'valley-mist': say`Mist lying low hides the bases and leaves the summits dark and clear.`,
  'cloud-shadow': say`A foreground in cloud shadow is darker and cooler than the middle by design.`,
  'sun-spot': say`A spot of sun makes its plane the lightest and most coloured.`,
  'clear-air': say`In very clear air little changes for many miles.`,
  smoke: say`Smoke and dust are brown or blue by what stands behind them.`,
  shallow: say`The scene is shallow: there is too little air between its planes to show.`,
  night: say`At night two or three values carry everything, and detail is gone.`,
};

/** The reasons of some conditions, for a rule's `mutedBy`. */
export function because(...conditions: Condition[]): Partial<Record<Condition, string>> {
  return Object.fromEntries(conditions.map((condition) => [condition, CONDITION_REASONS[condition]]));
}

/** Conditions that take away what depth through air would do. */
export const NO_AIR: Condition[] = ['shallow', 'clear-air'];
