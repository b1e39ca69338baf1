/**
 * Where the paint of a plane may lie: a hand's wobble over the plane behind, hard here and lost there.
 *
 * In the flow: study -> [reach] -> strokes. Pure and seeded.
 */
import { blurred, emptyField, type Field, sample, smoothStep } from './field.ts';
import type { Manner } from './manner.ts';
import { slowNoise } from './noise.ts';

/** Standard deviation of the wobble and of the change between hard and lost, in study pixels. */
const WOBBLE_PX = 1.6;
const CHANGE_PX = 22;

/** @param upToHere Coverage of this plane and all nearer ones. @returns 0..1 a pixel of the canvas. */
export function reachOf(
  upToHere: Field,
  { raggedPx, lost: mostLost }: Manner,
  canvas: { width: number; height: number },
  random: () => number,
): Field {
  const { width, height } = canvas;
  const reach = emptyField(width, height);
  if (raggedPx === 0) {
    reach.values.fill(1);
    return reach;
  }
  const scale = upToHere.width / width;
  const crisp = blurred(upToHere, 0.9);
  const soft = blurred(upToHere, 1 + raggedPx);
  const wobble = slowNoise(upToHere.width, upToHere.height, WOBBLE_PX, random);
  const change = slowNoise(upToHere.width, upToHere.height, CHANGE_PX, random);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [atX, atY] = [x * scale, y * scale];
      const hard = sample(crisp, atX, atY);
      if (hard > 0.995) reach.values[y * width + x] = 1;
      if (hard > 0.995) continue;
      const wide = sample(soft, atX, atY);
      if (wide < 0.01) continue;
      const lost = mostLost * smoothStep(0.1, 1.2, sample(change, atX, atY));
      const edge = hard + (wide - hard) * Math.min(1, 0.35 + lost);
      const moved = edge + 0.064 * raggedPx * sample(wobble, atX, atY) * edge * (1 - edge);
      reach.values[y * width + x] = smoothStep(0.42 - 0.36 * lost, 0.58 + 0.36 * lost, moved);
    }
  }
  return reach;
}
