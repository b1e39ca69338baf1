/**
 * Finds where the ridges run, given how the planes above and below them look.
 *
 * In the flow: tiers -> [ridges] -> evidence, outlines. Each plane is described by how often its cues take each
 * value; each ridge is then the line from side to side that parts the two best, keeps to edges and does not jump
 * (dynamic programming over columns). Both are repeated in turn. Pure.
 */
import { BINS, type Columns, CUE_WEIGHTS } from './columns.ts';
import { bottomOf, type Tops } from './tiers.ts';

/** Neighbouring pixels are alike, so each says only this share of what an independent one would. */
const TEMPER = 0.08;
/** No pixel speaks louder than this for one side. */
const LOUDEST = 1.5;
/** Cost of a ridge that climbs one pixel upright where there is no edge; along an edge it is less. */
const CLIMB = 2;
/** Worth of an edge as strong as those around it, and more for stronger ones by the logarithm. */
const EDGE_WORTH = 1.2;
/** Deviation, in steps, by which counts are spread to values beside them. */
const SPREAD_STEPS = 1.5;
/** Share of a plane that may look like anything. */
const ANYTHING = 0.02;

/** Log-likelihood of each step of each cue. */
type Look = Float32Array;

const KERNEL = Array.from({ length: 9 }, (_, at) => Math.exp(-0.5 * ((at - 4) / SPREAD_STEPS) ** 2));
const KERNEL_SUM = KERNEL.reduce((sum, weight) => sum + weight, 0);

function countSteps({ steps, count, rows }: Columns, tops: Tops, k: number): Float64Array {
  const counts = new Float64Array(steps.length * BINS);
  for (let column = 0; column < count; column++) {
    const start = column * rows;
    const bottom = start + bottomOf(tops, k, column, rows);
    for (let cue = 0; cue < steps.length; cue++) {
      const values = steps[cue] as Uint8Array;
      const base = cue * BINS;
      for (let at = start + ((tops[k] as Int16Array)[column] as number); at < bottom; at++) {
        const bin = base + (values[at] as number);
        counts[bin] = (counts[bin] as number) + 1;
      }
    }
  }
  return counts;
}

/** How a tier looks. */
function lookOf(columns: Columns, tops: Tops, k: number): Look {
  const counts = countSteps(columns, tops, k);
  const look = new Float32Array(counts.length);
  for (let cue = 0; cue < columns.steps.length; cue++) {
    const base = cue * BINS;
    const total = Math.max(
      1,
      counts.subarray(base, base + BINS).reduce((sum, count) => sum + count, 0),
    );
    for (let bin = 0; bin < BINS; bin++) {
      let sum = 0;
      for (let at = 0; at < KERNEL.length; at++) {
        const from = Math.min(BINS - 1, Math.max(0, bin + at - 4));
        sum += (KERNEL[at] as number) * (counts[base + from] as number);
      }
      const share = (1 - ANYTHING) * (sum / KERNEL_SUM / total) + ANYTHING / BINS;
      look[base + bin] = Math.log(share) * (CUE_WEIGHTS[cue] as number);
    }
  }
  return look;
}

function meanEdge(
  { edge, count, rows }: Columns,
  upper: Int16Array,
  lower: (column: number) => number,
): number {
  let [sum, pixels] = [0, 0];
  for (let column = 0; column < count; column++) {
    for (let y = upper[column] as number; y < lower(column); y++, pixels++)
      sum += edge[column * rows + y] as number;
  }
  return pixels > 0 ? sum / pixels : 0;
}

/** For each step of each cue, how much more it looks like the nearer plane than like the farther. */
function ratiosOf(columns: Columns, tops: Tops, k: number): Float32Array {
  const far = lookOf(columns, tops, k - 1);
  return lookOf(columns, tops, k).map((near, at) => near - (far[at] as number));
}

/** How much more one place looks like the nearer plane than like the farther, as a log-likelihood ratio. */
function toldAt(steps: readonly Uint8Array[], ratios: Float32Array, at: number): number {
  let ratio = 0;
  for (let cue = 0; cue < steps.length; cue++) {
    ratio += ratios[cue * BINS + ((steps[cue] as Uint8Array)[at] as number)] as number;
  }
  return Math.max(-LOUDEST, Math.min(LOUDEST, TEMPER * ratio));
}

/** First and last row that a ridge may have in a column. */
type Limits = readonly [number, number];

/** What the search for one ridge works with; costs are +∞ outside the limits of their column. */
interface Search {
  readonly columns: Columns;
  readonly ratios: Float32Array;
  readonly usualEdge: number;
  readonly limitsAt: (column: number) => Limits;
  /** The row in the column before from which each row is reached cheapest, column by column. */
  readonly came: Int16Array;
}

