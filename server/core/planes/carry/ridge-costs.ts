/**
 * What it costs a carried ridge to lie at each offset from where it was carried.
 *
 * In the flow: stretch, painting -> [ridge-costs] -> best-way. Along the way out of the plane the painting is read; an
 * offset is cheap where it has a step like the one carried over, and where it parts what is read into two even halves
 * (least squares with one change, as in Page 1954). Pure.
 */
import { NO_PLANE } from '../label-map.ts';
import type { BandCosts } from './best-way.ts';
import { edgeLikeness } from './edge-likeness.ts';
import type { Stretch } from './ridge-samples.ts';
import { HALF_PROFILE, PROFILE, type RidgeSeen, SEEN } from './ridge-seen.ts';
import type { Sight } from './sight.ts';

/** Weights of looking as the first picture does, of a step found, of even halves, and of staying. */
const BY_MATCH = 1.6;
const BY_EDGE = 0.5;
const BY_HALVES = 0.5;
const BY_STAYING = 0.5;
/** Cells on each side of an offset whose means make its step. */
const STEP_OVER = 3;
/** Cells read beyond the band. */
const MARGIN = HALF_PROFILE;
/** Samples before and after that are read with one: grain is evened out along the ridge. */
const ALONG_STEP = 2;
const ALONG_HALVES = 4;
const ALONG_MATCH = 5;
/** A channel that varies less than this, in CIELAB units, says nothing. */
const NOISE = 1.2;
const COLOUR = 0.5;

/** What is read along the ways out of all samples: L*, a*, b* and a weight by sample and place. */
interface Read {
  readonly width: number;
  readonly channels: readonly Float32Array[];
  readonly weights: Float32Array;
}

function read(
  stretch: Stretch,
  plane: number,
  seen: RidgeSeen,
  sight: Sight,
  labels: Uint8Array,
  band: number,
): Read {
  const { columns, rows, channels } = sight;
  const half = band + MARGIN;
  const width = 2 * half + 1;
  const values = channels.map(() => new Float32Array(stretch.length * width));
  const weights = new Float32Array(stretch.length * width);
  for (let sample = 0; sample < stretch.length; sample++) {
    const [x, y] = [stretch.at[sample * 2] as number, stretch.at[sample * 2 + 1] as number];
    const [dx, dy] = [stretch.out[sample * 2] as number, stretch.out[sample * 2 + 1] as number];
    const behind = seen.behind[sample] as number;
    for (let far = -half; far <= half; far++) {
      const [column, row] = [Math.floor(x + dx * far), Math.floor(y + dy * far)];
      const to = sample * width + far + half;
      const held =
        Math.min(rows - 1, Math.max(0, row)) * columns + Math.min(columns - 1, Math.max(0, column));
      const inPicture = column >= 0 && row >= 0 && column < columns && row < rows;
      values.forEach((value, channel) => {
        value[to] = (channels[channel] as Float32Array)[held] as number;
      });
      const label = labels[held] as number;
      const ours = label === plane || label === behind || label === NO_PLANE || Math.abs(far) <= STEP_OVER;
      weights[to] = inPicture && ours ? 1 : 0;
    }
  }
  return { width, channels: values, weights };
}

/** Every row as the mean of the rows up to `reach` before and after it. */
function evened(values: Float32Array, width: number, length: number, reach: number): Float32Array {
  const result = new Float32Array(values.length);
  for (let place = 0; place < width; place++) {
    let [sum, count] = [0, 0];
    for (let sample = 0; sample < Math.min(reach, length); sample++) {
      sum += values[sample * width + place] as number;
      count++;
    }
    for (let sample = 0; sample < length; sample++) {
      if (sample + reach < length) {
        sum += values[(sample + reach) * width + place] as number;
        count++;
      }
      if (sample - reach - 1 >= 0) {
        sum -= values[(sample - reach - 1) * width + place] as number;
        count--;
      }
      result[sample * width + place] = sum / count;
    }
  }
  return result;
}

/** Likeness of the step at each offset to the one expected, 0..1. */
function steps(
  { width, channels }: Read,
  { expected }: RidgeSeen,
  length: number,
  band: number,
): Float32Array {
  const soft = channels.map((channel) => evened(channel, width, length, ALONG_STEP));
  const across = 2 * band + 1;
  const result = new Float32Array(length * across);
  for (let sample = 0; sample < length; sample++) {
    for (let offset = 0; offset < across; offset++) {
      // The edge lies between two places; the step is taken over the places on both sides of it.
      const middle = sample * width + offset + MARGIN;
      const step = soft.map((channel) => {
        let [inner, outer] = [0, 0];
        for (let aside = 1; aside <= STEP_OVER; aside++) {
          inner += channel[middle - aside] as number;
          outer += channel[middle + aside] as number;
        }
        return (outer - inner) / STEP_OVER;
      });
      const [L = 0, a = 0, b = 0] = step;
      result[sample * across + offset] = edgeLikeness(L, a, b, expected, sample * 3);
    }
  }
  return result;
}

/** For one channel: what parting each row at each offset explains of its squares, and the squares themselves. */
function parted(channel: Float32Array, { width, weights }: Read, length: number, band: number) {
  const across = 2 * band + 1;
  const explained = new Float32Array(length * across);
  const all = new Float32Array(length);
  for (let sample = 0; sample < length; sample++) {
    const start = sample * width;
    let [count, sum, squares] = [0, 0, 0];
    for (let place = 0; place < width; place++) {
      const [weight, value] = [weights[start + place] as number, channel[start + place] as number];
      count += weight;
      sum += weight * value;
      squares += weight * value * value;
    }
    if (count === 0) continue;
    all[sample] = Math.max(0, squares - (sum * sum) / count) + count * NOISE ** 2;
    let [inner, innerSum] = [0, 0];
    for (let place = 0; place < width - MARGIN; place++) {
      const offset = place - MARGIN;
      const outer = count - inner;
      if (offset >= 0 && inner > 0 && outer > 0) {
        explained[sample * across + offset] =
          innerSum ** 2 / inner + (sum - innerSum) ** 2 / outer - sum ** 2 / count;
      }
      inner += weights[start + place] as number;
      innerSum += (weights[start + place] as number) * (channel[start + place] as number);
    }
  }
  return { explained, all };
}

