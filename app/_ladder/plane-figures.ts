/**
 * The few figures under each plane of the ladder, as text with units.
 *
 * In the flow: measures -> [figures] -> ladder's feet. Value in steps (10 L*) to a tenth at most, chroma and warm–cool
 * to whole units, and never more digits than their doubt allows. Where the photo's grade allows no amount and no word on
 * colour, only the order of lightness stands here; the table has every figure with its doubt. Pure.
 */

import { figure, NO_FIGURE, signedFigure, signedSteps } from '#app/_words/figures.ts';
import type { GapKey, MeasureDocument, PlaneResult } from '#server/core/contract/measures.ts';
import { speaksOfAmounts, sureGap } from '#server/core/gaps/gap-words.ts';
import { ladderWords } from '#words/ladder.ts';
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

/** Which way a difference goes, without how far. */
function orderOf(plane: PlaneResult, key: FootKey, sure: number | null): string {
  if ((plane.gap?.[key] ?? null) === null) return NO_FIGURE;
  if (sure === null) return ladderWords.order.same;
  return sure > 0 ? ladderWords.order.lighter : ladderWords.order.darker;
}

/** Whether the differences of a plane are told without amounts. */
const orderAlone = (plane: PlaneResult, grade: Grade) => plane.gap != null && !speaksOfAmounts(grade);

/**
 * Differences from the target when there is one, else the painting's own figures. Lights first, as on the bar. Where the
 * grade allows no amounts, differences say only which way they go.
 */
export function planeFigures(plane: PlaneResult, grade: Grade): FigureRow[] {
  return keysAt(grade).map((key) => {
    const sure = sureGap(plane, key, grade);
    const text = orderAlone(plane, grade) ? orderOf(plane, key, sure) : textOf(plane, key);
    return { label: ladderWords.rows[key], text, sure: sure !== null };
  });
}

/**
 * "± 0.4 step, 6 C*": the widest doubt among the figures of `planeFigures`; null where none was worked out, and where no
 * figure stands that it could belong to.
 */
export function planeDoubt(plane: PlaneResult, grade: Grade): string | null {
  if (orderAlone(plane, grade)) return null;
  const widest = (keys: readonly GapKey[]): number | null => {
    const halves = keys.flatMap((key) => halfAt(plane, key) ?? []);
    return halves.length > 0 ? Math.max(...halves) : null;
  };
  const [lightness, chroma] = [widest(LIGHTNESS_KEYS), speaksOfAmounts(grade) ? widest(['chroma']) : null];
  const parts = [
    ...(lightness === null ? [] : [ladderWords.stepOff(figure(Math.max(0.1, lightness / 10), 1))]),
    ...(chroma === null ? [] : [`${figure(Math.max(1, chroma), 0)} C*`]),
  ];
  return parts.length > 0 ? ladderWords.doubt(parts.join(', ')) : null;
}

/** A lightness on the ladder's axis. @param lightness L*. */
function ownValue(lightness: number | null, digits: number): string {
  return lightness === null ? NO_FIGURE : ladderWords.value(figure(lightness / 10, digits));
}

/**
 * Where the bars of a plane stand on the value scale, a sentence each, for those who do not see them: the target first.
 * A photo of which no amount may be said gives whole values only; a bar that is not drawn is not told.
 */
export function barsInWords(plane: PlaneResult, target: MeasureDocument['target'], grade: Grade): string[] {
  const digits = speaksOfAmounts(grade) ? 1 : 0;
  const aimed = { reference: plane.reference, plan: plane.planned ?? null, none: null }[target];
  return [
    [ladderWords.target[target], aimed] as const,
    [ladderWords.painting, plane.painting] as const,
  ].flatMap(([side, bar]) => {
    if (!bar || bar.dark === null || bar.mid === null || bar.light === null) return [];
    const [dark, mid, light] = [bar.dark, bar.mid, bar.light].map((lightness) =>
      figure(lightness / 10, digits),
    );
    return [ladderWords.barSaid(side, dark ?? '', mid ?? '', light ?? '')];
  });
}
