/**
 * One carried plane drawn to the painting's own edges, with what of its outline nobody can be sure of.
 *
 * In the flow: carried ring, sights, nearer planes already fitted -> [fit-ridge] -> outline. Where a farther plane
 * meets a nearer one, the nearer one's ridge decides and the farther one runs on under it. Pure.
 */
import { bestWay } from './best-way.ts';
import { ridgeCosts } from './ridge-costs.ts';
import { putTogether, type Stretch, type TakenApart } from './ridge-samples.ts';
import { HIDDEN, type RidgeSeen, SEEN } from './ridge-seen.ts';
import type { RingPoint } from './ring.ts';
import type { Sight } from './sight.ts';

/** How far a ridge may be drawn from where it was carried, as a share of the painting's long side. */
const BAND = 0.034;
/** A ridge this near to where it should be is right, as a share of the long side. */
export const RIGHT = 0.009;
/** A side is unsure when the edge lies elsewhere with more than this chance. */
const UNSURE = 0.4;
/** Likeness at which every second ridge is wrong, and by how much more it is e times as sure. */
const HALF_SURE = 0.5;
const SURER_BY = 0.09;
/** Samples before and after that a likeness is taken over. */
const AROUND = 12;
/** Shorter sure or unsure runs than this, in samples, belong to what is around them. */
const SHORTEST_RUN = 7;
/** A hidden ridge follows the nearer one that lies this near, cells, and goes on under it by so much. */
const FOLLOWS = 9;
const UNDER = 4;
/** Offsets are evened out over this many samples to each side: they come in whole cells. */
const EVEN = 2;

/** Where the samples of nearer planes lay and where they lie now, x and y by turns. */
export interface Fitted {
  readonly before: number[];
  readonly after: number[];
}

export interface FitPicture {
  readonly sight: Sight;
  /** The carried planes on the grid of the sight. */
  readonly labels: Uint8Array;
}

function evenedOffsets(offsets: Int16Array): Float64Array {
  return Float64Array.from(offsets, (_, sample) => {
    let [sum, count] = [0, 0];
    for (let aside = -EVEN; aside <= EVEN; aside++) {
      const offset = offsets[sample + aside];
      if (offset === undefined) continue;
      sum += offset;
      count++;
    }
    return sum / count;
  });
}

/** Flips runs that are too short to be seen. */
export function longRuns(flags: Uint8Array): Uint8Array {
  const result = flags.slice();
  for (const value of [0, 1]) {
    for (let from = 0; from < result.length; ) {
      let to = from;
      while (to < result.length && result[to] === result[from]) to++;
      const within = from > 0 && to < result.length;
      if (within && result[from] === value && to - from < SHORTEST_RUN) result.fill(1 - value, from, to);
      from = to;
    }
  }
  return result;
}

/** The nearest sample of a nearer plane within `FOLLOWS`; −1 where there is none. */
function nearest({ before }: Fitted, x: number, y: number): number {
  let [best, least] = [-1, FOLLOWS * FOLLOWS];
  for (let at = 0; at < before.length; at += 2) {
    const off = ((before[at] as number) - x) ** 2 + ((before[at + 1] as number) - y) ** 2;
    if (off < least) [best, least] = [at, off];
  }
  return best;
}

/** How like the first picture a ridge looks where it was drawn to: by sample with its neighbours, half of it the whole. */
function likenessOf(
  match: Float32Array,
  offsets: Int16Array,
  { state, known }: RidgeSeen,
  band: number,
): Float64Array {
  const across = 2 * band + 1;
  const own = Float64Array.from(offsets, (offset, sample) =>
    state[sample] === SEEN && known[sample] === 1
      ? (match[sample * across + offset + band] as number)
      : Number.NaN,
  );
  const meanOf = (values: Float64Array): number => {
    const told = values.filter((value) => !Number.isNaN(value));
    return told.length === 0 ? 0 : told.reduce((sum, value) => sum + value, 0) / told.length;
  };
  const whole = meanOf(own);
  return own.map((value, sample) => {
    if (Number.isNaN(value)) return 0;
    const near = meanOf(own.subarray(Math.max(0, sample - AROUND), sample + AROUND + 1));
    return (near + whole) / 2;
  });
}

/** Chance of being wrong that goes with a likeness: as seen on the rendered scenes and on half of the traced ones. */
const chanceOf = (likeness: number): number => 1 / (1 + Math.exp((likeness - HALF_SURE) / SURER_BY));

function movedSamples(
  stretch: Stretch,
  offsets: Float64Array,
  { state }: RidgeSeen,
  nearer: Fitted,
): Float64Array {
  const result = new Float64Array(stretch.at.length);
  for (let sample = 0, at = 0; sample < stretch.length; sample++, at += 2) {
    const [x, y] = [stretch.at[at] as number, stretch.at[at + 1] as number];
    const [dx, dy] = [stretch.out[at] as number, stretch.out[at + 1] as number];
    const guide = state[sample] === HIDDEN ? nearest(nearer, x, y) : -1;
    if (guide >= 0) {
      result[at] = x + (nearer.after[guide] as number) - (nearer.before[guide] as number) + dx * UNDER;
      result[at + 1] =
        y + (nearer.after[guide + 1] as number) - (nearer.before[guide + 1] as number) + dy * UNDER;
      continue;
    }
    const offset = offsets[sample] as number;
    result[at] = x + dx * offset;
    result[at + 1] = y + dy * offset;
  }
  return result;
}

/**
 * @param nearer samples of the planes before this one; those of this plane are added to it.
 * @returns the ring, which may still cross itself and reach beyond the painting.
 */
export function fitRidge(
  taken: TakenApart,
  plane: number,
  seen: readonly RidgeSeen[],
  { sight, labels }: FitPicture,
  nearer: Fitted,
): RingPoint[] {
  const longSide = Math.max(sight.columns, sight.rows);
  const band = Math.max(3, Math.round(BAND * longSide));
  const movedTo: Float64Array[] = [];
  const unsure: Uint8Array[] = [];
  const own: Fitted = { before: [], after: [] };
  taken.stretches.forEach((stretch, index) => {
    const view = seen[index] as RidgeSeen;
    const costs = ridgeCosts(stretch, plane, view, sight, labels, band);
    const { offsets, elsewhere } = bestWay(costs, RIGHT * longSide);
    const at = movedSamples(stretch, evenedOffsets(offsets), view, nearer);
    movedTo.push(at);
    const likeness = likenessOf(costs.match, offsets, view, band);
    const doubt = Uint8Array.from(elsewhere, (chance, sample) => {
      const wrong = 1 - (1 - chance) * (1 - chanceOf(likeness[sample] as number));
      return view.state[sample] === SEEN && wrong > UNSURE ? 1 : 0;
    });
    unsure.push(longRuns(doubt));
    for (let each = 0; each < at.length; each++) {
      own.before.push(stretch.at[each] as number);
      own.after.push(at[each] as number);
    }
  });
  for (let each = 0; each < own.before.length; each++) {
    nearer.before.push(own.before[each] as number);
    nearer.after.push(own.after[each] as number);
  }
  return putTogether(taken, movedTo, unsure, sight);
}
