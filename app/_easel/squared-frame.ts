/**
 * The frame of a painting squared by its corners, for looking at.
 *
 * In the flow: photo correction -> core/rectify -> [squared-frame] -> stage. Pure.
 */
import { squareToCorners } from '#server/core/geometry/homography.ts';
import { invert3 } from '#server/core/geometry/matrix3.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import { checkCorners } from '#server/core/rectify/check-corners.ts';
import { sideRatioOf } from '#server/core/rectify/side-ratio.ts';
import { type Frame, squaredFrame } from './frame.ts';
import { troubleOf } from './outline-trouble.ts';
import type { Size } from './view-transform.ts';

/**
 * The squared frame, or null when the painting has no corners or no flat picture can have them.
 *
 * @param original Upright size of the original, in pixels.
 */
export function squaredFrameOf({ corners, size }: LivePhoto, original: Size): Frame | null {
  if (!corners || troubleOf(() => checkCorners(corners)) !== null) return null;
  const { ratio } = sideRatioOf(corners, original.width, original.height, size);
  return squaredFrame({ width: ratio * 1000, height: 1000 }, invert3(squareToCorners(corners)));
}
