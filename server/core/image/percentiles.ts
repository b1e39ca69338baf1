/**
 * Percentiles by linear interpolation between order statistics, without sorting everything.
 *
 * In the flow: samples of a plane -> [percentiles] -> figures. Pure.
 * Source: Hyndman & Fan (1996), "Sample quantiles in statistical packages", definition 7.
 */

/** Values lie from `least` to `most`, but for rounding; the nearer these are, the finer the result. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

export const LIGHTNESS_RANGE: Range = { least: 0, most: 100 };
/** a*, b* and C*ab of anything in sRGB. */
export const COLOUR_RANGE: Range = { least: -128, most: 136 };
export const UNIT_RANGE: Range = { least: 0, most: 1 };

const BINS = 65536;
/** Up to this many samples they are sorted, and the result is exact. */
const SORT_LIMIT = 4096;

/** Kept between calls: a quarter of a megabyte each time would be most of the garbage of a measurement. */
const scratch = new Uint32Array(BINS);

function countBins(values: Float32Array, { least, most }: Range): Uint32Array {
  const counts = scratch.fill(0);
  const scale = BINS / (most - least);
  for (let at = 0; at < values.length; at++) {
    const bin = ((values[at] as number) - least) * scale;
    const within = bin < 0 ? 0 : bin >= BINS ? BINS - 1 : bin | 0;
    counts[within] = (counts[within] as number) + 1;
  }
  return counts;
}

/** Reads ranks off a histogram; ranks must rise. Inside a bin its members are taken as evenly spread. */
function ranksFromBins(counts: Uint32Array, { least, most }: Range, ranks: readonly number[]): number[] {
  const width = (most - least) / BINS;
  let bin = 0;
  let before = 0;
  return ranks.map((rank) => {
    while (before + (counts[bin] as number) <= rank) before += counts[bin++] as number;
    return least + width * (bin + (rank - before + 0.5) / (counts[bin] as number));
  });
}

/** Values at the given rising ranks (from 0, each within the array). */
function orderStatistics(values: Float32Array, ranks: readonly number[], range: Range): number[] {
  if (values.length > SORT_LIMIT) return ranksFromBins(countBins(values, range), range, ranks);
  const sorted = values.slice().sort();
  return ranks.map((rank) => sorted[rank] as number);
}

/**
 * Percentiles of finite values; the array is left as it is.
 *
 * Exact up to 4,096 values; beyond, within 1/65,536 of the range (0.0015 L*, 0.004 C*).
 * @param fractions each 0..1, rising. @throws Error when there is no value.
 */
export function percentiles(values: Float32Array, fractions: readonly number[], range: Range): number[] {
  if (values.length === 0) throw new Error('No value, no percentile.');
  const places = fractions.map((fraction) => (values.length - 1) * fraction);
  const last = values.length - 1;
  const ranks = places.flatMap((place) => [Math.floor(place), Math.min(last, Math.floor(place) + 1)]);
  const rising = [...new Set(ranks)].sort((p, q) => p - q);
  const found = orderStatistics(values, rising, range);
  const valueAt = new Map(rising.map((rank, at) => [rank, found[at] as number]));
  return places.map((place, at) => {
    const below = valueAt.get(ranks[2 * at] as number) as number;
    const above = valueAt.get(ranks[2 * at + 1] as number) as number;
    return below + (place - Math.floor(place)) * (above - below);
  });
}

/** Median of a plain list; null when it is empty. */
export function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((p, q) => p - q);
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
}
