/**
 * The 90 % interval beside every figure: the bootstrap's deviation and the grade's, in quadrature.
 *
 * In the flow: figures + sampling + grade -> [intervals] -> document. The grade's deviation reaches derived figures
 * by first-order propagation (JCGM 100:2008, section 5). The reference is exact but for its bootstrap. Pure.
 * Source of the grade's figures: the measuring rules, section 1.
 */
import type { Grade } from '../capture/grade.ts';
import { luminanceFromLightness } from '../colour/lab.ts';
import { munsellFromLuminancePercent } from '../colour/munsell-value.ts';
import { GAP_KEYS, type GapKey, type PlaneMeasures } from '../contract/measures.ts';
import type { LabColour } from '../contract/setup.ts';
import type { Sampling } from './bootstrap.ts';

/** Half a 90 % interval of a normal distribution, in standard deviations. */
export const HALF_90 = 1.645;
/** One standard deviation of a plane figure in L* and in a*, b* (and C*ab). */
export const GRADE_SIGMA: Record<Grade, { readonly L: number; readonly ab: number }> = {
  A: { L: 2, ab: 3 },
  B: { L: 4, ab: 5 },
  C: { L: 6, ab: 10 },
};
/** A relation inside one picture keeps this share of it. */
export const RELATION = 0.6;
/** Spread below which detail is compared with this many L* instead, as in the figures. */
const SMALLEST_SPREAD = 10;

/** Standard deviation of each figure; keys of figures that are null are left out. */
export type Deviations = Partial<Record<GapKey, number>>;

function munsellPerLightness(mid: number): number {
  const value = (lightness: number): number =>
    munsellFromLuminancePercent(luminanceFromLightness(Math.min(100, Math.max(0, lightness))) * 100);
  const [low, high] = [Math.max(0, mid - 1), Math.min(100, mid + 1)];
  return (value(high) - value(low)) / (high - low);
}

/** The grade's deviation of one figure. */
function gradeDeviation(key: GapKey, figures: PlaneMeasures, air: LabColour | null, grade: Grade): number {
  const { L, ab } = GRADE_SIGMA[grade];
  const [mid, a, b] = [figures.mid ?? 0, figures.a ?? 0, figures.b ?? 0];
  switch (key) {
    case 'share': // Where an outline runs is the painter's word.
      return 0;
    case 'dark':
    case 'mid':
    case 'light':
    case 'spread':
      return L;
    case 'munsellValue':
      return L * munsellPerLightness(mid);
    case 'hue':
      return Math.min(180, ((ab / Math.max(1, Math.hypot(a, b))) * 180) / Math.PI);
    case 'warmCool':
      return ab * 1.07 * Math.max(1, Math.hypot(a, b)) ** 0.07;
    case 'detail':
    case 'edge': // A ratio of lightnesses inside one picture.
      return ((figures[key] ?? 0) * RELATION * L) / Math.max(figures.spread ?? 0, SMALLEST_SPREAD);
    case 'airDistance': {
      const [dL, da, db] = [mid - (air?.L ?? mid), a - (air?.a ?? a), b - (air?.b ?? b)];
      const length = Math.hypot(dL, da, db);
      const along = length === 0 ? Math.hypot(L, ab) : Math.hypot(dL * L, Math.hypot(da, db) * ab) / length;
      return RELATION * along;
    }
    case 'airShare': // A ratio of lights: dY/Y = 3 dL / (L + 16).
      return ((figures.airShare ?? 0) * 3 * RELATION * L) / ((air?.L ?? 100) + 16);
    default:
      return ab;
  }
}

/** @param grade null where the picture is taken as exact. */
export function deviationsOf(
  figures: PlaneMeasures,
  sampling: Sampling,
  air: LabColour | null,
  grade: Grade | null,
): Deviations {
  const found: Deviations = {};
  for (const key of GAP_KEYS) {
    if (figures[key] === null || (key === 'share' && figures.mid === null)) continue;
    const drawn =
      key === 'munsellValue'
        ? (sampling.mid ?? 0) * munsellPerLightness(figures.mid ?? 0)
        : (sampling[key] ?? 0);
    found[key] = Math.hypot(drawn, grade ? gradeDeviation(key, figures, air, grade) : 0);
  }
  return found;
}

/** value ± 1.645 deviations. */
export function intervalOf(value: number, deviation: number): [number, number] {
  return [value - HALF_90 * deviation, value + HALF_90 * deviation];
}

/** The same figures with their intervals beside them. */
export function withDoubt(figures: PlaneMeasures, deviations: Deviations): PlaneMeasures {
  const doubt: Record<string, [number, number]> = {};
  for (const key of GAP_KEYS) {
    const [value, deviation] = [figures[key], deviations[key]];
    if (value !== null && deviation !== undefined) doubt[key] = intervalOf(value, deviation);
  }
  return { ...figures, doubt };
}
