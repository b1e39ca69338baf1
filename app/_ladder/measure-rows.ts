/**
 * Which rows the ladder's table has and how each figure is written.
 *
 * In the flow: measures -> [rows] -> table. At most as many digits as the
 * tolerances the measures are tested with, and no more than their doubt allows. Pure.
 */

import { figure, NO_FIGURE } from '#app/_words/figures.ts';
import { GAP_KEYS, type GapKey, type HueFamily, type PlaneMeasures } from '#server/core/contract/measures.ts';
import { ladderWords } from '#words/ladder.ts';
import { type DoubtedText, doubted, type Interval, type Written } from './doubted.ts';

/** Digits after the point, and what the stored figure is multiplied by before it is shown. */
const WRITTEN: Record<GapKey, Omit<Written, 'signed'>> = {
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

/** Beyond these a figure cannot lie, however wide its doubt; of the gaps only that of hue has such ends. */
const ENDS: Partial<Record<GapKey, Interval>> = {
  share: [0, 1],
  dark: [0, 100],
  mid: [0, 100],
  light: [0, 100],
  spread: [0, 100],
  munsellValue: [0, 10],
  chroma: [0, Number.POSITIVE_INFINITY],
  strong: [0, Number.POSITIVE_INFINITY],
  detail: [0, Number.POSITIVE_INFINITY],
  edge: [0, Number.POSITIVE_INFINITY],
  airDistance: [0, Number.POSITIVE_INFINITY],
  airShare: [0, 1],
};

/** In the order of the table: value, colour, then detail and air. */
export const MEASURE_ORDER: readonly GapKey[] = GAP_KEYS;

/** Measures that have a sign of their own, so that a plus is written. */
const SIGNED: ReadonlySet<GapKey> = new Set(['a', 'b', 'warmCool']);

/** A figure of one plane with its interval. */
export function measureText(key: GapKey, amount: number | null, interval?: Interval): DoubtedText {
  const written = { ...WRITTEN[key], signed: SIGNED.has(key), ends: ENDS[key], angle: key === 'hue' };
  return doubted(amount, interval, written);
}

/** A difference from the target with its interval. */
export function gapText(key: GapKey, amount: number | null, interval?: Interval): DoubtedText {
  const ends: Interval | undefined = key === 'hue' ? [-180, 180] : undefined;
  return doubted(amount, interval, { ...WRITTEN[key], signed: true, ends });
}

/** A step between neighbours with its interval, in L*, C*ab or units of warm–cool. */
export function stepText(amount: number | null, interval?: Interval): DoubtedText {
  return doubted(amount, interval, { digits: 1, times: 1, signed: true });
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
