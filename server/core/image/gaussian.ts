/**
 * Gaussian blur of float grids, with a mirrored border.
 *
 * In the flow: plate -> [gaussian] -> Lab, light, detail. A true Gaussian (sampled, cut at 3.25 sigma,
 * summing to 1). Wide blurs are taken from a smaller copy (`blocks.ts`); what making it smaller has blurred is
 * subtracted, and what is missing in it would be blurred away anyhow. Pure.
 */

/** Interleaved samples, row by row. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly channels: number;
  readonly samples: Float32Array;
}

/** One half of a symmetric kernel: weight of the centre, then of 1, 2, … cells aside. */
export function gaussianKernel(sigma: number): Float64Array {
  const radius = Math.max(1, Math.ceil(3.25 * sigma));
  const half = Float64Array.from({ length: radius + 1 }, (_, at) => Math.exp(-0.5 * (at / sigma) ** 2));
  const sum = half.reduce((total, weight, at) => total + (at === 0 ? weight : 2 * weight), 0);
  return half.map((weight) => weight / sum);
}

/** Variance, in pixels², of averaging `side` pixels along a line. */
export function blockVariance(side: number): number {
  return (side ** 2 - 1) / 12;
}

/** Sigma, in cells of `side` pixels, that is left to blur after making smaller has blurred by `variancePx`. */
export function sigmaLeft(sigmaPx: number, variancePx: number, side: number): number {
  return Math.sqrt(sigmaPx ** 2 - variancePx) / side;
}

/** Index of a cell beyond the border, mirrored: … 1 0 | 0 1 2 … */
export function mirrorIndex(index: number, length: number): number {
  const period = 2 * length;
  const within = ((index % period) + period) % period;
  return within < length ? within : period - 1 - within;
}

/** Copies a row into the middle of `line` and mirrors it into both margins. */
function readLine(
  samples: Float32Array,
  start: number,
  columns: number,
  channels: number,
  line: Float64Array,
): void {
  const margin = (line.length / channels - columns) / 2;
  const offset = margin * channels;
  const length = columns * channels;
  for (let at = 0; at < length; at++) line[offset + at] = samples[start + at] as number;
  for (let aside = 1; aside <= margin; aside++) {
    const left = (margin + mirrorIndex(-aside, columns)) * channels;
    const right = (margin + mirrorIndex(columns - 1 + aside, columns)) * channels;
    line.copyWithin((margin - aside) * channels, left, left + channels);
    line.copyWithin((margin + columns - 1 + aside) * channels, right, right + channels);
  }
}

/** Views of equal length, and the weight that falls on the sum of both. */
type Pair = readonly [weight: number, left: Float64Array, right: Float64Array];

/** Three pairs at a time: fewer walks through `sums` than one by one. */
function addPairs(sums: Float64Array, [u, a, b]: Pair, [v, c, d]: Pair, [w, e, f]: Pair): void {
  for (let at = 0; at < sums.length; at++) {
    sums[at] =
      (sums[at] as number) +
      u * ((a[at] as number) + (b[at] as number)) +
      v * ((c[at] as number) + (d[at] as number)) +
      w * ((e[at] as number) + (f[at] as number));
  }
}

/** The centre and the two pairs beside it, with which a sum begins. */
function startSums(
  sums: Float64Array,
  middle: number,
  centre: Float64Array,
  [v, a, b]: Pair,
  [w, c, d]: Pair,
): void {
  for (let at = 0; at < sums.length; at++) {
    sums[at] =
      middle * (centre[at] as number) +
      v * ((a[at] as number) + (b[at] as number)) +
      w * ((c[at] as number) + (d[at] as number));
  }
}

/** Weighted sum of what `viewAt` gives for the centre (0) and the cells to both sides of it. */
function weigh(viewAt: (aside: number) => Float64Array, kernel: Float64Array, sums: Float64Array): void {
  const centre = viewAt(0);
  const pairAt = (aside: number): Pair => {
    const weight = kernel[aside];
    return weight === undefined ? [0, centre, centre] : [weight, viewAt(-aside), viewAt(aside)];
  };
  startSums(sums, kernel[0] as number, centre, pairAt(1), pairAt(2));
  for (let aside = 3; aside < kernel.length; aside += 3) {
    addPairs(sums, pairAt(aside), pairAt(aside + 1), pairAt(aside + 2));
  }
}

/** A blurred grid of the same size. @param sigma in cells, above 0. */
export function gaussianBlur(grid: Grid, sigma: number): Float32Array {
  const { columns, rows, channels, samples } = grid;
  const kernel = gaussianKernel(sigma);
  const radius = kernel.length - 1;
  const rowLength = columns * channels;
  const line = new Float64Array((columns + 2 * radius) * channels);
  // Along a row, the neighbours of all its samples are the same row shifted.
  const shifts = Array.from({ length: 2 * radius + 1 }, (_, at) =>
    line.subarray(at * channels, at * channels + rowLength),
  );
  const shifted = (aside: number): Float64Array => shifts[radius + aside] as Float64Array;
  const sums = new Float64Array(rowLength);
  // Only the rows under the kernel are kept: they stay in the processor's cache.
  const ring = Array.from({ length: 2 * radius + 1 }, () => new Float64Array(rowLength));
  const rowAt = (row: number): Float64Array => ring[mirrorIndex(row, rows) % ring.length] as Float64Array;
  const result = new Float32Array(samples.length);
  for (let row = 0, read = 0; row < rows; row++) {
    for (; read <= Math.min(rows - 1, row + radius); read++) {
      readLine(samples, read * rowLength, columns, channels, line);
      weigh(shifted, kernel, ring[read % ring.length] as Float64Array);
    }
    weigh((aside) => rowAt(row + aside), kernel, sums);
    result.set(sums, row * rowLength);
  }
  return result;
}
