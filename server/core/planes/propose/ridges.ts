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
export function lookOf(columns: Columns, tops: Tops, k: number): Look {
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

/** How much more one place looks like the nearer plane than like the farther, as a log-likelihood ratio. */
function toldAt(steps: readonly Uint8Array[], [far, near]: readonly [Look, Look], at: number): number {
  let ratio = 0;
  for (let cue = 0; cue < steps.length; cue++) {
    const bin = cue * BINS + ((steps[cue] as Uint8Array)[at] as number);
    ratio += (near[bin] as number) - (far[bin] as number);
  }
  return Math.max(-LOUDEST, Math.min(LOUDEST, TEMPER * ratio));
}

/** Cost of a ridge in one column at each row, +∞ outside its tiers. */
function costsOfColumn(
  columns: Columns,
  column: number,
  looks: readonly [Look, Look],
  limits: readonly [number, number],
  usualEdge: number,
  costs: Float32Array,
): void {
  const { rows, steps, edge } = columns;
  const start = column * rows;
  costs.fill(Number.POSITIVE_INFINITY);
  let sum = 0;
  for (let y = limits[0]; y <= limits[1]; y++) {
    const at = start + y;
    const strength = y > 0 && y < rows ? Math.max(edge[at - 1] as number, edge[at] as number) : 0;
    const inside = y > limits[0] && y < limits[1];
    costs[y] = sum - (inside ? EDGE_WORTH * Math.log1p(strength / usualEdge) : 0);
    if (y === limits[1]) break;
    // A row that passes from below the ridge to above it takes on the farther plane's look.
    sum += toldAt(steps, looks, at);
  }
}

/** Adds the cheapest way from the column before, and remembers it. @param climbs cost of passing each row upright. */
function step(before: Float32Array, costs: Float32Array, climbs: Float32Array, came: Int16Array): void {
  const last = before.length - 1;
  const reach = before.slice();
  for (let y = 0; y <= last; y++) came[y] = y;
  for (let y = 1; y <= last; y++) {
    const climbed = (reach[y - 1] as number) + (climbs[y - 1] as number);
    if (climbed < (reach[y] as number)) {
      reach[y] = climbed;
      came[y] = came[y - 1] as number;
    }
  }
  for (let y = last - 1; y >= 0; y--) {
    const climbed = (reach[y + 1] as number) + (climbs[y] as number);
    if (climbed < (reach[y] as number)) {
      reach[y] = climbed;
      came[y] = came[y + 1] as number;
    }
  }
  for (let y = 0; y <= last; y++) costs[y] = (costs[y] as number) + (reach[y] as number);
}

/** Cost of passing each row upright between a column and the one before it: little along an edge. */
function climbsOf(
  { edge, rows, every }: Columns,
  column: number,
  usualEdge: number,
  climbs: Float32Array,
): void {
  const dear = CLIMB / every ** 0.5;
  for (let y = 0, at = column * rows; y < rows; y++, at++) {
    const strength = Math.max(edge[at] as number, edge[at - rows] as number) / usualEdge;
    climbs[y] = dear / (1 + strength * strength);
  }
}

/** The best line for the ridge on top of tier `k`, between the ridges above and below it. */
function bestRidge(columns: Columns, tops: Tops, k: number, reach: number): Int16Array {
  const { count, rows } = columns;
  const looks = [lookOf(columns, tops, k - 1), lookOf(columns, tops, k)] as const;
  const ridge = (tops[k] as Int16Array).slice();
  const upper = tops[k - 1] as Int16Array;
  const lower = (column: number): number => bottomOf(tops, k, column, rows);
  const limitsAt = (column: number): [number, number] => [
    Math.max(upper[column] as number, (ridge[column] as number) - reach),
    Math.min(lower(column), (ridge[column] as number) + reach),
  ];
  const usualEdge = Math.max(0.2, meanEdge(columns, upper, lower));
  const came = Array.from({ length: count }, () => new Int16Array(rows + 1));
  const climbs = new Float32Array(rows);
  let before = new Float32Array(rows + 1);
  for (let column = 0; column < count; column++) {
    const costs = new Float32Array(rows + 1);
    costsOfColumn(columns, column, looks, limitsAt(column), usualEdge, costs);
    if (column > 0) {
      climbsOf(columns, column, usualEdge, climbs);
      step(before, costs, climbs, came[column] as Int16Array);
    }
    before = costs;
  }
  let y = 0;
  for (let row = 1; row <= rows; row++) if ((before[row] as number) < (before[y] as number)) y = row;
  for (let column = count - 1; column >= 0; column--) {
    ridge[column] = y;
    y = (came[column] as Int16Array)[y] as number;
  }
  return ridge;
}

/**
 * Each ridge found anew between its neighbours, from the farthest on.
 *
 * @param reach rows by which a ridge may move. @returns new tiers.
 */
export function refineRidges(columns: Columns, tops: Tops, reach = columns.rows): Int16Array[] {
  const refined: Int16Array[] = tops.map((top) => top.slice());
  for (let k = 1; k < refined.length; k++) refined[k] = bestRidge(columns, refined, k, reach);
  return refined;
}
