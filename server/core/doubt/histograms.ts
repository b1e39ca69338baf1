/**
 * One figure's histogram in every block, and the percentiles of any mixture of blocks.
 *
 * In the flow: blocks + values -> [histograms] -> bootstrap. Only bins that hold something are kept. Pure.
 */
import type { Range } from '../image/percentiles.ts';
import type { Blocks } from './blocks.ts';

const BINS = 512;

export interface Histograms {
  readonly range: Range;
  /** Bins and counts of block k stand at `start[k]` up to `start[k + 1]`. */
  readonly start: Int32Array;
  readonly bins: Uint16Array;
  readonly counts: Uint16Array;
}

/** @param valueAt of a place in the list of the plane's cells. */
export function histogramsOf(blocks: Blocks, valueAt: (place: number) => number, range: Range): Histograms {
  const { places, blockOf, count } = blocks;
  const scale = BINS / (range.most - range.least);
  const full = new Uint16Array(count * BINS);
  for (let at = 0; at < places.length; at++) {
    const bin = Math.floor((valueAt(places[at] as number) - range.least) * scale);
    const key = (blockOf[at] as number) * BINS + Math.min(BINS - 1, Math.max(0, bin));
    full[key] = (full[key] as number) + 1;
  }
  const start = new Int32Array(count + 1);
  const bins = new Uint16Array(places.length);
  const counts = new Uint16Array(places.length);
  let entries = 0;
  for (let block = 0, key = 0; block < count; block++) {
    for (let bin = 0; bin < BINS; bin++, key++) {
      const held = full[key] as number;
      if (held === 0) continue;
      bins[entries] = bin;
      counts[entries++] = held;
    }
    start[block + 1] = entries;
  }
  return { range, start, bins, counts };
}

/** Whole numbers: no mixture holds more than some thousands of cells. */
const mixed = new Int32Array(BINS);

/** Percentiles of a mixture. @param weights of the blocks. @param fractions rising, 0..1. */
export function mixedPercentiles(
  { range, start, bins, counts }: Histograms,
  weights: Uint16Array,
  fractions: readonly number[],
): number[] {
  mixed.fill(0);
  let total = 0;
  for (let block = 0; block < weights.length; block++) {
    const weight = weights[block] as number;
    if (weight === 0) continue;
    for (let at = start[block] as number; at < (start[block + 1] as number); at++) {
      const count = weight * (counts[at] as number);
      const bin = bins[at] as number;
      mixed[bin] = (mixed[bin] as number) + count;
      total += count;
    }
  }
  const width = (range.most - range.least) / BINS;
  let bin = 0;
  let before = 0;
  return fractions.map((fraction) => {
    const rank = fraction * total;
    while (bin < BINS - 1 && before + (mixed[bin] as number) < rank) before += mixed[bin++] as number;
    const held = mixed[bin] as number;
    return range.least + width * (bin + (held === 0 ? 0.5 : (rank - before) / held));
  });
}
