/**
 * How far back a plane goes compared with its target, as one figure with its doubt and in the painter's words.
 *
 * In the flow: recession of the document -> [recession-words] -> air view, table. At grade C, or without one, only the
 * order is said. Pure. 1 = as far as the target; more is neutral, a painter may well want it.
 */
import type { MeasureDocument, PlaneResult } from '../contract/measures.ts';
import { speaksOfAmounts } from '../gaps/gap-words.ts';
import { median } from '../image/percentiles.ts';
import { say } from '../say/say.ts';
import { recessionAchieved } from './recession-achieved.ts';

type PhotoGrade = MeasureDocument['capture']['grade'];

export interface Achieved {
  /** 1 = as the target, 0 = not at all, below 0 = forward instead. */
  figure: number;
  /** 90 % interval, or null where doubt was not worked out. */
  interval: [number, number] | null;
}

/** Ratios beyond these are as good as the target, and as good as nothing. */
const AS_FAR = 0.125;

/**
 * The figure is a median of ratios; the median of their lower and of their upper bounds holds it at least as surely as
 * each bound holds its own ratio, since a median rises with everything in it.
 * @returns null where no ratio could be taken.
 */
export function achievedOf(plane: PlaneResult, grade: PhotoGrade): Achieved | null {
  const figure = recessionAchieved(plane.recession, grade);
  if (figure === null || !plane.recession) return null;
  const doubt = plane.doubt?.recession ?? {};
  const keys = speaksOfAmounts(grade)
    ? (['darks', 'spread', 'chroma', 'air'] as const)
    : (['darks', 'spread'] as const);
  const intervals = keys.flatMap((key) => {
    const [value, interval] = [plane.recession?.[key] ?? null, doubt[key]];
    return value !== null && interval ? [interval] : [];
  });
  const [low, high] = [0, 1].map((end) => median(intervals.map((interval) => interval[end] as number)));
  return { figure, interval: low == null || high == null ? null : [low, high] };
}

const TARGET: Record<MeasureDocument['target'], { of: string; as: string }> = {
  reference: { of: say`of the reference’s way`, as: say`in the reference` },
  plan: { of: say`of the planned way`, as: say`planned` },
  none: { of: say`of the way`, as: say`meant` },
};

/** How far something goes back compared with its target; parts are `a quarter` to `three quarters` of the way. */
export type Extent = 'as far' | 'farther' | 'less far' | 'forward' | 'hardly' | Part;
type Part = 'a quarter' | 'half' | 'three quarters';

const PARTS: readonly Part[] = ['a quarter', 'half', 'three quarters'];

/** As much as doubt and grade let be said: at grade C, or without one, `as far`, `farther` or `less far` alone. */
export function extentOf({ figure, interval }: Achieved, grade: PhotoGrade): Extent {
  const [low, high] = interval ?? [figure, figure];
  if ((low <= 1 && high >= 1) || Math.abs(figure - 1) <= AS_FAR) return 'as far';
  if (figure > 1) return 'farther';
  if (!speaksOfAmounts(grade)) return 'less far';
  if (high < 0) return 'forward';
  const unit = grade === 'A' ? 1 : 2;
  const quarters = Math.min(4 - unit, Math.round((figure * 4) / unit) * unit);
  return PARTS[quarters - 1] ?? 'hardly';
}

/** @returns One phrase that follows the plane's name, for example "goes about half of the reference’s way back into the air". */
export function recessionWords(
  achieved: Achieved,
  target: MeasureDocument['target'],
  grade: PhotoGrade,
): string {
  const { of, as } = TARGET[target];
  const extent = extentOf(achieved, grade);
  if (!speaksOfAmounts(grade)) {
    if (extent === 'as far') return say`goes back as far as ${as}, as far as this photo tells`;
    return extent === 'farther' ? say`goes back farther than ${as}` : say`goes back less far than ${as}`;
  }
  if (extent === 'as far') return say`goes back into the air as far as ${as}`;
  if (extent === 'farther') return say`goes back farther into the air than ${as}`;
  if (extent === 'forward') return say`comes forward instead of going back`;
  if (extent === 'a quarter') return say`goes about a quarter ${of} back into the air`;
  if (extent === 'half') return say`goes about half ${of} back into the air`;
  if (extent === 'three quarters') return say`goes about three quarters ${of} back into the air`;
  return say`hardly goes back into the air`;
}
