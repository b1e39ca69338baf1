/**
 * Where a painting lies on the picture it was made from, and how single planes were moved in it.
 *
 * In the flow: two pictures -> find-placement -> [placement] -> carried rings, and back from the hand that drags. All
 * in 0..1 of each picture (a painting: squared). Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { Problem } from '../../problem.ts';
import { say } from '../../say/say.ts';

/** A place of the painting = place of the first picture × scale + shift, side by side. */
export interface Placement {
  readonly scaleX: number;
  readonly scaleY: number;
  readonly shiftX: number;
  readonly shiftY: number;
}

/** How a plane moved beyond that: about `about`, a place of the painting, then shifted by 0..1 of it. */
export interface PlaneMove {
  readonly about: FractionPoint;
  readonly scale: number;
  readonly shiftX: number;
  readonly shiftY: number;
}

/** Both pictures show the same part. */
export const SAME_PART: Placement = { scaleX: 1, scaleY: 1, shiftX: 0, shiftY: 0 };

/** Smallest and largest enlargement: a painting of a tenth of the picture, a picture that is a tenth of the painting. */
export const SCALES = { least: 0.1, most: 10 } as const;

export const placed = (
  { scaleX, scaleY, shiftX, shiftY }: Placement,
  [x, y]: FractionPoint,
): FractionPoint => [x * scaleX + shiftX, y * scaleY + shiftY];

/** The place of the first picture that a place of the painting shows. */
export const placedBack = (
  { scaleX, scaleY, shiftX, shiftY }: Placement,
  [x, y]: FractionPoint,
): FractionPoint => [(x - shiftX) / scaleX, (y - shiftY) / scaleY];

export const moved = ({ about, scale, shiftX, shiftY }: PlaneMove, [x, y]: FractionPoint): FractionPoint => [
  about[0] + (x - about[0]) * scale + shiftX,
  about[1] + (y - about[1]) * scale + shiftY,
];

/** Share of the painting that shows what the first picture shows, 0..1. */
export function shareShown({ scaleX, scaleY, shiftX, shiftY }: Placement): number {
  const along = (scale: number, shift: number): number =>
    Math.max(0, Math.min(1, scale + shift) - Math.max(0, shift));
  return along(scaleX, shiftX) * along(scaleY, shiftY);
}

/** @throws Problem `setup-invalid` where nothing of the first picture would lie on the painting, or no size is left. */
export function checkPlacement(placement: Placement): void {
  const { scaleX, scaleY, shiftX, shiftY } = placement;
  const fits = (scale: number): boolean => scale >= SCALES.least && scale <= SCALES.most;
  if (!fits(scaleX) || !fits(scaleY) || !Number.isFinite(shiftX + shiftY)) {
    throw new Problem(
      'setup-invalid',
      say`The planes would be ${scaleX.toFixed(2)} times as wide and ${scaleY.toFixed(2)} times as high. Between ${SCALES.least} and ${SCALES.most} times is possible; make them smaller or larger.`,
    );
  }
  if (shareShown(placement) <= 0) {
    throw new Problem(
      'setup-invalid',
      say`The planes would lie wholly outside the painting. Move them so that they touch it.`,
    );
  }
}
