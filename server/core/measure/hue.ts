/**
 * Hue of a plane and how its colours share the hue families. Pure.
 *
 * Families by hue angle, half-open, in degrees: red 340–42, orange 42–76, yellow 76–105, green 105–215,
 * blue 215–295, violet 295–340.
 */
import { chromaOf, hueDegOf } from '../colour/lab.ts';
import type { HueFamily } from '../contract/measures.ts';

/** Shortest mean (a*, b*) that still has a direction. */
const SHORTEST_MEAN = 3;
/** C* below which a pixel belongs to no family. */
const FAMILY_CHROMA = 8;

/** Family of a hue angle, 0 up to 360. */
export function hueFamilyOf(hueDeg: number): HueFamily {
  if (hueDeg < 42 || hueDeg >= 340) return 'red';
  if (hueDeg < 76) return 'orange';
  if (hueDeg < 105) return 'yellow';
  if (hueDeg < 215) return 'green';
  return hueDeg < 295 ? 'blue' : 'violet';
}

function meanOf(values: Float32Array): number {
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += values[at] as number;
  return sum / values.length;
}

/** Angle of the mean (a*, b*), degrees; null when that mean is shorter than 3. */
export function meanHueDeg(a: Float32Array, b: Float32Array): number | null {
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  return chromaOf(meanA, meanB) < SHORTEST_MEAN ? null : hueDegOf(meanA, meanB);
}

const FAMILIES: readonly HueFamily[] = ['red', 'orange', 'yellow', 'green', 'blue', 'violet'];

/** Share of all samples with C* ≥ 8 in each family; the rest is neutral. */
export function hueSharesOf(
  a: Float32Array,
  b: Float32Array,
  chroma: Float32Array,
): Record<HueFamily, number> {
  const counts: Record<HueFamily, number> = { red: 0, orange: 0, yellow: 0, green: 0, blue: 0, violet: 0 };
  for (let at = 0; at < chroma.length; at++) {
    if ((chroma[at] as number) >= FAMILY_CHROMA)
      counts[hueFamilyOf(hueDegOf(a[at] as number, b[at] as number))]++;
  }
  for (const family of FAMILIES) counts[family] /= chroma.length;
  return counts;
}
