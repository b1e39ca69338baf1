/**
 * Figures with their doubt: how many digits they deserve, and their interval in words.
 *
 * In the flow: measures with 90 % intervals -> [doubted] -> ladder's feet, table, air view. A figure is rounded where
 * its doubt has its first significant digit, which is within what JCGM 100:2008, 7.2.6 allows. Pure.
 */

import { figure, NO_FIGURE, signedFigure } from '#app/_words/figures.ts';
import { ladderWords } from '#words/ladder.ts';

export type Interval = readonly [number, number];

/** Half of an interval; null where there is none. */
export function halfOf(interval: Interval | undefined | null): number | null {
  return interval ? (interval[1] - interval[0]) / 2 : null;
}

/**
 * Digits after the point that a figure deserves.
 * @param half Half its 90 % interval, ≥ 0; null = not known. @param most Digits that it never goes beyond.
 */
export function digitsFor(half: number | null, most: number): number {
  if (half === null || !(half > 0)) return most;
  // 0.96 is 1 when only one digit is kept, so the rounding comes before the logarithm.
  const place = -Math.floor(Math.log10(Number(half.toPrecision(1))));
  return Math.min(most, Math.max(0, place));
}

export interface Written {
  /** Digits at most, and what the stored figure is multiplied by before it is shown. */
  digits: number;
  times: number;
  /** A plus is written. */
  signed: boolean;
  /** Between which the figure must lie, before `times`; left out = anywhere. */
  ends?: Interval | undefined;
  /** An angle: what lies beyond 360 begins anew at 0. */
  angle?: boolean;
}

/** The same angle in 0 up to 360. */
function turned(degrees: number): number {
  return ((degrees % 360) + 360) % 360;
}

export interface DoubtedText {
  text: string;
  /** "4.3 to 4.9"; null where doubt is not known or too small to show at these digits. */
  range: string | null;
}

/** "4.6" and "4.3 to 4.9"; a dash where it could not be taken. */
export function doubted(
  amount: number | null,
  interval: Interval | undefined | null,
  { digits, times, signed, ends, angle = false }: Written,
): DoubtedText {
  if (amount === null) return { text: NO_FIGURE, range: null };
  const half = halfOf(interval);
  const kept = digitsFor(half === null ? null : half * times, digits);
  const write = (value: number) => (signed ? signedFigure : figure)(value * times, kept);
  if (!interval) return { text: write(amount), range: null };
  const [least, most] = ends ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const shown = angle ? interval.map(turned) : [Math.max(least, interval[0]), Math.min(most, interval[1])];
  const [low = '', high = ''] = shown.map(write);
  return { text: write(amount), range: low === high ? null : ladderWords.between(low, high) };
}
