/**
 * Percentiles by linear interpolation between order statistics, exact and without sorting everything.
 *
 * In the flow: samples of a plane -> [percentiles] -> figures. Pure.
 * Source: Hyndman & Fan (1996), "Sample quantiles in statistical packages", definition 7.
 */

const BINS = 4096;
/** Below this many samples sorting is quicker. */
const SORT_LIMIT = 4096;

/** Values at the given ranks (from 0, each within the array): histogram first, then sort only the bins asked for. */
function orderStatistics(values: Float32Array, ranks: readonly number[]): number[] {
  if (values.length <= SORT_LIMIT) {
    const sorted = values.slice().sort();
    return ranks.map((rank) => sorted[rank] as number);
  }
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (!(most > least)) return ranks.map(() => least);
  const scale = (BINS - 1) / (most - least);
  const counts = new Uint32Array(BINS);
  for (let at = 0; at < values.length; at++) {
    const bin = (((values[at] as number) - least) * scale) | 0;
    counts[bin] = (counts[bin] as number) + 1;
  }
  return pickFromBins(values, ranks, counts, (value) => ((value - least) * scale) | 0);
}

function pickFromBins(
  values: Float32Array,
  ranks: readonly number[],
  counts: Uint32Array,
  binOf: (value: number) => number,
): number[] {
  const starts = new Uint32Array(counts.length + 1);
  for (let bin = 0; bin < counts.length; bin++) {
    starts[bin + 1] = (starts[bin] as number) + (counts[bin] as number);
  }
  const binOfRank = ranks.map((rank) => starts.findIndex((start) => start > rank) - 1);
  const slotOfBin = new Int8Array(counts.length).fill(-1);
  const members: Float32Array[] = [];
  for (const bin of binOfRank) {
    if (slotOfBin[bin] === -1) slotOfBin[bin] = members.push(new Float32Array(counts[bin] as number)) - 1;
  }
  const filled = new Uint32Array(members.length);
  for (let at = 0; at < values.length; at++) {
    const value = values[at] as number;
    const slot = slotOfBin[binOf(value)] as number;
    if (slot < 0) continue;
    const place = filled[slot] as number;
    (members[slot] as Float32Array)[place] = value;
    filled[slot] = place + 1;
  }
  for (const list of members) list.sort();
  return ranks.map((rank, at) => {
    const bin = binOfRank[at] as number;
    return members[slotOfBin[bin] as number]?.[rank - (starts[bin] as number)] as number;
  });
}

/**
 * Percentiles of finite values; the array is left as it is.
 * @param fractions each 0..1, at most 30 of them. @throws Error when there is no value.
 */
export function percentiles(values: Float32Array, fractions: readonly number[]): number[] {
  if (values.length === 0) throw new Error('No value, no percentile.');
  const places = fractions.map((fraction) => (values.length - 1) * fraction);
  const ranks = places.flatMap((place) => [
    Math.floor(place),
    Math.min(values.length - 1, Math.floor(place) + 1),
  ]);
  const found = orderStatistics(values, ranks);
  return places.map((place, at) => {
    const below = found[2 * at] as number;
    return below + (place - Math.floor(place)) * ((found[2 * at + 1] as number) - below);
  });
}

/** Median of a plain list; null when it is empty. */
export function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((p, q) => p - q);
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
}
