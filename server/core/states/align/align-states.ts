/**
 * The next photograph of a painting laid on the last one: both squared by their own corners, the rest found here.
 *
 * In the flow: two squared plates, in the pipeline's worker -> [align-states] -> comparing, carried planes. Coarse to
 * fine: every shift on a small copy, then ever finer grids up to `FINEST` cells. Pure.
 */
import { project } from '../../geometry/homography.ts';
import type { Matrix3 } from '../../geometry/matrix3.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { WHOLE_PHOTO } from '../../rectify/whole-photo.ts';
import { say } from '../../say/say.ts';
import { agreementOf, squaresOf } from './agreement.ts';
import { AS_SQUARED, firstPlaces } from './first-place.ts';
import { refined } from './refine.ts';
import { type Lightness, lightnessOf, onGrid, type Relief, reliefOf } from './relief.ts';

/** Long sides of the grids, cells. */
const [COARSEST, COARSE, MIDDLE, FINEST] = [64, 128, 256, 448];
/** Farthest that corners set by hand let a corner lie from where it should, as a share of the width. */
const FARTHEST = 0.12;
/** Least share of the squares that has to agree for two photographs to show one painting. */
const LEAST_AGREEMENT = 0.3;
/** With fewer squares than this there is nothing to tell by. */
const LEAST_SQUARES = 8;

/** How two photographs lie on one another. */
export interface StateAlignment {
  /** From fractions of the earlier squared painting to fractions of the later one. */
  readonly toLater: Matrix3;
  /** Share of the squares with something to see that agree, 0..1. */
  readonly agreement: number;
  /** How far a corner had to be moved at most, as a share of the width. */
  readonly movedBy: number;
  /** What stands in the way of comparing them, in a whole sentence; null where nothing does. */
  readonly trouble: string | null;
}

/** In percent, its sign left out. */
const percent = (share: number) => Math.round(share * 100);

function troubleOf(agreement: number, squares: number): string | null {
  if (squares < LEAST_SQUARES) {
    return say`The two photos are too even to be laid on one another: only ${squares} of their parts show anything, and ${LEAST_SQUARES} are needed. They are not compared.`;
  }
  if (agreement >= LEAST_AGREEMENT) return null;
  return say`This seems to be another painting than the last state: ${percent(agreement)} % of it agrees, and ${percent(LEAST_AGREEMENT)} % is needed. The picture stays; it is only not compared.`;
}

/** Farthest way of a corner, as a share of the width. @param ratio height / width. */
function movedBy(place: Matrix3, ratio: number): number {
  return Math.max(
    ...WHOLE_PHOTO.map((corner) => {
      const [x, y] = project(place, corner);
      return Math.hypot(x - corner[0], (y - corner[1]) * ratio);
    }),
  );
}

/** @param earlier, later squared, any size; the later one may have another side ratio by what its corners are off. */
export function alignStates(earlier: EncodedRaster, later: EncodedRaster): StateAlignment {
  const [one, two] = [lightnessOf(earlier, FINEST), lightnessOf(later, FINEST)];
  const ratio = one.rows / one.columns;
  const at = (cells: number): [Relief, Relief] => {
    const shrink = Math.min(1, cells / Math.max(one.columns, one.rows));
    const size = [Math.round(one.columns * shrink), Math.round(one.rows * shrink)] as const;
    const on = (picture: Lightness) => reliefOf(onGrid(picture, Math.max(8, size[0]), Math.max(8, size[1])));
    return [on(one), on(two)];
  };
  const coarse = at(COARSE);
  const found = firstPlaces(...at(COARSEST))
    .map((first) => refined(...coarse, first, { affine: true, rounds: 12 }))
    .filter((place) => movedBy(place, ratio) <= FARTHEST)
    .map((place) => ({ place, share: agreementOf(squaresOf(...coarse, place)).share }))
    .sort((p, q) => q.share - p.share)[0];
  const middle = at(MIDDLE);
  const place = refined(...middle, found?.place ?? AS_SQUARED, { affine: false, rounds: 12 });
  const { share, squares } = agreementOf(squaresOf(...middle, place));
  const trouble = troubleOf(share, squares);
  // Only what belongs together is worth the last and longest step.
  const toLater =
    trouble === null ? refined(...at(FINEST), place, { affine: false, rounds: 10 }) : AS_SQUARED;
  return { toLater, agreement: share, movedBy: movedBy(toLater, ratio), trouble };
}
