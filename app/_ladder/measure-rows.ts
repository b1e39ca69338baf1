/**
 * Which rows the ladder's table has and how each figure is written.
 *
 * In the flow: measures -> [rows] -> table. Digits follow the tolerances the measures are tested with. Pure.
 */

import { ladderWords } from '#app/_words/en-ladder.ts';
import { figure, NO_FIGURE, signedFigure } from '#app/_words/figures.ts';
import { GAP_KEYS, type GapKey, type HueFamily, type PlaneMeasures } from '#server/core/contract/measures.ts';

/** Digits after the point, and what the stored figure is multiplied by before it is shown. */
const WRITTEN: Record<GapKey, { digits: number; times: number }> = {
  share: { digits: 1, times: 100 },
  dark: { digits: 1, times: 1 },
  mid: { digits: 1, times: 1 },
  light: { digits: 1, times: 1 },
  spread: { digits: 1, times: 1 },
  munsellValue: { digits: 1, times: 1 },
  chroma: { digits: 1, times: 1 },
  strong: { digits: 1, times: 1 },
  hue: { digits: 0, times: 1 },
  a: { digits: 1, times: 1 },
  b: { digits: 1, times: 1 },
  warmCool: { digits: 1, times: 1 },
  detail: { digits: 3, times: 1 },
  edge: { digits: 1, times: 1 },
  airDistance: { digits: 1, times: 1 },
  airShare: { digits: 0, times: 100 },
};

/** In the order of the table: value, colour, then detail and air. */
export const MEASURE_ORDER: readonly GapKey[] = GAP_KEYS;

/** Measures that have a sign of their own, so that a plus is written. */
const SIGNED: ReadonlySet<GapKey> = new Set(['a', 'b', 'warmCool']);

export function measureText(key: GapKey, amount: number | null): string {
  const { digits, times } = WRITTEN[key];
  const shown = amount === null ? null : amount * times;
  return SIGNED.has(key) ? signedFigure(shown, digits) : figure(shown, digits);
}

export function gapText(key: GapKey, amount: number | null): string {
  const { digits, times } = WRITTEN[key];
  return signedFigure(amount === null ? null : amount * times, digits);
}

/** "orange 62, green 20": shares of at least 1 %, largest first; a dash when not taken or nothing is coloured. */
export function huesText(shares: PlaneMeasures['hueShares']): string {
  if (!shares) return NO_FIGURE;
  const families = Object.entries(shares) as [HueFamily, number][]; // Object.entries widens the keys.
  const shown = families.filter(([, share]) => share >= 0.01).sort((one, two) => two[1] - one[1]);
  return (
    shown.map(([family, share]) => `${ladderWords.hueFamily[family]} ${figure(share * 100, 0)}`).join(', ') ||
    NO_FIGURE
  );
}
