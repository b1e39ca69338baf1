/**
 * One number per pixel, and the few things a brush asks of it: blur, sample, smooth steps.
 *
 * In the flow: photograph -> [fields] -> strokes -> painting. Pure: arrays that come in are never written to.
 */

/** Row-major: the value of (x, y) sits at `y * width + x`. Indices below are in range by construction, hence `as`. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** CIELAB of every pixel, one field a coordinate. */
export interface LabFields {
  readonly L: Field;
  readonly a: Field;
  readonly b: Field;
}

export function emptyField(width: number, height: number): Field {
  return { width, height, values: new Float32Array(width * height) };
}

/** The value at a fractional position in pixels, bilinear; positions outside take the border's value. */
export function sample({ width, height, values }: Field, xPx: number, yPx: number): number {
  const x = Math.min(Math.max(xPx, 0), width - 1);
  const y = Math.min(Math.max(yPx, 0), height - 1);
  const x0 = Math.min(Math.floor(x), width - 2);
  const y0 = Math.min(Math.floor(y), height - 2);
  const fx = x - x0;
  const fy = y - y0;
  const at = y0 * width + x0;
  const top = (values[at] as number) * (1 - fx) + (values[at + 1] as number) * fx;
  const low = (values[at + width] as number) * (1 - fx) + (values[at + width + 1] as number) * fx;
  return top * (1 - fy) + low * fy;
}

/** Two box passes, near enough to a Gaussian of this standard deviation in pixels; the border's value goes on outside. */
export function blurred(field: Field, sigmaPx: number): Field {
  const radius = Math.round((Math.sqrt(6 * sigmaPx * sigmaPx + 1) - 1) / 2);
  if (radius < 1) return field;
  const { width, height } = field;
  let from: Float32Array = field.values;
  const across = new Float32Array(width * height);
  for (let pass = 0; pass < 2; pass++) {
    const down = new Float32Array(width * height);
    meanOfRows(from, across, width, height, radius);
    meanOfColumns(across, down, width, height, radius);
    from = down;
  }
  return { width, height, values: from };
}

/** Running mean along every row. */
function meanOfRows(from: Float32Array, to: Float32Array, width: number, height: number, radius: number) {
  const share = 1 / (2 * radius + 1);
  for (let y = 0; y < height; y++) {
    const start = y * width;
    const last = start + width - 1;
    let sum = (from[start] as number) * (radius + 1);
    for (let step = 0; step < radius; step++) sum += from[Math.min(start + step, last)] as number;
    for (let at = start; at <= last; at++) {
      sum += from[Math.min(at + radius, last)] as number;
      sum -= from[Math.max(at - radius - 1, start)] as number;
      to[at] = sum * share;
    }
  }
}

/** Running mean along every column, a row at a time so that memory is read in order. */
function meanOfColumns(from: Float32Array, to: Float32Array, width: number, height: number, radius: number) {
  const share = 1 / (2 * radius + 1);
  const sums = new Float64Array(width);
  const row = (y: number) => Math.min(Math.max(y, 0), height - 1) * width;
  for (let y = -radius - 1; y < radius; y++) {
    const at = row(y);
    for (let x = 0; x < width; x++) sums[x] = (sums[x] as number) + (from[at + x] as number);
  }
  for (let y = 0; y < height; y++) {
    const [ahead, behind, at] = [row(y + radius), row(y - radius - 1), y * width];
    for (let x = 0; x < width; x++) {
      const sum = (sums[x] as number) + (from[ahead + x] as number) - (from[behind + x] as number);
      sums[x] = sum;
      to[at + x] = sum * share;
    }
  }
}

/** 0 below `low`, 1 above `high`, an S between. */
export function smoothStep(low: number, high: number, value: number): number {
  const t = Math.min(Math.max((value - low) / (high - low), 0), 1);
  return t * t * (3 - 2 * t);
}

/** Combines fields of one size, pixel by pixel. */
export function combined(
  first: Field,
  second: Field,
  ofPixel: (first: number, second: number) => number,
): Field {
  const result = emptyField(first.width, first.height);
  for (let at = 0; at < result.values.length; at++) {
    result.values[at] = ofPixel(first.values[at] as number, second.values[at] as number);
  }
  return result;
}
