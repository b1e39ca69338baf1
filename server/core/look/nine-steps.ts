/**
 * The neutral scale of nine steps that stands beside a picture, and values in steps.
 *
 * The steps lie at L* 10, 20 … 90 (ISO/CIE 11664-4), equal steps of lightness and the rungs of the ladder. Munsell's
 * values 1 to 9 (ASTM D1535) lie within 0.11 of a step of them, so a printed scale of that kind serves as well.
 * Pure.
 */

import { hexFromLinear } from '../colour/hex.ts';
import { luminanceFromLightness } from '../colour/lab.ts';
import { say } from '../say/say.ts';

/** L* in one step. */
export const STEP_L = 10;

/** Lightest first, as the scale stands. */
export const NINE_STEPS: readonly number[] = [9, 8, 7, 6, 5, 4, 3, 2, 1];

/** sRGB hex of a neutral grey. @param lightness L*, 0..100; held to it. */
export function greyOf(lightness: number): string {
  const luminance = luminanceFromLightness(Math.min(100, Math.max(0, lightness)));
  return hexFromLinear(luminance, luminance, luminance);
}

/** 0..10 on the scale of the ladder. @param lightness L*. */
export function stepOfLightness(lightness: number): number {
  return Math.min(10, Math.max(0, lightness / STEP_L));
}

const WHOLE = [
  say`a step`,
  say`two steps`,
  say`three steps`,
  say`four steps`,
  say`five steps`,
  say`six steps`,
  say`seven steps`,
  say`eight steps`,
  say`nine steps`,
  say`ten steps`,
];
const PARTS: Record<string, [alone: string, added: (whole: string) => string]> = {
  '0.25': [say`a quarter of a step`, (whole) => say`${whole} and a quarter`],
  '0.5': [say`half a step`, (whole) => say`${whole} and a half`],
  '0.75': [say`three quarters of a step`, (whole) => say`${whole} and three quarters`],
};

/**
 * `half a step`, `a step`, `two steps and a half`.
 * @param lightness size in L*; its sign does not count. @param unit of rounding, in steps; never under one such unit.
 */
export function stepsInWords(lightness: number, unit: 0.25 | 0.5 | 1): string {
  const steps = Math.max(unit, Math.round(Math.abs(lightness) / STEP_L / unit) * unit);
  const whole = Math.floor(steps);
  const part = PARTS[String(steps - whole)];
  if (whole === 0) return part?.[0] ?? say`a touch`;
  const base = WHOLE[whole - 1] ?? say`${whole} steps`;
  return part ? part[1](base) : base;
}
