/**
 * Why so many planes and no more, in one sentence.
 *
 * In the flow: tier tree -> [reasons] -> proposals. Pure.
 */
import { say } from '../../say/say.ts';
import { type Ridge, SMALLEST_SHARE } from './tier-tree.ts';
import type { WorkingCopy } from './working-copy.ts';

/** Deviation of L* under which a picture is one even tone. */
const EVEN_TONE = 1.5;
/** Change across a contour, dE, and share of the width along it, that a sentence calls little. */
const FAINT_STEP = 2;
const NARROW = 0.3;
const NO_CONTOUR_LEFT = say`no further contour runs through the picture (0 left); split a plane by hand where you see one.`;

const NUMBER_WORDS: Record<number, string> = {
  2: say`two`,
  3: say`three`,
  4: say`four`,
  5: say`five`,
  6: say`six`,
  7: say`seven`,
};

function inWords(count: number): string {
  return NUMBER_WORDS[count] ?? String(count);
}

/** How a sentence begins. @param count at least 2. */
function severalPlanes(count: number): string {
  return capitalised(say`${inWords(count)} planes`);
}

/** In percent, its sign left out. */
function percent(share: number): string {
  return (100 * share).toFixed(1);
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
  /** The weakest ridge of one plane more; null where there is none at all. */
  readonly next: Ridge | null;
}

/** What is wrong with the next contour, and what to do. */
function faultOf({ weight, step, width, share }: Ridge): string {
  if (share < SMALLEST_SHARE) {
    return say`a further plane would cover ${percent(share)} % of the picture, too little to measure; draw it by hand if it matters.`;
  }
  if (step < FAINT_STEP) {
    return say`a further contour would part colours only ${step.toFixed(1)} dE apart; split a plane by hand where you see more.`;
  }
  if (width < NARROW) {
    return say`a further contour would run along only ${percent(width)} % of the picture's width; split a plane by hand where you see it.`;
  }
  return say`what lies on both sides of a further contour looks much the same (its strength is ${weight.toFixed(2)}); split a plane by hand where you see one.`;
}

/** Why fewer planes than asked were found. @param found at least 1, less than `asked`. */
export function shortfall(asked: number, found: number, grounds: Grounds): string {
  const [planes, why] = [severalPlanes(asked), shortfallGround(found, grounds)];
  return found === 1
    ? say`${planes} were asked for and one found: ${why}`
    : say`${planes} were asked for and ${inWords(found)} found: ${why}`;
}

function shortfallGround(found: number, { toneDeviation, onlySky, next }: Grounds): string {
  if (toneDeviation < EVEN_TONE) {
    return say`the picture is one even tone, its lightness varies by ${toneDeviation.toFixed(1)} L* only; choose one with more light and dark, or draw the planes by hand.`;
  }
  if (onlySky) {
    return say`the picture seems to show nothing but sky (100 % of it); draw a plane by hand if there is land in it.`;
  }
  if (found === 1) {
    return say`no contour runs through the picture with one tone above it and another below, though its lightness varies by ${toneDeviation.toFixed(1)} L*; draw the planes by hand.`;
  }
  return next === null ? NO_CONTOUR_LEFT : faultOf(next);
}

/** Why the program chose this number. @param more how many the next finer grouping would have, or null. */
export function reasonFor(chosen: number, divides: boolean): string {
  if (chosen === 1)
    return say`One plane, since no contour runs through the picture that parts one tone from another.`;
  const planes = severalPlanes(chosen);
  return divides
    ? say`${planes}: each differs clearly from the next along its contour, and a further one would divide what looks much the same.`
    : say`${planes}: each differs clearly from the next along its contour, and more than seven are never proposed.`;
}
