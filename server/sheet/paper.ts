/** Sizes of the two papers, margins, and the letters that stand on them, in points of 1/72 inch. Pure. */
import type { Paper } from '../core/sheet/content.ts';
import { LEADING, type Letter } from './typesetter.ts';

/** ISO 216 A4 (210 × 297 mm) and US Letter (8.5 × 11 in). */
export const PAPER_SIZE: Record<Paper, { width: number; height: number }> = {
  a4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
};

/** Printers leave up to about 6 mm at the edge; a page also wants air. */
export const MARGIN = 34;
/** Between two parts of the page. */
export const GAP = 11;

/**
 * Nothing is smaller than 11 points: from 70 cm, an arm's length, its letters are seen about as large as those
 * of 6 points from a reading distance of 40 cm.
 */
export const LETTERS = {
  title: { size: 20, weight: 700 },
  body: { size: 11, weight: 400 },
  label: { size: 11, weight: 700 },
  works: { size: 12.5, weight: 600 },
  card: { size: 14.5, weight: 700 },
} satisfies Record<string, Letter>;

export const INK = '#111111';
export const QUIET = '#444444';
export const LINE = '#8c8c8c';
export const FAINT = '#d0d0d0';
export const PAPER_WHITE = '#ffffff';

/** Radius of a number's disc on the painting. */
export const SIGN_RADIUS = 9.5;
/** Side of a sign in a list. */
export const LIST_SIGN = 17.5;

/** Room for the greys of a ladder and their numerals at its left. */
export const LADDER_AXIS = 32;

/** Of the body, points. */
export const LINE_HEIGHT = LETTERS.body.size * LEADING;
