/**
 * How one plane of the painting stands to its target, in the painter's words and no surer than the photograph is.
 *
 * In the flow: gap + its doubt + capture grade -> [gap-words] -> ladder, headless table. Amounts are quarter steps at
 * grade A and half steps at B; at C, and where no grade exists, only the order of lightness is said. Pure.
 * The smallest differences spoken of are about the least a painter mixes on purpose (common practice, no source).
 */

import type { GapKey, MeasureDocument, PlaneResult } from '../contract/measures.ts';
import { GRADE_SIGMA, HALF_90 } from '../doubt/intervals.ts';
import { aboutAmount } from '../readings/words.ts';
import { say } from '../say/say.ts';

/** L* below which lightness holds. */
export const SAME_LIGHTNESS = 2;
/** C*ab, and units of warmCool, below which colour holds. */
const SAME_COLOUR = 3;

type Target = MeasureDocument['target'];
type PhotoGrade = MeasureDocument['capture']['grade'];

/** What differs, with what it is held against. */
const THAN: Record<Target, (different: string) => string> = {
  reference: (different) => say`${different} than in the reference`,
  plan: (different) => say`${different} than planned`,
  none: (different) => different,
};

/** Which part differs in lightness, and how; the middle stands for the plane. */
const OF_PART = {
  mid: (how: string) => how,
  dark: (how: string) => say`darks ${how}`,
  light: (how: string) => say`lights ${how}`,
} as const;

/** Whether amounts and colour may be spoken of. */
export function speaksOfAmounts(grade: PhotoGrade): grade is 'A' | 'B' {
  return grade === 'A' || grade === 'B';
}

/** Half the 90 % interval of a gap; without one, what the grade alone leaves open; 0 where there is no grade. */
function halfOf(doubt: Record<string, [number, number]>, key: GapKey, grade: PhotoGrade): number {
  const interval = doubt[key];
  if (interval) return (interval[1] - interval[0]) / 2;
  if (grade === null) return 0;
  const { L, ab } = GRADE_SIGMA[grade];
  return HALF_90 * (key === 'dark' || key === 'mid' || key === 'light' ? L : ab);
}

/** The difference where it is larger than a touch and than its doubt; null where it holds or could not be taken. */
export function sureGap(
  { gap, doubt }: Pick<PlaneResult, 'gap' | 'doubt'>,
  key: GapKey,
  grade: PhotoGrade,
): number | null {
  const difference = gap?.[key] ?? null;
  const same = key === 'chroma' || key === 'warmCool' ? SAME_COLOUR : SAME_LIGHTNESS;
  const least = Math.max(same, halfOf(doubt?.gap ?? {}, key, grade));
  return difference === null || Math.abs(difference) < least ? null : difference;
}

function lighterOrDarker(difference: number, grade: PhotoGrade): string {
  const amount = speaksOfAmounts(grade) ? aboutAmount(difference, grade).trim() : '';
  if (amount === '') return difference > 0 ? say`lighter` : say`darker`;
  return difference > 0 ? say`${amount} lighter` : say`${amount} darker`;
}

/** The middle when it differs; else the darks, which carry most of the depth, and then the lights. */
function lightnessWords(plane: Pick<PlaneResult, 'gap' | 'doubt'>, grade: PhotoGrade): string | null {
  for (const part of ['mid', 'dark', 'light'] as const) {
    const difference = sureGap(plane, part, grade);
    if (difference !== null) return OF_PART[part](lighterOrDarker(difference, grade));
  }
  return null;
}

function colourWords(plane: Pick<PlaneResult, 'gap' | 'doubt'>, grade: PhotoGrade): string[] {
  if (!speaksOfAmounts(grade)) return [];
  const [warm, strong] = [sureGap(plane, 'warmCool', grade), sureGap(plane, 'chroma', grade)];
  return [
    ...(warm === null ? [] : [warm > 0 ? say`warmer` : say`cooler`]),
    ...(strong === null ? [] : [strong > 0 ? say`stronger in colour` : say`greyer`]),
  ];
}

/**
 * For example `['about half a step darker than in the reference', 'warmer']`.
 *
 * The first phrase names the target, the others lean on it. `['holds']` where every difference lies within its doubt;
 * at grade C, or without one, it says so. Empty where nothing could be compared.
 */
export function gapWords(
  plane: Pick<PlaneResult, 'gap' | 'doubt'>,
  target: Target,
  grade: PhotoGrade,
): string[] {
  const { gap } = plane;
  if (!gap || (gap.mid === null && gap.warmCool === null && gap.chroma === null)) return [];
  const lightness = lightnessWords(plane, grade);
  const [first, ...others] = [...(lightness ? [lightness] : []), ...colourWords(plane, grade)];
  if (first !== undefined) return [THAN[target](first), ...others];
  return [speaksOfAmounts(grade) ? say`holds` : say`holds, as far as this photo tells`];
}
