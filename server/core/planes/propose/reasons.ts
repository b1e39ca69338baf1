/**
 * Why so many planes and no more, in one sentence.
 *
 * In the flow: tier tree -> [reasons] -> proposals. Pure.
 */
import type { WorkingCopy } from './working-copy.ts';

/** Deviation of L* under which a picture is one even tone. */
const EVEN_TONE = 1.5;

const NUMBER_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven'] as const;

function planesInWords(count: number): string {
  return `${NUMBER_WORDS[count] ?? count} ${count === 1 ? 'plane' : 'planes'}`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Standard deviation of L* over the picture. */
export function toneDeviation({ lab: { lightness } }: WorkingCopy): number {
  let [sum, squares] = [0, 0];
  for (let at = 0; at < lightness.length; at++) {
    const value = lightness[at] as number;
    sum += value;
    squares += value * value;
  }
  return Math.sqrt(Math.max(0, squares / lightness.length - (sum / lightness.length) ** 2));
}

/** What is known about a picture that explains a shortfall. */
export interface Grounds {
  readonly toneDeviation: number;
  /** Whether all that was found is sky. */
  readonly onlySky: boolean;
}

/** Why fewer planes than asked were found. @param found at least 1, less than `asked`. */
export function shortfall(asked: number, found: number, { toneDeviation, onlySky }: Grounds): string {
  const start = `${capitalised(planesInWords(asked))} were asked for and ${NUMBER_WORDS[found]} found: `;
  if (toneDeviation < EVEN_TONE) {
    return `${start}the picture is one even tone, its lightness varies by ${toneDeviation.toFixed(1)} L* only.`;
  }
  if (onlySky) return `${start}the picture seems to show nothing but sky.`;
  if (found === 1) return `${start}no contour runs through the picture that parts one tone from another.`;
  return `${start}a further contour would part what looks the same on both sides.`;
}

/** Why the program chose this number. @param more how many the next finer grouping would have, or null. */
export function reasonFor(chosen: number, divides: boolean): string {
  const planes = capitalised(planesInWords(chosen));
  if (chosen === 1)
    return 'One plane, since no contour runs through the picture that parts one tone from another.';
  return divides
    ? `${planes}: each differs clearly from the next along its contour, and a further one would divide what looks much the same.`
    : `${planes}: each differs clearly from the next along its contour, and more than seven are never proposed.`;
}
