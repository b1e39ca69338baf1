/**
 * How much of the target's step back a plane took: 1 as the target, 0.5 or less too little, above 1.6 more
 * air than the target. Pure.
 */
import type { Recession } from '../contract/measures.ts';
import type { Figures } from './target.ts';

const SMALLEST_RISE_OF_DARKS = 10;
const SMALLEST_FALL_TO_AIR = 15;
const LARGEST_RATIO = 0.7;
const FLOOR = 2;
const SMALLEST_NEAR_STRENGTH = 15;

/** (p_k − p_n) / (r_k − r_n), null unless the target's difference is at least `smallest`. */
function ratioOfRises(
  painting: readonly [number | null, number | null],
  target: readonly [number | null, number | null],
  smallest: number,
): number | null {
  const [pTo, pFrom] = painting;
  const [rTo, rFrom] = target;
  if (pTo === null || pFrom === null || rTo === null || rFrom === null) return null;
  return rTo - rFrom >= smallest ? (pTo - pFrom) / (rTo - rFrom) : null;
}

/** ln(p_k/p_n) / ln(r_k/r_n) with values floored at 2, null unless the target's ratio is 0.7 or less. */
function ratioOfDecays(
  painting: readonly [number | null, number | null],
  target: readonly [number | null, number | null],
): number | null {
  const [pFar, pNear] = painting;
  const [rFar, rNear] = target;
  if (pFar === null || pNear === null || rFar === null || rNear === null) return null;
  const targetRatio = Math.max(rFar, FLOOR) / Math.max(rNear, FLOOR);
  if (targetRatio > LARGEST_RATIO) return null;
  return Math.log(Math.max(pFar, FLOOR) / Math.max(pNear, FLOOR)) / Math.log(targetRatio);
}

/** Figures of a far plane (`k`) and the nearest one (`n`), in the painting and in the target. */
export interface FarAndNearest {
  readonly paintingFar: Figures;
  readonly paintingNear: Figures;
  readonly targetFar: Figures;
  readonly targetNear: Figures;
}

export function recessionOf({ paintingFar, paintingNear, targetFar, targetNear }: FarAndNearest): Recession {
  const strongEnough = [paintingNear.strong, targetNear.strong].every(
    (strong) => strong !== null && strong >= SMALLEST_NEAR_STRENGTH,
  );
  return {
    darks: ratioOfRises(
      [paintingFar.dark, paintingNear.dark],
      [targetFar.dark, targetNear.dark],
      SMALLEST_RISE_OF_DARKS,
    ),
    spread: ratioOfDecays([paintingFar.spread, paintingNear.spread], [targetFar.spread, targetNear.spread]),
    chroma: strongEnough
      ? ratioOfDecays([paintingFar.strong, paintingNear.strong], [targetFar.strong, targetNear.strong])
      : null,
    air: ratioOfRises(
      [paintingNear.airDistance, paintingFar.airDistance],
      [targetNear.airDistance, targetFar.airDistance],
      SMALLEST_FALL_TO_AIR,
    ),
  };
}