/** Cost of a ridge in one column at each row within its limits. */
function costsOfColumn(search: Search, column: number, [first, last]: Limits, costs: Float32Array): void {
  const { columns, ratios, usualEdge } = search;
  const { rows, steps, edge } = columns;
  const start = column * rows;
  let sum = 0;
  for (let y = first; y <= last; y++) {
    const at = start + y;
    const strength = y > 0 && y < rows ? Math.max(edge[at - 1] as number, edge[at] as number) : 0;
    const inside = y > first && y < last;
    costs[y] = sum - (inside ? EDGE_WORTH * Math.log1p(strength / usualEdge) : 0);
    if (y === last) break;
    // A row that passes from below the ridge to above it takes on the farther plane's look.
    sum += toldAt(steps, ratios, at);
  }
}

/**
 * Cost of passing each row upright between a column and the one before it: little along an edge.
 * Only rows `first` up to before `last`.
 */
function climbsOf(
  { columns: { edge, rows, every }, usualEdge }: Search,
  column: number,
  [first, last]: Limits,
  climbs: Float32Array,
): void {
  const dear = CLIMB / every ** 0.5;
  for (let y = first, at = column * rows + first; y < last; y++, at++) {
    const strength = Math.max(edge[at] as number, edge[at - rows] as number) / usualEdge;
    climbs[y] = dear / (1 + strength * strength);
  }
}

/** Turns the costs of the column before into those of the cheapest way to each row, and remembers the way. */
function reach(
  { came, columns: { rows } }: Search,
  column: number,
  [first, last]: Limits,
  climbs: Float32Array,
  costs: Float32Array,
): void {
  const start = column * (rows + 1);
  for (let y = first; y <= last; y++) came[start + y] = y;
  for (let y = first + 1; y <= last; y++) {
    const climbed = (costs[y - 1] as number) + (climbs[y - 1] as number);
    if (climbed < (costs[y] as number)) {
      costs[y] = climbed;
      came[start + y] = came[start + y - 1] as number;
    }
  }
  for (let y = last - 1; y >= first; y--) {
    const climbed = (costs[y + 1] as number) + (climbs[y] as number);
    if (climbed < (costs[y] as number)) {
      costs[y] = climbed;
      came[start + y] = came[start + y + 1] as number;
    }
  }
}

/** Costs of the cheapest ridge up to the last column, at each of its rows. */
function searchAcross(search: Search): Float32Array {
  const { count, rows } = search.columns;
  const climbs = new Float32Array(rows);
  const before = new Float32Array(rows + 1).fill(Number.POSITIVE_INFINITY);
  const costs = new Float32Array(rows + 1);
  let [former, last] = [search.limitsAt(0), search.limitsAt(0)];
  costsOfColumn(search, 0, last, before);
  for (let column = 1; column < count; column++) {
    [former, last] = [last, search.limitsAt(column)];
    const span: Limits = [Math.min(former[0], last[0]), Math.max(former[1], last[1])];
    climbsOf(search, column, span, climbs);
    reach(search, column, span, climbs, before);
    costsOfColumn(search, column, last, costs);
    for (let y = span[0]; y <= span[1]; y++) {
      const within = y >= last[0] && y <= last[1];
      before[y] = within ? (before[y] as number) + (costs[y] as number) : Number.POSITIVE_INFINITY;
    }
  }
  return before;
}

/** The best line for the ridge on top of tier `k`, between the ridges above and below it. */
function bestRidge(columns: Columns, tops: Tops, k: number, farthest: number): Int16Array {
  const { count, rows } = columns;
  const ridge = (tops[k] as Int16Array).slice();
  const upper = tops[k - 1] as Int16Array;
  const lower = (column: number): number => bottomOf(tops, k, column, rows);
  const came = new Int16Array(count * (rows + 1));
  const ends = searchAcross({
    columns,
    ratios: ratiosOf(columns, tops, k),
    usualEdge: Math.max(0.2, meanEdge(columns, upper, lower)),
    limitsAt: (column) => [
      Math.max(upper[column] as number, ((tops[k] as Int16Array)[column] as number) - farthest),
      Math.min(lower(column), ((tops[k] as Int16Array)[column] as number) + farthest),
    ],
    came,
  });
  let y = 0;
  for (let row = 1; row <= rows; row++) if ((ends[row] as number) < (ends[y] as number)) y = row;
  for (let column = count - 1; column >= 0; column--) {
    ridge[column] = y;
    y = came[column * (rows + 1) + y] as number;
  }
  return ridge;
}

/**
 * Each ridge found anew between its neighbours, from the farthest on.
 *
 * @param farthest rows by which a ridge may move. @returns new tiers.
 */
export function refineRidges(columns: Columns, tops: Tops, farthest = columns.rows): Int16Array[] {
  const refined: Int16Array[] = tops.map((top) => top.slice());
  for (let k = 1; k < refined.length; k++) refined[k] = bestRidge(columns, refined, k, farthest);
  return refined;
}
