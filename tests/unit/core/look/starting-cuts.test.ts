/**
 * The starting cuts against the criterion they are published for: Otsu (1979), IEEE Trans. SMC 9, 62-66, variance
 * between the groups, tried out for every possible set of cuts.
 */
import { describe, expect, it } from 'vitest';
import { startingCuts } from '#server/core/look/starting-cuts.ts';
import { CODE_COUNT, CODES_PER_L } from '#server/core/look/value-counts.ts';
import { groupOfCodes } from '#server/core/look/value-groups.ts';
import { VALUE_NUMBERS } from '#server/core/look/value-numbers.ts';

/** Otsu's sigma_B^2 for groups given by cuts: sum of weight * (mean - total mean)^2; null when a group is empty. */
function betweenVariance(counts: Uint32Array, cuts: readonly number[]): number | null {
  const groups = groupOfCodes(cuts);
  const parts = Array.from({ length: cuts.length + 1 }, () => ({ weight: 0, sum: 0 }));
  counts.forEach((count, code) => {
    const part = parts[groups[code] ?? 0];
    if (!part) return;
    part.weight += count;
    part.sum += count * code;
  });
  if (parts.some(({ weight }) => weight === 0)) return null;
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  const mean = parts.reduce((sum, part) => sum + part.sum, 0) / total;
  return parts.reduce((sum, part) => sum + (part.weight / total) * (part.sum / part.weight - mean) ** 2, 0);
}

/** Every rising choice of `size` of the codes. */
function* choices(codes: readonly number[], size: number, from = 0): Generator<number[]> {
  if (size === 0) yield [];
  for (let at = from; size > 0 && at < codes.length; at++) {
    for (const rest of choices(codes, size - 1, at + 1)) yield [codes[at] ?? 0, ...rest];
  }
}

/** A histogram of a few dozen codes in lumps, the same for the same seed. */
function lumps(seed: number): Uint32Array {
  const counts = new Uint32Array(CODE_COUNT);
  let state = seed;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  for (let lump = 0; lump < 4; lump++) {
    const middle = Math.floor(next() * (CODE_COUNT - 8));
    for (let code = middle; code < middle + 6; code++) counts[code] = Math.floor(next() * 900);
  }
  return counts;
}

describe('starting cuts', () => {
  it.each([1, 2, 3, 4, 5, 6])('are the best of all cuts by the published criterion, histogram %d', (seed) => {
    const counts = lumps(seed);
    const occurring = Array.from(counts.keys()).filter((code) => (counts[code] ?? 0) > 0);
    for (const groups of VALUE_NUMBERS) {
      const best = Math.max(
        ...Array.from(choices(occurring.slice(1), groups - 1), (starts) =>
          betweenVariance(
            counts,
            starts.map((code) => code / CODES_PER_L),
          ),
        ).map((variance) => variance ?? 0),
      );
      const found = startingCuts(counts, groups);
      expect(found).toHaveLength(groups - 1);
      expect(betweenVariance(counts, found)).toBeCloseTo(best, 8);
    }
  });

  it('stand mid-way in the empty part between two values', () => {
    const counts = new Uint32Array(CODE_COUNT);
    counts[20 * CODES_PER_L] = 300;
    counts[80 * CODES_PER_L] = 100;
    expect(startingCuts(counts, 2)).toEqual([50]);
  });

  it('divide the scale evenly where a picture has fewer lightnesses than groups', () => {
    const counts = new Uint32Array(CODE_COUNT);
    counts[100] = 7;
    expect(startingCuts(counts, 4)).toEqual([25, 50, 75]);
    expect(startingCuts(new Uint32Array(CODE_COUNT), 3)).toEqual([33, 67]);
  });
});
