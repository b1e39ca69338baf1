/**
 * Where to cut a picture's lightness into two to five values, to begin with.
 *
 * In the flow: counted codes -> [starting-cuts] -> cuts that the painter moves. Pure.
 * Source: Otsu (1979), "A threshold selection method from gray-level histograms", IEEE Trans. SMC 9, 62-66: the cuts
 * that make the variance between the groups largest. Found exactly, for any number of groups, by the dynamic
 * programme of Fisher (1958), "On grouping for maximum homogeneity", J. Amer. Stat. Assoc. 53, 789-798.
 */
import { CODES_PER_L } from './value-counts.ts';
import type { ValueNumber } from './value-numbers.ts';

interface Prefix {
  readonly weight: Float64Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
}

function prefixSums(codes: readonly number[], counts: Uint32Array): Prefix {
  const length = codes.length + 1;
  const sums = {
    weight: new Float64Array(length),
    first: new Float64Array(length),
    second: new Float64Array(length),
  };
  codes.forEach((code, at) => {
    const count = counts[code] as number;
    sums.weight[at + 1] = (sums.weight[at] as number) + count;
    sums.first[at + 1] = (sums.first[at] as number) + count * code;
    sums.second[at + 1] = (sums.second[at] as number) + count * code * code;
  });
  return sums;
}

/** Squared distance of the codes `from` up to, not with, `to` from their own mean, each as often as it occurs. */
function spreadWithin({ weight, first, second }: Prefix, from: number, to: number): number {
  const part = (sums: Float64Array): number => (sums[to] as number) - (sums[from] as number);
  return part(second) - part(first) ** 2 / part(weight);
}

/** Index into the occurring codes at which each group but the first begins, rising. */
function bestStarts(sums: Prefix, length: number, groups: number): number[] {
  let best = Float64Array.from({ length: length + 1 }, (_, to) => (to === 0 ? 0 : spreadWithin(sums, 0, to)));
  const starts: Int32Array[] = [];
  for (let group = 1; group < groups; group++) {
    const next = new Float64Array(length + 1).fill(Number.POSITIVE_INFINITY);
    const start = new Int32Array(length + 1);
    for (let to = group + 1; to <= length; to++) {
      for (let from = group; from < to; from++) {
        const sum = (best[from] as number) + spreadWithin(sums, from, to);
        if (sum < (next[to] as number)) {
          next[to] = sum;
          start[to] = from;
        }
      }
    }
    starts.push(start);
    best = next;
  }
  const found: number[] = [];
  for (let group = starts.length - 1, to = length; group >= 0; group--) {
    to = starts[group]?.[to] ?? 0;
    found.unshift(to);
  }
  return found;
}

/**
 * Cuts in L*, rising, one fewer than there are groups; what lies at a cut belongs to the lighter group.
 *
 * Between two groups that lie apart a cut stands mid-way. A picture with fewer lightnesses than groups is cut into
 * equal parts of the scale instead.
 * @param counts as of `countCodes`.
 */
export function startingCuts(counts: Uint32Array, groups: ValueNumber): number[] {
  const codes = Array.from(counts.keys()).filter((code) => (counts[code] as number) > 0);
  if (codes.length < groups) {
    return Array.from({ length: groups - 1 }, (_, at) => Math.round(((at + 1) * 100) / groups));
  }
  return bestStarts(prefixSums(codes, counts), codes.length, groups).map((start) => {
    const [below, above] = [codes[start - 1] as number, codes[start] as number];
    return Math.ceil((below + above) / 2) / CODES_PER_L;
  });
}
