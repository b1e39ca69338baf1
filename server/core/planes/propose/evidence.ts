/**
 * How much speaks for a ridge: what changes across it, along its whole length.
 *
 * In the flow: ridges -> [evidence] -> tier tree. Signed changes of colour and texture close above and below
 * the ridge, with a slope that runs on through it (a sky, air in a valley) taken off; an edge stronger than
 * those a little to either side; and how unlike the two planes look as wholes. Pure.
 */
import { BINS, type Columns, CUE_WEIGHTS } from './columns.ts';
import { COLOURS, CUES } from './cues.ts';
import { bottomOf, type Tops } from './tiers.ts';

/** Rows looked at close to the ridge, and farther off, to either side: from, up to. */
const NEAR = [1, 5] as const;
const FAR = [7, 13] as const;
/** Squared errors taken off: a ridge was sought, so some change along it is found even in noise. */
const CERTAINTY = 4;
/** Columns of the copy over which texture repeats itself: one independent sample. */
const SAMPLE_PX = 16;

export interface Evidence {
  /** Squared signed change, in dE², less what chance would leave. */
  readonly step: number;
  /** How much stronger the edge is than those beside it, as a ratio less 1; 0 where it is not. */
  readonly edge: number;
  /** How unlike the two planes look, 0..1 a cue, summed. */
  readonly unlike: number;
  /** Share of the picture's width along which the two planes meet. */
  readonly width: number;
  /** Share of the picture of the smaller of the two planes. */
  readonly share: number;
}

function meanOfRows(cue: Float32Array, start: number, from: number, to: number): number {
  let sum = 0;
  for (let y = from; y < to; y++) sum += cue[start + y] as number;
  return sum / (to - from);
}

/** Step of one cue at the ridge in one column. Where a plane is too thin for a far look, there is no slope. */
function stepAt(
  cue: Float32Array,
  start: number,
  rows: readonly [number, number, number],
  sloped: boolean,
): number {
  const [top, ridge, bottom] = rows;
  const [up, down] = [Math.max(top, ridge - NEAR[1]), Math.min(bottom, ridge + NEAR[1])];
  const above = meanOfRows(cue, start, up, Math.max(up + 1, ridge - NEAR[0]));
  const below = meanOfRows(cue, start, Math.min(ridge + NEAR[0], down - 1), down);
  const near = below - above;
  if (!sloped || ridge - top < FAR[1] || bottom - ridge < FAR[1]) return near;
  const slopeAbove = above - meanOfRows(cue, start, ridge - FAR[1], ridge - FAR[0]);
  const slopeBelow = meanOfRows(cue, start, ridge + FAR[0], ridge + FAR[1]) - below;
  // Both sides run on to the ridge along their own slope.
  return (
    near - ((slopeAbove + slopeBelow) / 2) * ((NEAR[0] + NEAR[1]) / (FAR[0] + FAR[1] - NEAR[0] - NEAR[1]))
  );
}

/** Strongest edge of three rows. */
function edgeAt({ edge, rows }: Columns, start: number, y: number): number {
  const at = start + Math.min(rows - 2, Math.max(1, y));
  return Math.max(edge[at - 1] as number, edge[at] as number, edge[at + 1] as number);
}

/** Mean over the samples, squared, less what chance could make of it. */
function beyondChance(samples: readonly number[]): number {
  const count = samples.length;
  if (count < 2) return 0;
  const mean = samples.reduce((sum, value) => sum + value, 0) / count;
  const variance = samples.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1);
  return Math.max(0, mean * mean - CERTAINTY * (variance / count));
}

function unlikeness(columns: Columns, tops: Tops, k: number): number {
  const histogram = (tier: number): Float64Array => {
    const counts = new Float64Array(CUES * BINS);
    for (let column = 0; column < columns.count; column++) {
      const start = column * columns.rows;
      const bottom = start + bottomOf(tops, tier, column, columns.rows);
      for (let at = start + ((tops[tier] as Int16Array)[column] as number); at < bottom; at++) {
        for (let cue = 0; cue < CUES; cue++) {
          const bin = cue * BINS + ((columns.steps[cue] as Uint8Array)[at] as number);
          counts[bin] = (counts[bin] as number) + 1;
        }
      }
    }
    return counts;
  };
  const [far, near] = [histogram(k - 1), histogram(k)];
  const total = (counts: Float64Array): number =>
    counts.subarray(0, BINS).reduce((sum, count) => sum + count, 0);
  const [farTotal, nearTotal] = [total(far), total(near)];
  if (farTotal === 0 || nearTotal === 0) return 0;
  let unlike = 0;
  for (let cue = 0; cue < CUES; cue++) {
    let alike = 0;
    for (let bin = cue * BINS; bin < (cue + 1) * BINS; bin++) {
      alike += Math.sqrt(((far[bin] as number) / farTotal) * ((near[bin] as number) / nearTotal));
    }
    unlike += (1 - alike) * (CUE_WEIGHTS[cue] as number);
  }
  return unlike;
}

function pixelsOf({ count, rows }: Columns, tops: Tops, k: number): number {
  let pixels = 0;
  for (let column = 0; column < count; column++) {
    pixels += bottomOf(tops, k, column, rows) - ((tops[k] as Int16Array)[column] as number);
  }
  return pixels;
}

/** What speaks for the ridge on top of tier `k`, 1 or more. */
export function evidenceFor(columns: Columns, tops: Tops, k: number): Evidence {
  const { count, rows, every, cues } = columns;
  const perSample = Math.max(1, Math.round(SAMPLE_PX / every));
  const samples: number[][] = Array.from({ length: CUES }, () => []);
  let [meeting, here, beside] = [0, 0, 0];
  for (let first = 0; first < count; first += perSample) {
    const sums = new Float64Array(CUES);
    let found = 0;
    for (let column = first; column < Math.min(count, first + perSample); column++) {
      const top = (tops[k - 1] as Int16Array)[column] as number;
      const ridge = (tops[k] as Int16Array)[column] as number;
      const bottom = bottomOf(tops, k, column, rows);
      if (ridge - top < 2 || bottom - ridge < 2) continue;
      const start = column * rows;
      found++;
      here += edgeAt(columns, start, ridge);
      beside += (edgeAt(columns, start, ridge - 7) + edgeAt(columns, start, ridge + 7)) / 2;
      for (let cue = 0; cue < CUES; cue++) {
        const step = stepAt(cues[cue] as Float32Array, start, [top, ridge, bottom], cue < COLOURS);
        sums[cue] = (sums[cue] as number) + step;
      }
    }
    meeting += found;
    if (found > perSample / 2)
      samples.forEach((ofCue, cue) => void ofCue.push((sums[cue] as number) / found));
  }
  const step = samples.reduce(
    (sum, ofCue, cue) => sum + (CUE_WEIGHTS[cue] as number) * beyondChance(ofCue),
    0,
  );
  return {
    step,
    edge: meeting > 0 ? Math.max(0, here / Math.max(beside, 0.15 * meeting) - 1) : 0,
    unlike: unlikeness(columns, tops, k),
    width: meeting / count,
    share: Math.min(pixelsOf(columns, tops, k - 1), pixelsOf(columns, tops, k)) / (count * rows),
  };
}
