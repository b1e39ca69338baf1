/**
 * The painter's words: short names for planes, amounts in steps, directions of colour.
 *
 * In the flow: rules and cards take their words here. One step is 10 L*; amounts are never finer than the
 * capture grade allows (quarter steps at A, half steps at B, none at C). Pure.
 */
import type { Grade } from './noise.ts';

/** L* in one painter's step. */
export const STEP_L = 10;
/** Longest part of a plane's name that goes into a sentence, in words. */
const NAME_WORDS = 3;
const NAME_CHARACTERS = 40;
/** No card asks for more than this at once. */
const MOST_STEPS = 3;

/** A plane's name as it stands in a sentence: without its article, three words at most. */
export function shortName(name: string, index: number): string {
  const words = name.trim().split(/\s+/).filter(Boolean);
  if (words.length > 1 && /^(?:the|a|an)$/i.test(words[0] ?? '')) words.shift();
  if (words.length === 0) return `plane ${index + 1}`;
  const kept = words.slice(0, NAME_WORDS).join(' ');
  const cut = kept.length > NAME_CHARACTERS ? kept.slice(0, NAME_CHARACTERS).trimEnd() : kept;
  return cut === words.join(' ') ? cut : `${cut}…`;
}

const WHOLE = ['', 'one step', 'two steps', 'three steps'];
const PARTS: Record<string, string> = {
  '0.25': 'a quarter step',
  '0.5': 'half a step',
  '0.75': 'three quarters of a step',
};
const ENDS: Record<string, string> = { '0.25': 'a quarter', '0.5': 'a half', '0.75': 'three quarters' };

/** @param steps a multiple of a quarter, above 0. */
function stepsInWords(steps: number): string {
  const whole = Math.floor(steps);
  const part = String(steps - whole);
  if (whole === 0) return PARTS[part] ?? 'a touch';
  const end = ENDS[part];
  return end ? `${WHOLE[whole] ?? `${whole} steps`} and ${end}` : (WHOLE[whole] ?? `${whole} steps`);
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
  return amount ? ` about ${amount}` : '';
}

const HUES: [number, string][] = [
  [42, 'red'],
  [76, 'orange'],
  [105, 'yellow'],
  [215, 'green'],
  [295, 'blue'],
  [340, 'violet'],
  [360, 'red'],
];

/** Name of a hue angle, by the limits of the measure document. */
export function hueInWords(hueDeg: number): string {
  return HUES.find(([limit]) => hueDeg < limit)?.[1] ?? 'red';
}

const ACROSS = ['left', 'middle', 'right'];
const DOWN = ['upper', 'middle', 'lower'];

/** Where in the picture a point lies: `upper left`, `middle`, ... @param point 0..1 of the picture. */
export function placeInWords([x, y]: readonly [number, number]): string {
  const third = (value: number) => Math.min(2, Math.max(0, Math.floor(value * 3)));
  const [down, across] = [DOWN[third(y)] ?? 'middle', ACROSS[third(x)] ?? 'middle'];
  return down === across ? 'middle' : `${down} ${across}`;
}

/** Number of words a sentence has. */
export function wordCount(sentence: string): number {
  return sentence.trim().split(/\s+/).filter(Boolean).length;
}
