/**
 * How the outline of each plane is drawn, so that planes are told apart without hue: by pattern and lightness.
 *
 * Every line is a core over a casing of the opposite lightness and thus shows on any picture. Pure.
 */

export interface LinePattern {
  /** SVG dash array in CSS pixels; empty = unbroken. */
  dashes: string;
  /** Colours of the look, as a style or an SVG attribute takes them. */
  core: string;
  casing: string;
}

const LIGHT = { core: 'var(--over-light)', casing: 'var(--over-dark-half)' };
const DARK = { core: 'var(--over-dark)', casing: 'var(--over-light-half)' };
const DASHES = ['', '11 7', '1.5 5', '16 6 1.5 6', '24 10', '6 5'] as const;

/** @param number Running number of the plane, 1 = the farthest. Patterns repeat dark after six, then anew. */
export function linePattern(number: number): LinePattern {
  const at = Math.max(0, number - 1);
  const lightness = Math.floor(at / DASHES.length) % 2 === 0 ? LIGHT : DARK;
  return { dashes: DASHES[at % DASHES.length] ?? '', ...lightness };
}
