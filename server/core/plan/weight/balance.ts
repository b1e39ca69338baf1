/**
 * Balance about the upright middle of a picture: the lever of its patches, as on a steelyard.
 *
 * In the flow: plate -> [balance] -> shapes, crops, plan. lever = sum(w x) / sum(w), x from -1 (left) to 1 (right),
 * w = area x |dL*| to the surround x (1 + C*ab / 30). The published heaviness stands beside it and weighs nothing here.
 * Sources: Poore 1903, ch. III (steelyard); the formula of w is common practice, no source. Pure.
 */
import { heaviness } from '../../colour/temperature.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { type PatchFigures, patchFigures } from './patch-figures.ts';
import { patchMap } from './patches.ts';
import { type SmallPicture, smallPicture } from './small-picture.ts';
import { contrastsToSurround } from './surround.ts';

/** C*ab that doubles a patch's weight. */
const CHROMA_DOUBLES = 30;
/** Lever up to which neither side is called heavier: own estimate, above the 0.02 within which a symmetric picture lies. */
const DEAD_BAND = 0.05;

export interface WeighedPatch extends PatchFigures {
  /** |dL*| to the surround. */
  readonly contrast: number;
  /** area × contrast × (1 + C*ab / 30). */
  readonly weight: number;
}

export type HeavierSide = 'left' | 'right' | 'even';

export interface Balance {
  /** −1 (left) to 1 (right); 0 when nothing weighs. */
  readonly lever: number;
  readonly heavier: HeavierSide;
  /** Mean of the published heavy–light scale over each half: + heavy, − light (Ou, Luo, Woodcock & Wright 2004). */
  readonly heaviness: { readonly left: number; readonly right: number };
}

export interface Weighed {
  readonly balance: Balance;
  readonly patches: readonly WeighedPatch[];
}

/** sum(w x) / sum(w) about an upright line. @param middle and @param half its place and half the width, 0..1. */
export function leverOf(patches: readonly WeighedPatch[], middle = 0.5, half = 0.5): number {
  let [moments, weights] = [0, 0];
  for (const { weight, middle: at } of patches) {
    weights += weight;
    moments += weight * ((at[0] - middle) / half);
  }
  return weights > 0 ? moments / weights : 0;
}

/** The heavier side in words; within the dead band it is `even`. */
export function heavierSide(lever: number): HeavierSide {
  if (Math.abs(lever) <= DEAD_BAND) return 'even';
  return lever < 0 ? 'left' : 'right';
}

function meanHeaviness({ columns, rows, lab }: SmallPicture): Balance['heaviness'] {
  const sums = { left: 0, right: 0 };
  for (let cell = 0; cell < columns * rows; cell++) {
    const x = cell % columns;
    // The share of this column that lies left of the middle; a middle column falls half to each side.
    const left = Math.min(1, Math.max(0, columns / 2 - x));
    const own = heaviness(lab.lightness[cell] as number);
    sums.left += left * own;
    sums.right += (1 - left) * own;
  }
  const half = (columns * rows) / 2;
  return { left: sums.left / half, right: sums.right / half };
}

/** What weighs in a picture, and to which side. @param raster a plate of any size. */
export function weighPicture(raster: EncodedRaster): Weighed {
  const picture = smallPicture(raster);
  const map = patchMap(picture);
  const figures = patchFigures(picture, map);
  const contrasts = contrastsToSurround(picture, map, figures);
  const patches = figures.map((patch, at): WeighedPatch => {
    const contrast = contrasts[at] as number;
    return { ...patch, contrast, weight: patch.area * contrast * (1 + patch.chroma / CHROMA_DOUBLES) };
  });
  const lever = leverOf(patches);
  return { balance: { lever, heavier: heavierSide(lever), heaviness: meanHeaviness(picture) }, patches };
}
