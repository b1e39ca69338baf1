/**
 * Noise for the brush: streaks that bristles leave, and slow wobbles for edges.
 *
 * Pure and seeded.
 */
import { blurred, emptyField, type Field } from './field.ts';

/** Along the stroke, across the stroke, in samples. Powers of two, so that wrapping is a mask. */
export const STREAK_LENGTH = 512;
export const STREAK_COUNT = 256;

/** Bristle streaks in 0..1: slow along rows, fast across them. Row-major, `STREAK_LENGTH` wide. */
export function bristleStreaks(random: () => number): Float32Array {
  const raw = emptyField(STREAK_LENGTH, STREAK_COUNT);
  for (let row = 0; row < STREAK_COUNT; row++) {
    const own = random();
    let drift = 0;
    for (let step = 0; step < STREAK_LENGTH; step++) {
      drift = drift * 0.965 + (random() - 0.5) * 0.22;
      raw.values[row * STREAK_LENGTH + step] = Math.min(Math.max(own * 0.8 + 0.1 + drift, 0), 1);
    }
  }
  return raw.values;
}

/** Slow noise with mean 0 and standard deviation 1. @param sizePx Standard deviation of the smoothing, in pixels. */
export function slowNoise(width: number, height: number, sizePx: number, random: () => number): Field {
  const raw = emptyField(width, height);
  for (let at = 0; at < raw.values.length; at++) raw.values[at] = random() - 0.5;
  const smooth = blurred(raw, sizePx);
  let squares = 0;
  for (const value of smooth.values) squares += value * value;
  const scale = 1 / Math.sqrt(squares / smooth.values.length || 1);
  return { width, height, values: smooth.values.map((value) => value * scale) };
}
