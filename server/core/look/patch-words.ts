/**
 * Patches in painters' words: one by itself, and two against each other.
 *
 * In the flow: patches + how far their photos can be trusted -> [patch-words] -> patch tool. Words say no more than
 * the photo can tell: at grade C the order of value alone. Pure. The bounds of the words are common practice, no source;
 * the deviations are those of `readings/noise.ts`.
 */

import { difference2000 } from '../colour/difference.ts';
import { Noise } from '../readings/noise.ts';
import { say } from '../say/say.ts';
import { stepsInWords } from './nine-steps.ts';
import type { Patch } from './patch.ts';
import { jointTrust, type Trust } from './trust.ts';

export interface PatchSource {
  readonly patch: Patch;
  readonly pictureId: string;
  readonly trust: Trust;
}

/** Smallest differences that are named at all: L*, and units of C*ab and of warm-cool. */
const SAME_L = 2;
const SAME_AB = 3;
/** Deviations that a difference must exceed. */
const SURE = 2;
/** Half a 90 % interval of a normal distribution, in standard deviations. */
const HALF_90 = 1.645;
/** C*ab below which a colour is neutral, greyed, of middling strength; above, strong. */
const NEUTRAL = 4;
const GREYED = 16;
const MIDDLING = 36;

/** `neutral`, `greyed`, `of middling strength`, `strong`. */
export function strengthWords(chroma: number): string {
  if (chroma < NEUTRAL) return say`neutral`;
  if (chroma < GREYED) return say`greyed`;
  return chroma < MIDDLING ? say`of middling strength` : say`strong`;
}

/** `warm`, `cool`, or `neither warm nor cool`. @param warmCool units near C*ab. */
export function temperatureWords(warmCool: number): string {
  if (Math.abs(warmCool) < NEUTRAL) return say`neither warm nor cool`;
  return warmCool > 0 ? say`warm` : say`cool`;
}

/** Half a 90 % interval of the L* of one patch by itself; 0 for a reference. */
export function patchDoubt(trust: Trust): number {
  return trust === 'exact' ? 0 : HALF_90 * new Noise(trust).absoluteL;
}

/** Deviations of a difference, L* and ab: what one photo's light shares falls out within one picture. */
function deviations(from: PatchSource, to: PatchSource): { L: number; ab: number } {
  const noise = ({ trust }: PatchSource) => (trust === 'exact' ? null : new Noise(trust));
  const [one, other] = [noise(from), noise(to)];
  if (from.pictureId === to.pictureId) return { L: other?.relationL ?? 0, ab: other?.relationAb ?? 0 };
  return {
    L: Math.hypot(one?.absoluteL ?? 0, other?.absoluteL ?? 0),
    ab: Math.hypot(one?.absoluteAb ?? 0, other?.absoluteAb ?? 0),
  };
}

/** Said of the value of two patches that cannot be told apart, and of two that are about alike: a sentence goes on differently. */
export const TOO_NEAR = say`too near in value for this photo to tell`;
export const SAME_VALUE = say`about the same value`;

export interface PatchDifference {
  /** For example `a step darker`, `cooler`, `about as strong`: how the second stands to the first. */
  readonly words: readonly string[];
  /** Second − first; null where the photos allow no figure. */
  readonly figures: {
    readonly lightness: number;
    readonly chroma: number;
    readonly warmCool: number;
    /** CIEDE2000. */
    readonly dE00: number;
    /** Half a 90 % interval of the lightness, and of chroma and warm-cool; 0 between references. */
    readonly doubt: { readonly lightness: number; readonly ab: number };
  } | null;
  readonly trust: Trust;
}

/** A direction in a word; the word for `same` inside its noise. */
function direction(amount: number, least: number, [more, less, same]: readonly string[]): string {
  if (Math.abs(amount) < least) return same ?? '';
  return (amount > 0 ? more : less) ?? '';
}

/** How `to` stands to `from`, in words first. */
export function patchDifference(from: PatchSource, to: PatchSource): PatchDifference {
  const trust = jointTrust(from.trust, to.trust);
  const sigma = deviations(from, to);
  const leastL = Math.max(SAME_L, SURE * sigma.L);
  const leastAb = Math.max(SAME_AB, SURE * sigma.ab);
  const [one, other] = [from.patch, to.patch];
  const lightness = other.lab.L - one.lab.L;
  if (trust === 'C') {
    const words = [direction(lightness, leastL, [say`lighter`, say`darker`, TOO_NEAR])];
    return { words, figures: null, trust };
  }
  const chroma = other.chroma - one.chroma;
  const warmCool = other.warmCool - one.warmCool;
  const amount = stepsInWords(lightness, trust === 'B' ? 0.5 : 0.25);
  const words = [
    direction(lightness, leastL, [say`${amount} lighter`, say`${amount} darker`, SAME_VALUE]),
    direction(warmCool, leastAb, [say`warmer`, say`cooler`, say`about as warm or cool`]),
    direction(chroma, leastAb, [say`stronger`, say`greyer`, say`about as strong`]),
  ];
  return {
    words,
    figures: {
      ...{ lightness, chroma, warmCool, dE00: difference2000(one.lab, other.lab) },
      doubt: { lightness: HALF_90 * sigma.L, ab: HALF_90 * sigma.ab },
    },
    trust,
  };
}
