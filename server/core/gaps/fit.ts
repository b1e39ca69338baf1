/**
 * Key and span: how the painting's middles follow the target's as a whole. Pure.
 *
 * p(mid) ≈ key + span · r(mid), by Theil–Sen over pairs of planes whose targets differ by 2 L* or more.
 * Source: Theil (1950), Sen (1968).
 */
import { median } from '../image/percentiles.ts';

const SMALLEST_DIFFERENCE = 2;
const FEWEST_PLANES = 3;

/** @param pairs [target mid, painting mid] of each plane. @returns nulls under three planes or without a slope. */
export function fitKeyAndSpan(pairs: readonly (readonly [number, number])[]): {
  key: number | null;
  span: number | null;
} {
  if (pairs.length < FEWEST_PLANES) return { key: null, span: null };
  const slopes = pairs.flatMap(([r, p], at) =>
    pairs
      .slice(at + 1)
      .filter(([otherR]) => Math.abs(otherR - r) >= SMALLEST_DIFFERENCE)
      .map(([otherR, otherP]) => (otherP - p) / (otherR - r)),
  );
  const span = median(slopes);
  return { key: span === null ? null : median(pairs.map(([r, p]) => p - span * r)), span };
}
