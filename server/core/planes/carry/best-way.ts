/**
 * The best line through a band along a carried ridge, and how sure it is at every sample.
 *
 * In the flow: costs by sample and offset -> [best-way] -> fit-ridge. Dynamic programming (Viterbi 1967) for the line;
 * sums over all lines, weighted by what they cost (forward and backward; Baum, Petrie, Soules & Weiss 1970), for the
 * chance that it lies elsewhere. Pure.
 */

/** Costs row by row: one row a sample, one column an offset from −`band` to `band` cells. */
export interface BandCosts {
  readonly samples: number;
  readonly band: number;
  readonly costs: Float64Array;
}

/** Largest change of the offset between neighbouring samples, cells, and what one cell of change costs. */
const MOST_BEND = 2;
const BEND_COST = 0.16;
/** Costs that are 1 apart are this many times as likely: e^(1 / WARMTH). */
const WARMTH = 0.5;

export interface BestWay {
  /** Offset of each sample, cells; whole numbers. */
  readonly offsets: Int16Array;
  /** Chance that the edge lies more than `tolerance` cells from the line, 0..1. */
  readonly elsewhere: Float64Array;
}

const WIDTH = (band: number): number => 2 * band + 1;

/** Least cost of reaching every offset of every sample from the first, itself counted. */
function reached({ samples, band, costs }: BandCosts): { best: Float64Array; from: Int16Array } {
  const width = WIDTH(band);
  const best = Float64Array.from(costs);
  const from = new Int16Array(best.length);
  for (let sample = 1; sample < samples; sample++) {
    for (let offset = 0; offset < width; offset++) {
      let [least, where] = [Number.POSITIVE_INFINITY, offset];
      for (let bend = -MOST_BEND; bend <= MOST_BEND; bend++) {
        const before = offset + bend;
        if (before < 0 || before >= width) continue;
        const cost = (best[(sample - 1) * width + before] as number) + BEND_COST * Math.abs(bend);
        if (cost < least) [least, where] = [cost, before];
      }
      const at = sample * width + offset;
      best[at] = (costs[at] as number) + least;
      from[at] = where;
    }
  }
  return { best, from };
}

function lineThrough(band: BandCosts): Int16Array {
  const { best, from } = reached(band);
  const width = WIDTH(band.band);
  const offsets = new Int16Array(band.samples);
  const last = best.subarray((band.samples - 1) * width);
  let at = last.reduce((least, cost, offset) => (cost < (last[least] as number) ? offset : least), 0);
  for (let sample = band.samples - 1; sample >= 0; sample--) {
    offsets[sample] = at - band.band;
    at = from[sample * width + at] as number;
  }
  return offsets;
}

const BENDS = Float64Array.from({ length: MOST_BEND + 1 }, (_, bend) =>
  Math.exp((-BEND_COST * bend) / WARMTH),
);

/** Chances of a row after one step of bending; the largest becomes 1, so that nothing runs out of digits. */
function stepped(row: Float64Array): Float64Array {
  const next = new Float64Array(row.length);
  for (let offset = 0; offset < row.length; offset++) {
    let sum = 0;
    for (let bend = -MOST_BEND; bend <= MOST_BEND; bend++) {
      sum += (row[offset + bend] ?? 0) * (BENDS[Math.abs(bend)] as number);
    }
    next[offset] = sum;
  }
  return next;
}

function scaledToOne(row: Float64Array): Float64Array {
  const most = row.reduce((high, value) => Math.max(high, value), 0) || 1;
  return row.map((value) => value / most);
}

/** Chances of every offset of every sample, seen from one end of the ridge. */
function seenFrom(likely: readonly Float64Array[]): Float64Array[] {
  const rows: Float64Array[] = [];
  let before: Float64Array = new Float64Array(likely[0]?.length ?? 0).fill(1);
  for (const own of likely) {
    rows.push(before);
    before = stepped(scaledToOne(before.map((value, offset) => value * (own[offset] as number))));
  }
  return rows;
}

/** @param tolerance cells within which a line is where it should be. */
export function bestWay(band: BandCosts, tolerance: number): BestWay {
  const width = WIDTH(band.band);
  const offsets = lineThrough(band);
  const likely = Array.from({ length: band.samples }, (_, sample) => {
    const row = band.costs.subarray(sample * width, (sample + 1) * width);
    const least = row.reduce((low, cost) => Math.min(low, cost), Number.POSITIVE_INFINITY);
    return row.map((cost) => Math.exp((least - cost) / WARMTH));
  });
  const [forward, backward] = [seenFrom(likely), seenFrom([...likely].reverse()).reverse()];
  const elsewhere = Float64Array.from({ length: band.samples }, (_, sample) => {
    const [own, ahead, behind] = [likely[sample], forward[sample], backward[sample]];
    if (!own || !ahead || !behind) throw new Error('Every sample has its three rows.');
    const middle = (offsets[sample] as number) + band.band;
    let [near, all] = [0, 0];
    for (let offset = 0; offset < width; offset++) {
      const chance = (own[offset] as number) * (ahead[offset] as number) * (behind[offset] as number);
      all += chance;
      if (Math.abs(offset - middle) <= tolerance) near += chance;
    }
    return all > 0 ? 1 - near / all : 1;
  });
  return { offsets, elsewhere };
}
