/**
 * Says when a painting is too small in its photo for its figures to mean much.
 *
 * In the flow: corners + size of the photo -> [small-painting] -> notes of the capture, screen. Pure.
 */
import { say } from '../say/say.ts';

/** Shorter side of a painting, in pixels of its photo, under which a plane is a handful of pixels. */
const FEWEST_PX = 300;

/** One sentence for a painting under 300 px, else null. @param shortSidePx, fillsPhoto as in `PhotoFacts`. */
export function smallPaintingNote(shortSidePx: number, fillsPhoto: boolean): string | null {
  if (shortSidePx >= FEWEST_PX) return null;
  const how = fillsPhoto ? say`Post a larger photo of it.` : say`Step closer and photograph it again.`;
  return say`The painting is only ${Math.round(shortSidePx)} pixels on its shorter side in this photo; below ${FEWEST_PX} its figures are rough. ${how}`;
}
