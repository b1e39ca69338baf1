/**
 * How a single plane was moved in the painting: the shift and size under which the painting looks across its ridge as
 * the first picture does.
 *
 * In the flow: stretches as placed -> [find-moves] -> carried rings -> fit-ridge. Every shift and size within reach is
 * tried on every third place of the profiles, the best once more in small steps on all. Pure.
 */
import { NO_PLANE } from '../label-map.ts';
import type { Stretch } from './ridge-samples.ts';
import { HALF_PROFILE, HIDDEN, PROFILE, type RidgeSeen } from './ridge-seen.ts';
import type { Sight } from './sight.ts';

/** A shift in cells and a size, about a place in cells. */
export interface CellMove {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export const STAY: CellMove = { x: 0, y: 0, scale: 1 };

/** Reach, as shares of the painting's long side, and sizes tried. */
const REACH = 0.065;
const STEPS = 8;
const SIZES = [0.92, 0.96, 1, 1.04, 1.08];
/** What moving as far as can be costs, and what the largest change of size costs, in correlation. */
const FAR_COST = 0.25;
const SIZE_COST = 0.05;
/** A move must make the ridge better by this much, or the plane stays. */
const LEAST_GAIN = 0.01;
/** About so many samples are looked at, at most. */
const PROBES = 160;
/** Every so many places of a profile are looked at first. */
const COARSE = 3;
/** Shares of the largest step, finer and finer. */
const FINER = [0.5, 0.25, 0.12];
/** What colour counts against lightness. */
const WEIGHTS = [1, 0.4, 0.4] as const;
/** Deviation below which a profile says nothing, in CIELAB units. */
const NOISE = 1.5;

/** Places of the samples that show, ways out and profiles, flat. */
interface Probes {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly outX: Float64Array;
  readonly outY: Float64Array;
  readonly profiles: Float32Array;
  /** The plane behind each. */
  readonly behind: Uint8Array;
  readonly middle: readonly [number, number];
}

function probesOf(stretches: readonly Stretch[], seen: readonly RidgeSeen[]): Probes {
  const shown = stretches.flatMap((stretch, index) => {
    const { state, known } = seen[index] as RidgeSeen;
    const samples: [number, number][] = [];
    for (let sample = 0; sample < stretch.length; sample++) {
      if (state[sample] !== HIDDEN && known[sample] === 1) samples.push([index, sample]);
    }
    return samples;
  });
  const every = Math.max(1, Math.floor(shown.length / PROBES));
  const picked = shown.filter((_, at) => at % every === 0);
  const read = (of: 'at' | 'out', aside: 0 | 1): Float64Array =>
    Float64Array.from(picked, ([index, sample]) => stretches[index]?.[of][sample * 2 + aside] ?? 0);
  const each = 3 * PROFILE;
  const profiles = new Float32Array(picked.length * each);
  picked.forEach(([index, sample], at) => {
    const own = (seen[index] as RidgeSeen).profiles;
    profiles.set(own.subarray(sample * each, (sample + 1) * each), at * each);
  });
  const behind = Uint8Array.from(picked, ([index, sample]) => seen[index]?.behind[sample] ?? NO_PLANE);
  const [x, y] = [read('at', 0), read('at', 1)];
  const mean = (values: Float64Array): number =>
    values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
  return {
    count: picked.length,
    ...{ x, y, outX: read('out', 0), outY: read('out', 1), profiles, behind },
    middle: [mean(x), mean(y)],
  };
}

/** What the ridge before one plane says when the painter turned light and dark about there. */
const TURNED = 0.5;
const agreedBy = new Float64Array(NO_PLANE + 1);

/** Correlation of all profiles together with what the painting has there. @param every place of a profile looked at. */
function likenessAt(
  probes: Probes,
  { columns, rows, channels }: Sight,
  move: CellMove,
  every: number,
): number {
  const [mx, my] = probes.middle;
  let [mine, theirs, count] = [0, 0, 0];
  agreedBy.fill(0);
  for (let probe = 0; probe < probes.count; probe++) {
    const x = mx + ((probes.x[probe] as number) - mx) * move.scale + move.x;
    const y = my + ((probes.y[probe] as number) - my) * move.scale + move.y;
    if (x < 0 || y < 0 || x >= columns || y >= rows) continue;
    const [ox, oy] = [probes.outX[probe] as number, probes.outY[probe] as number];
    const behind = probes.behind[probe] as number;
    count++;
    for (let channel = 0; channel < 3; channel++) {
      const values = channels[channel] as Float32Array;
      const start = (probe * 3 + channel) * PROFILE + HALF_PROFILE;
      let [sum, squares, product, own, places] = [0, 0, 0, 0, 0];
      for (let far = -HALF_PROFILE + 1; far < HALF_PROFILE; far += every) {
        const column = Math.min(columns - 1, Math.max(0, Math.floor(x + ox * far)));
        const row = Math.min(rows - 1, Math.max(0, Math.floor(y + oy * far)));
        const value = values[row * columns + column] as number;
        const expected = probes.profiles[start + far] as number;
        sum += value;
        squares += value * value;
        product += value * expected;
        own += expected * expected;
        places++;
      }
      const weight = WEIGHTS[channel] as number;
      agreedBy[behind] = (agreedBy[behind] as number) + weight * product;
      mine += weight * own;
      theirs += weight * (squares - (sum * sum) / places + places * NOISE ** 2);
    }
  }
  let both = 0;
  for (const agreed of agreedBy) both += agreed > 0 ? agreed : -TURNED * agreed;
  return count * 4 < probes.count || mine <= 0 ? 0 : both / Math.sqrt(mine * theirs);
}

type Worth = (move: CellMove, every: number) => number;

/** The best of some moves. */
function better(worth: Worth, every: number, moves: Iterable<CellMove>): CellMove {
  let [best, most] = [STAY, Number.NEGATIVE_INFINITY];
  for (const move of moves) {
    const value = worth(move, every);
    if (value > most) [best, most] = [move, value];
  }
  return best;
}

/** Every shift and size within reach. */
function coarsest(worth: Worth, step: number): CellMove {
  const moves: CellMove[] = [STAY];
  for (let x = -STEPS; x <= STEPS; x++) {
    for (let y = -STEPS; y <= STEPS; y++) {
      if (x * x + y * y > STEPS * STEPS) continue;
      for (const scale of SIZES) moves.push({ x: x * step, y: y * step, scale });
    }
  }
  return better(worth, COARSE, moves);
}

/** From there in smaller and smaller steps. */
function finest(worth: Worth, from: CellMove, step: number): CellMove {
  let best = from;
  for (const share of FINER) {
    const { x, y, scale } = best;
    const moves: CellMove[] = [best];
    for (let right = -2; right <= 2; right++) {
      for (let below = -2; below <= 2; below++) {
        for (const size of [-0.04, 0, 0.04]) {
          moves.push({
            x: x + right * share * step,
            y: y + below * share * step,
            scale: scale + size * share,
          });
        }
      }
    }
    best = better(worth, 1, moves);
  }
  return best;
}

/**
 * @param painting on the grid of the samples.
 * @returns `STAY` where nothing is seen of the ridge or no move makes it better.
 */
export function findMove(
  stretches: readonly Stretch[],
  seen: readonly RidgeSeen[],
  painting: Sight,
): { move: CellMove; about: readonly [number, number] } {
  const probes = probesOf(stretches, seen);
  const about = probes.middle;
  if (probes.count === 0) return { move: STAY, about };
  const reach = REACH * Math.max(painting.columns, painting.rows);
  const cost = ({ x, y, scale }: CellMove): number =>
    (FAR_COST * (x * x + y * y)) / reach ** 2 + (SIZE_COST * (scale - 1) ** 2) / 0.08 ** 2;
  const worth = (move: CellMove, every: number): number =>
    likenessAt(probes, painting, move, every) - cost(move);
  const best = finest(worth, coarsest(worth, reach / STEPS), reach / STEPS);
  const move = worth(best, 1) > worth(STAY, 1) + LEAST_GAIN ? best : STAY;
  return { move, about };
}
