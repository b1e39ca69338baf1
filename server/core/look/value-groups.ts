/**
 * A picture in a few values: which group a lightness falls into, how much of the picture each takes.
 *
 * In the flow: counted codes + cuts -> [value-groups] -> drawn map, shares in per cent. Pure.
 */
import { CODE_COUNT, CODES_PER_L } from './value-counts.ts';

/** L* that two cuts, or a cut and the end of the scale, keep between them. */
export const LEAST_APART = 1;

export interface ValueGroup {
  /** Part of the picture, 0..1. */
  readonly share: number;
  /** Mean L* of what is in it; the middle of its part of the scale where nothing is. */
  readonly lightness: number;
}

/** Group of each code, 0 = the darkest. @param cuts rising L*; what lies at a cut is in the lighter group. */
export function groupOfCodes(cuts: readonly number[]): Uint8Array {
  return Uint8Array.from(
    { length: CODE_COUNT },
    (_, code) => cuts.filter((cut) => code / CODES_PER_L >= cut).length,
  );
}

/** Darkest to lightest; shares add up to 1, and are 0 for a picture without a pixel. */
export function valueGroups(counts: Uint32Array, cuts: readonly number[]): ValueGroup[] {
  const groups = groupOfCodes(cuts);
  const weights = new Float64Array(cuts.length + 1);
  const sums = new Float64Array(cuts.length + 1);
  counts.forEach((count, code) => {
    const group = groups[code] as number;
    weights[group] = (weights[group] as number) + count;
    sums[group] = (sums[group] as number) + (count * code) / CODES_PER_L;
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const ends = [0, ...cuts, 100];
  return Array.from(weights, (weight, at) => ({
    share: total === 0 ? 0 : weight / total,
    lightness:
      weight === 0 ? ((ends[at] as number) + (ends[at + 1] as number)) / 2 : (sums[at] as number) / weight,
  }));
}

/** The cuts with one of them moved, held between its neighbours and to half L*. @param at index of the cut. */
export function withMovedCut(cuts: readonly number[], at: number, to: number): number[] {
  const least = (cuts[at - 1] ?? 0) + LEAST_APART;
  const most = (cuts[at + 1] ?? 100) - LEAST_APART;
  const held = Math.min(most, Math.max(least, Math.round(to * CODES_PER_L) / CODES_PER_L));
  return cuts.map((cut, index) => (index === at ? held : cut));
}
