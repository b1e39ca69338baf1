/**
 * Whether a frame can be painted from: inside the picture, and enough pixels left.
 *
 * In the flow: search -> [check-crop]. Pure.
 */
import { say } from '../../say/say.ts';
import type { Box } from './crop-scene.ts';

/** Pixels that the shorter side of a frame must have. */
export const LEAST_CROP_PX = 300;

/** One sentence for what is wrong with a frame, or null. @param box x0, y0, x1, y1 in 0..1 of the picture. */
export function cropTrouble([x0, y0, x1, y1]: Box, widthPx: number, heightPx: number): string | null {
  const inside = [x0, y0, x1, y1].every((side) => side >= 0 && side <= 1);
  if (!inside || !(x1 > x0 && y1 > y0)) {
    return say`The frame (${x0}, ${y0}) to (${x1}, ${y1}) does not lie inside the picture, 0 to 1. Move it inside.`;
  }
  const shorter = Math.round(Math.min((x1 - x0) * widthPx, (y1 - y0) * heightPx));
  if (shorter >= LEAST_CROP_PX) return null;
  return say`The frame has ${shorter} pixels on its shorter side; ${LEAST_CROP_PX} are needed to paint from. Make it larger or take a larger photograph.`;
}
