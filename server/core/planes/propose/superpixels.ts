/**
 * Superpixels: compact patches of one colour that keep to the edges of a picture.
 *
 * In the flow: working copy -> [superpixels] -> region graph. Pure.
 * Source: Achanta, Shaji, Smith, Lucchi, Fua & Süsstrunk (2012), "SLIC superpixels compared to state-of-the-art
 * superpixel methods", IEEE TPAMI 34(11), algorithm 1 and equation 3.
 */
import type { LabPlanes } from '../../image/light-tables.ts';
import { joinStrays } from './join-strays.ts';

/** Rounds of assigning and moving; the paper finds ten enough for most pictures. */
const ROUNDS = 10;
/** m of equation 3: how much nearness in the picture counts beside nearness in colour. */
export const COMPACTNESS = 10;

export interface Superpixels {
  /** Number of each pixel's superpixel, 0..count − 1. */
  readonly labels: Int32Array;
  readonly count: number;
  /** Grid interval S, pixels. */
  readonly step: number;
}

/** Centres, five numbers each: L*, a*, b*, x, y. */
type Centres = Float64Array;

function sampleInto(centres: Centres, to: number, lab: LabPlanes, columns: number, x: number, y: number) {
  const at = y * columns + x;
  centres[to] = lab.lightness[at] as number;
  centres[to + 1] = lab.a[at] as number;
  centres[to + 2] = lab.b[at] as number;
  centres[to + 3] = x;
  centres[to + 4] = y;
}

/** The place of least gradient in the 3 × 3 neighbourhood, so that no centre starts on an edge. */
function calmest(edge: Float32Array, columns: number, rows: number, x: number, y: number): [number, number] {
  let best: [number, number] = [x, y];
  let least = edge[y * columns + x] as number;
  for (let v = Math.max(0, y - 1); v <= Math.min(rows - 1, y + 1); v++) {
    for (let u = Math.max(0, x - 1); u <= Math.min(columns - 1, x + 1); u++) {
      const strength = edge[v * columns + u] as number;
      if (strength < least) {
        least = strength;
        best = [u, v];
      }
    }
  }
  return best;
}

function startingCentres(lab: LabPlanes, edge: Float32Array, columns: number, rows: number, step: number) {
  const across = Math.max(1, Math.round(columns / step));
  const down = Math.max(1, Math.round(rows / step));
  const centres: Centres = new Float64Array(across * down * 5);
  for (let row = 0, to = 0; row < down; row++) {
    for (let column = 0; column < across; column++, to += 5) {
      const x = Math.min(columns - 1, Math.floor(((column + 0.5) * columns) / across));
      const y = Math.min(rows - 1, Math.floor(((row + 0.5) * rows) / down));
      sampleInto(centres, to, lab, columns, ...calmest(edge, columns, rows, x, y));
    }
  }
  return centres;
}

interface Field {
  readonly lab: LabPlanes;
  readonly columns: number;
  readonly rows: number;
  readonly step: number;
  /** (m / S)². */
  readonly spatial: number;
}

/** Each pixel to the nearest centre whose 2S × 2S window holds it. */
function assign(field: Field, centres: Centres, labels: Int32Array, distances: Float32Array): void {
  const { lab, columns, rows, step, spatial } = field;
  const { lightness, a, b } = lab;
  distances.fill(Number.POSITIVE_INFINITY);
  for (let from = 0, label = 0; from < centres.length; from += 5, label++) {
    const [cl, ca, cb] = [centres[from] as number, centres[from + 1] as number, centres[from + 2] as number];
    const [cx, cy] = [centres[from + 3] as number, centres[from + 4] as number];
    const left = Math.max(0, Math.ceil(cx - step));
    const right = Math.min(columns - 1, Math.floor(cx + step));
    const bottom = Math.min(rows - 1, Math.floor(cy + step));
    for (let y = Math.max(0, Math.ceil(cy - step)); y <= bottom; y++) {
      const down = spatial * (y - cy) * (y - cy);
      for (let x = left, at = y * columns + left; x <= right; x++, at++) {
        const dl = (lightness[at] as number) - cl;
        const da = (a[at] as number) - ca;
        const db = (b[at] as number) - cb;
        const distance = dl * dl + da * da + db * db + down + spatial * (x - cx) * (x - cx);
        if (distance < (distances[at] as number)) {
          distances[at] = distance;
          labels[at] = label;
        }
      }
    }
  }
}

/** Each centre to the mean of its pixels; one without pixels stays. */
function moveCentres({ lab, columns }: Field, labels: Int32Array, centres: Centres): void {
  const sums = new Float64Array(centres.length);
  const counts = new Uint32Array(centres.length / 5);
  for (let at = 0, x = 0, y = 0; at < labels.length; at++) {
    const label = labels[at] as number;
    if (label >= 0) {
      const to = label * 5;
      counts[label] = (counts[label] as number) + 1;
      sums[to] = (sums[to] as number) + (lab.lightness[at] as number);
      sums[to + 1] = (sums[to + 1] as number) + (lab.a[at] as number);
      sums[to + 2] = (sums[to + 2] as number) + (lab.b[at] as number);
      sums[to + 3] = (sums[to + 3] as number) + x;
      sums[to + 4] = (sums[to + 4] as number) + y;
    }
    if (++x === columns) {
      x = 0;
      y++;
    }
  }
  for (let to = 0; to < sums.length; to++) {
    const count = counts[Math.floor(to / 5)] as number;
    if (count > 0) centres[to] = (sums[to] as number) / count;
  }
}

/**
 * Superpixels of a picture in CIELAB, each in one piece.
 *
 * @param edge strength of the gradient at each pixel. @param wanted how many, about; at least 1.
 */
export function superpixels(
  lab: LabPlanes,
  edge: Float32Array,
  columns: number,
  rows: number,
  wanted: number,
): Superpixels {
  const step = Math.max(1, Math.sqrt((columns * rows) / wanted));
  const field: Field = { lab, columns, rows, step, spatial: (COMPACTNESS / step) ** 2 };
  const centres = startingCentres(lab, edge, columns, rows, step);
  const labels = new Int32Array(columns * rows).fill(-1);
  const distances = new Float32Array(columns * rows);
  for (let round = 0; round < ROUNDS; round++) {
    assign(field, centres, labels, distances);
    moveCentres(field, labels, centres);
  }
  return { ...joinStrays(labels, columns, rows, Math.max(1, (step * step) / 4)), step };
}
