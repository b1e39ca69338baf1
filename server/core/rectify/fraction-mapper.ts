/**
 * Points between the upright photo and the squared painting, both in fractions.
 *
 * In the flow: live outlines (fractions of the photo) -> [fraction-mapper] -> setup (fractions of the
 * squared painting), and back for drawing. The size in pixels never enters: squaring maps fractions. Pure.
 */
import type { FractionPoint, PhotoCorrection } from '../contract/setup.ts';
import { project, squareToCorners } from '../geometry/homography.ts';
import { apply3, invert3 } from '../geometry/matrix3.ts';
import { checkCorners } from './check-corners.ts';

/** How far outside the squared painting a point may land, in its sides; beyond lies the horizon. */
const FARTHEST = 9;

export interface FractionMapper {
  /** From the upright photo to the squared painting; points near or beyond the horizon stop 9 sides away. */
  readonly toSquared: (point: FractionPoint) => FractionPoint;
  /** From the squared painting to the upright photo. */
  readonly toOriginal: (point: FractionPoint) => FractionPoint;
}

function held(value: number): number {
  return Math.min(1 + FARTHEST, Math.max(-FARTHEST, value));
}

/** @throws Problem `corners-invalid`. */
export function fractionMapper(photo: PhotoCorrection | undefined): FractionMapper {
  if (!photo?.corners) return { toSquared: (point) => point, toOriginal: (point) => point };
  checkCorners(photo.corners);
  const toPhoto = squareToCorners(photo.corners);
  const toSquare = invert3(toPhoto);
  const sign = Math.sign(apply3(toSquare, [photo.corners[0][0], photo.corners[0][1], 1])[2]);
  return {
    toOriginal: (point) => project(toPhoto, point),
    toSquared: ([x, y]) => {
      const [px, py, w] = apply3(toSquare, [x, y, 1]);
      const depth = Math.max(sign * w, 1e-6) * sign; // never behind the horizon
      return [held(px / depth), held(py / depth)];
    },
  };
}