/** Share of what varies that parting at each offset explains, together with the neighbours along the ridge. */
function halves(reading: Read, length: number, band: number): Float32Array {
  const across = 2 * band + 1;
  const explained = new Float32Array(length * across);
  const all = new Float32Array(length);
  reading.channels.forEach((channel, at) => {
    const own = parted(channel, reading, length, band);
    const weight = at === 0 ? 1 : COLOUR;
    for (let cell = 0; cell < explained.length; cell++) {
      explained[cell] = (explained[cell] as number) + weight * (own.explained[cell] as number);
    }
    for (let sample = 0; sample < length; sample++) {
      all[sample] = (all[sample] as number) + weight * (own.all[sample] as number);
    }
  });
  const [together, of] = [
    evened(explained, across, length, ALONG_HALVES),
    evened(all, 1, length, ALONG_HALVES),
  ];
  return together.map((value, cell) => {
    const whole = of[Math.floor(cell / across)] as number;
    return whole > 0 ? value / whole : 0;
  });
}

/** Offsets at which it is asked whether the painter turned light and dark about, cells. */
const NEAR = 4;
const TURNED = 0.6;

/** Where a ridge before one plane agrees only with light and dark turned about, they are turned back. */
function turnBack(both: Float32Array, { behind, known }: RidgeSeen, length: number, band: number): void {
  const across = 2 * band + 1;
  const sums = new Map<number, Float64Array>();
  for (let sample = 0; sample < length; sample++) {
    if (known[sample] !== 1) continue;
    const sum = sums.get(behind[sample] as number) ?? new Float64Array(2 * NEAR + 1);
    sums.set(behind[sample] as number, sum);
    for (let near = -NEAR; near <= NEAR; near++) {
      sum[near + NEAR] = (sum[near + NEAR] as number) + (both[sample * across + band + near] as number);
    }
  }
  const turned = [...sums].filter(([, sum]) => {
    const strongest = sum.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most), 0);
    return strongest < 0;
  });
  for (let cell = 0; cell < both.length; cell++) {
    const plane = behind[Math.floor(cell / across)] as number;
    if (turned.some(([other]) => other === plane)) both[cell] = -TURNED * (both[cell] as number);
  }
}

/** Correlation of the first picture's profiles with what is read at each offset, neighbours taken together; −1..1. */
function matches({ width, channels }: Read, seen: RidgeSeen, length: number, band: number): Float32Array {
  const across = 2 * band + 1;
  const [both, theirs] = [new Float32Array(length * across), new Float32Array(length * across)];
  const mine = new Float32Array(length);
  for (let sample = 0; sample < length; sample++) {
    if (seen.known[sample] !== 1) continue;
    channels.forEach((values, channel) => {
      const weight = channel === 0 ? 1 : COLOUR;
      const start = (sample * 3 + channel) * PROFILE;
      const profile = seen.profiles.subarray(start, start + PROFILE);
      for (const value of profile) mine[sample] = (mine[sample] as number) + weight * value * value;
      for (let offset = 0; offset < across; offset++) {
        const from = sample * width + offset;
        let [sum, squares, product] = [0, 0, 0];
        for (let place = 0; place < PROFILE; place++) {
          const value = values[from + place] as number;
          sum += value;
          squares += value * value;
          product += value * (profile[place] as number);
        }
        const cell = sample * across + offset;
        both[cell] = (both[cell] as number) + weight * product;
        theirs[cell] =
          (theirs[cell] as number) + weight * (squares - (sum * sum) / PROFILE + PROFILE * NOISE ** 2);
      }
    });
  }
  turnBack(both, seen, length, band);
  const [products, squares] = [
    evened(both, across, length, ALONG_MATCH),
    evened(theirs, across, length, ALONG_MATCH),
  ];
  const own = evened(mine, 1, length, ALONG_MATCH);
  return products.map((product, cell) => {
    const under = (own[Math.floor(cell / across)] as number) * (squares[cell] as number);
    return under > 0 ? product / Math.sqrt(under) : 0;
  });
}

/** @param band largest offset, cells. Where nothing is seen, only staying counts. */
export function ridgeCosts(
  stretch: Stretch,
  plane: number,
  seen: RidgeSeen,
  sight: Sight,
  labels: Uint8Array,
  band: number,
): BandCosts & { readonly match: Float32Array } {
  const { length } = stretch;
  const reading = read(stretch, plane, seen, sight, labels, band);
  const likeness = steps(reading, seen, length, band);
  const half = halves(reading, length, band);
  const match = matches(reading, seen, length, band);
  const across = 2 * band + 1;
  const costs = Float64Array.from(likeness, (like, cell) => {
    const offset = (cell % across) - band;
    const staying = BY_STAYING * (offset / band) ** 2;
    const isSeen = seen.state[Math.floor(cell / across)] === SEEN;
    if (!isSeen) return staying;
    return staying - BY_MATCH * (match[cell] as number) - BY_EDGE * like - BY_HALVES * (half[cell] as number);
  });
  return { samples: length, band, costs, match };
}
