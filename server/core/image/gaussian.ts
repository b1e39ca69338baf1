/**
 * Gaussian blur of rows of floats, given on a grid of every `stride`-th pixel.
 *
 * In the flow: plate -> [gaussian] -> Lab, light, detail. A true Gaussian (sampled, cut at 3.25 sigma, summing
 * to 1) with a mirrored border, computed only where it is looked at: a blur of sigma 3 px holds nothing finer
 * than every second pixel can show, so the figures are the same at a quarter of the cost. Pure.
 */

/** One half of a symmetric kernel: weight of the centre, then of 1, 2, … pixels aside. */
export function gaussianKernel(sigmaPx: number): Float64Array {
  const radius = Math.max(1, Math.ceil(3.25 * sigmaPx));
  const half = Float64Array.from({ length: radius + 1 }, (_, at) => Math.exp(-0.5 * (at / sigmaPx) ** 2));
  const sum = half.reduce((total, weight, at) => total + (at === 0 ? weight : 2 * weight), 0);
  return half.map((weight) => weight / sum);
}

/** Index of a pixel beyond the border, mirrored: … 1 0 | 0 1 2 … */
export function mirrorIndex(index: number, length: number): number {
  const period = 2 * length;
  const within = ((index % period) + period) % period;
  return within < length ? within : period - 1 - within;
}

export interface BlurJob {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly channels: 1 | 3;
  readonly sigmaPx: number;
  /** Results are given at pixels 0, stride, 2 stride, … in both directions. */
  readonly stride: number;
  /** Writes row `y`, interleaved, into `line` from `offset` on. */
  readonly readRow: (y: number, line: Float32Array, offset: number) => void;
}

function mirrorEnds(line: Float32Array, widthPx: number, channels: number, margin: number): void {
  for (let aside = 1; aside <= margin; aside++) {
    const left = (margin + mirrorIndex(-aside, widthPx)) * channels;
    const right = (margin + mirrorIndex(widthPx - 1 + aside, widthPx)) * channels;
    line.copyWithin((margin - aside) * channels, left, left + channels);
    line.copyWithin((margin + widthPx - 1 + aside) * channels, right, right + channels);
  }
}

/** Along a row: `out` gets one blurred cell for every `step` samples of `line`. */
function blurAlong1(line: Float32Array, kernel: Float64Array, step: number, out: Float32Array): void {
  const radius = kernel.length - 1;
  for (let cell = 0, centre = radius; cell < out.length; cell++, centre += step) {
    let sum = (kernel[0] as number) * (line[centre] as number);
    for (let aside = 1; aside <= radius; aside++) {
      sum +=
        (kernel[aside] as number) * ((line[centre - aside] as number) + (line[centre + aside] as number));
    }
    out[cell] = sum;
  }
}

/** The same for three interleaved channels. */
function blurAlong3(line: Float32Array, kernel: Float64Array, step: number, out: Float32Array): void {
  const reach = (kernel.length - 1) * 3;
  for (let to = 0, centre = reach; to < out.length; to += 3, centre += step * 3) {
    const middle = kernel[0] as number;
    let red = middle * (line[centre] as number);
    let green = middle * (line[centre + 1] as number);
    let blue = middle * (line[centre + 2] as number);
    for (
      let tap = 1, left = centre - 3, right = centre + 3;
      tap < kernel.length;
      tap++, left -= 3, right += 3
    ) {
      const weight = kernel[tap] as number;
      red += weight * ((line[left] as number) + (line[right] as number));
      green += weight * ((line[left + 1] as number) + (line[right + 1] as number));
      blue += weight * ((line[left + 2] as number) + (line[right + 2] as number));
    }
    out[to] = red;
    out[to + 1] = green;
    out[to + 2] = blue;
  }
}

/** Adds two mirrored pairs of rows at once, which halves the traffic through `out`. */
function addFourRows(
  out: Float32Array,
  near: readonly [Float32Array, Float32Array],
  nearWeight: number,
  far: readonly [Float32Array, Float32Array],
  farWeight: number,
): void {
  const [p, q] = near;
  const [r, s] = far;
  for (let at = 0; at < out.length; at++) {
    out[at] =
      (out[at] as number) +
      nearWeight * ((p[at] as number) + (q[at] as number)) +
      farWeight * ((r[at] as number) + (s[at] as number));
  }
}

/** Down the columns: the weighted sum of rows around `y`. */
function blurDown(
  rowAt: (y: number) => Float32Array,
  y: number,
  kernel: Float64Array,
  out: Float32Array,
): void {
  const centre = rowAt(y);
  const middle = kernel[0] as number;
  for (let at = 0; at < out.length; at++) out[at] = middle * (centre[at] as number);
  for (let aside = 1; aside < kernel.length; aside += 2) {
    const near = [rowAt(y - aside), rowAt(y + aside)] as const;
    const beyond = kernel[aside + 1];
    const far = beyond === undefined ? near : ([rowAt(y - aside - 1), rowAt(y + aside + 1)] as const);
    addFourRows(out, near, kernel[aside] as number, far, beyond ?? 0);
  }
}

/**
 * Blurs and samples at once.
 * @returns `ceil(width / stride) × ceil(height / stride)` cells, interleaved, row by row.
 */
export function blurToGrid(job: BlurJob): Float32Array {
  const { widthPx, heightPx, channels, stride } = job;
  const kernel = gaussianKernel(job.sigmaPx);
  const radius = kernel.length - 1;
  const columns = Math.ceil(widthPx / stride);
  const rowLength = columns * channels;
  const line = new Float32Array((widthPx + 2 * radius) * channels);
  // Only the rows under the kernel are kept: they stay in the processor's cache.
  const ring = Array.from({ length: 2 * radius + 1 }, () => new Float32Array(rowLength));
  const rowAt = (y: number): Float32Array => ring[mirrorIndex(y, heightPx) % ring.length] as Float32Array;
  const blurAlong = channels === 1 ? blurAlong1 : blurAlong3;
  const result = new Float32Array(rowLength * Math.ceil(heightPx / stride));
  let read = 0;
  for (let y = 0, to = 0; y < heightPx; y += stride, to += rowLength) {
    for (; read <= Math.min(heightPx - 1, y + radius); read++) {
      job.readRow(read, line, radius * channels);
      mirrorEnds(line, widthPx, channels, radius);
      blurAlong(line, kernel, stride, ring[read % ring.length] as Float32Array);
    }
    blurDown(rowAt, y, kernel, result.subarray(to, to + rowLength));
  }
  return result;
}
