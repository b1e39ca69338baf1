/**
 * The few figures under each plane of the ladder, as text with units.
 *
 * In the flow: measures -> [figures] -> ladder's feet. Value in steps (10 L*) to a tenth at most, chroma and warm–cool
 * to whole units, and never more digits than their doubt allows. Where the photo's grade allows no word on colour, no
 * figure of it stands here either; the table has them all. Pure.
 */

import { ladderWords } from '#app/_words/en-ladder.ts';
import { figure, NO_FIGURE, signedFigure, signedSteps } from '#app/_words/figures.ts';
import type { GapKey, MeasureDocument, PlaneResult } from '#server/core/contract/measures.ts';
import { speaksOfAmounts, sureGap } from '#server/core/gaps/gap-words.ts';
import { digitsFor, halfOf } from './doubted.ts';

type Grade = MeasureDocument['capture']['grade'];

export interface FigureRow {
  label: string;
  /** With its unit; a dash when it could not be taken. */
  text: string;
  /** Larger than a touch and than its doubt, so that it is worth reading. */
  sure: boolean;
}

const LIGHTNESS_KEYS = ['light', 'mid', 'dark'] as const;
const COLOUR_KEYS = ['chroma', 'warmCool'] as const;
type FootKey = (typeof LIGHTNESS_KEYS)[number] | (typeof COLOUR_KEYS)[number];

function keysAt(grade: Grade): readonly FootKey[] {
  return speaksOfAmounts(grade) ? [...LIGHTNESS_KEYS, ...COLOUR_KEYS] : LIGHTNESS_KEYS;
}

function isLightness(key: FootKey): boolean {
  return key === 'light' || key === 'mid' || key === 'dark';
}

/** Half the interval of a figure: of the gap where there is a target, else of the painting. */
function halfAt({ gap, painting, doubt }: PlaneResult, key: GapKey): number | null {
  return halfOf((gap ? doubt?.gap : painting.doubt)?.[key]);
}

function textOf(plane: PlaneResult, key: FootKey): string {
  const half = halfAt(plane, key);
  if (isLightness(key)) {
    const digits = digitsFor(half === null ? null : half / 10, 1);
    return plane.gap ? signedSteps(plane.gap[key], digits) : ownValue(plane.painting[key], digits);
  }
  const amount = (plane.gap ?? plane.painting)[key];
  const text = plane.gap || key === 'warmCool' ? signedFigure(amount, 0) : figure(amount, 0);
  return key === 'chroma' && text !== NO_FIGURE ? `${text} C*` : text;
}

/** Differences from the target when there is one, else the painting's own figures. Lights first, as on the bar. */
export function planeFigures(plane: PlaneResult, grade: Grade): FigureRow[] {
  return keysAt(grade).map((key) => ({
    label: ladderWords.rows[key],
    text: textOf(plane, key),
    sure: sureGap(plane, key, grade) !== null,
  }));
}

/** "± 0.4 step, 6 C*": the widest doubt among the figures of `planeFigures`; null where none was worked out. */
export function planeDoubt(plane: PlaneResult, grade: Grade): string | null {
  const widest = (keys: readonly GapKey[]): number | null => {
    const halves = keys.flatMap((key) => halfAt(plane, key) ?? []);
    return halves.length > 0 ? Math.max(...halves) : null;
  };
  const [lightness, chroma] = [widest(LIGHTNESS_KEYS), speaksOfAmounts(grade) ? widest(['chroma']) : null];
  const parts = [
    ...(lightness === null ? [] : [`${figure(Math.max(0.1, lightness / 10), 1)} step`]),
    ...(chroma === null ? [] : [`${figure(Math.max(1, chroma), 0)} C*`]),
  ];
  return parts.length > 0 ? ladderWords.doubt(parts.join(', ')) : null;
}

/** A lightness on the ladder's axis. @param lightness L*. */
function ownValue(lightness: number | null, digits: number): string {
  return lightness === null ? NO_FIGURE : `value ${figure(lightness / 10, digits)}`;
}
