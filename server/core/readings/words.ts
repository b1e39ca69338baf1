/**
 * The painter's words: short names for planes, amounts in steps, spots of colour, places.
 *
 * In the flow: rules and cards take their words here. One step is 10 L*; amounts are never finer than the
 * capture grade allows (quarter steps at A, half steps at B, none at C). Pure.
 */
import { LANGUAGE } from '../say/language.ts';
import { say } from '../say/say.ts';
import type { Grade } from './noise.ts';

/** L* in one painter's step. */
export const STEP_L = 10;
/** Longest part of a plane's name that goes into a sentence, in words. */
const NAME_WORDS = 3;
const NAME_CHARACTERS = 40;
/** No card asks for more than this at once. */
const MOST_STEPS = 3;

/** In English a sentence puts its own article before a name; in other languages names stand in quotes, as they are. */
const ARTICLE = LANGUAGE === 'en' ? /^(?:the|a|an)$/i : null;

/** A plane's name as it stands in a sentence: without its article, three words at most. */
export function shortName(name: string, index: number): string {
  const words = name.trim().split(/\s+/).filter(Boolean);
  if (words.length > 1 && ARTICLE?.test(words[0] ?? '')) words.shift();
  if (words.length === 0) return say`plane ${index + 1}`;
  const kept = words.slice(0, NAME_WORDS).join(' ');
  const cut = kept.length > NAME_CHARACTERS ? kept.slice(0, NAME_CHARACTERS).trimEnd() : kept;
  return cut === words.join(' ') ? cut : `${cut}…`;
}

const WHOLE = [say`one step`, say`two steps`, say`three steps`];
const PARTS: Record<string, string> = {
  '0.25': say`a quarter step`,
  '0.5': say`half a step`,
  '0.75': say`three quarters of a step`,
};

/** @param steps a multiple of a quarter, above 0, three at most. */
function stepsInWords(steps: number): string {
  const whole = WHOLE[Math.floor(steps) - 1];
  const part = steps % 1;
  if (whole === undefined) return PARTS[String(part)] ?? say`a touch`;
  if (part === 0.25) return say`${whole} and a quarter`;
  if (part === 0.5) return say`${whole} and a half`;
  return part === 0.75 ? say`${whole} and three quarters` : whole;
}

/**
 * An amount in the painter's words, rounded to what the grade allows and never under one such unit.
 * @param amountL size in L*; its sign does not count. @returns null at grade C: order only.
 */
export function amountInWords(amountL: number, grade: Grade): string | null {
  if (grade === 'C' || !Number.isFinite(amountL)) return null;
  const unit = grade === 'A' ? 0.25 : 0.5;
  const steps = Math.round(Math.abs(amountL) / STEP_L / unit) * unit;
  return stepsInWords(Math.min(MOST_STEPS, Math.max(unit, steps)));
}

/** `about half a step`, or nothing at grade C. */
export function aboutAmount(amountL: number, grade: Grade): string {
  const amount = amountInWords(amountL, grade);
  return amount ? ` ${say`about ${amount}`}` : '';
}

const SPOTS: [number, string][] = [
  [42, say`One strong spot of red`],
  [76, say`One strong spot of orange`],
  [105, say`One strong spot of yellow`],
  [215, say`One strong spot of green`],
  [295, say`One strong spot of blue`],
  [340, say`One strong spot of violet`],
  [360, say`One strong spot of red`],
];

/** `One strong spot of red`: by the hue angle, within the limits of the measure document. */
export function strongSpotOf(hueDeg: number): string {
  return SPOTS.find(([limit]) => hueDeg < limit)?.[1] ?? say`One strong spot of red`;
}

/** Rows from the top; in each from the left. */
const PLACES = [
  [say`upper left`, say`upper middle`, say`upper right`],
  [say`middle left`, say`middle`, say`middle right`],
  [say`lower left`, say`lower middle`, say`lower right`],
];

/** Where in the picture a point lies: `upper left`, `middle`, ... @param point 0..1 of the picture. */
export function placeInWords([x, y]: readonly [number, number]): string {
  const third = (value: number) => Math.min(2, Math.max(0, Math.floor(value * 3)));
  return PLACES[third(y)]?.[third(x)] ?? say`middle`;
}

/** Number of words a sentence has. */
export function wordCount(sentence: string): number {
  return sentence.trim().split(/\s+/).filter(Boolean).length;
}
