/**
 * Mean over a square window, clipped to the picture, in time that doesn't grow with the window. Pure.
 *
 * In the flow: guide and planes -> [box-mean] -> guided weights. Running sums, first along rows, then down columns.
 */

export interface Field {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly values: Float32Array;
}

function alongRows(values: Float32Array, widthPx: number, radius: number, into: Float32Array): void {
  for (let start = 0; start < values.length; start += widthPx) {
    let [sum, count] = [0, 0];
    for (let x = 0; x < Math.min(radius, widthPx); x++, count++) sum += values[start + x] as number;
    for (let x = 0; x < widthPx; x++) {
      if (x + radius < widthPx) {
        sum += values[start + x + radius] as number;
        count++;
      }
      if (x > radius) {
        sum -= values[start + x - radius - 1] as number;
        count--;
      }
      into[start + x] = sum / count;
    }
  }
}

function downColumns(values: Float32Array, widthPx: number, radius: number, into: Float32Array): void {
  const rows = values.length / widthPx;
  const sums = new Float64Array(widthPx);
  let count = 0;
  const add = (row: number, sign: 1 | -1): void => {
    for (let x = 0, at = row * widthPx; x < widthPx; x++, at++) {
      sums[x] = (sums[x] as number) + sign * (values[at] as number);
    }
    count += sign;
  };
  for (let row = 0; row < Math.min(radius, rows); row++) add(row, 1);
  for (let row = 0; row < rows; row++) {
    if (row + radius < rows) add(row + radius, 1);
    if (row > radius) add(row - radius - 1, -1);
    for (let x = 0, at = row * widthPx; x < widthPx; x++, at++) into[at] = (sums[x] as number) / count;
  }
}

/** @param radius pixels to each side, 0 or more. @returns a new field's values. */
export function boxMean({ widthPx, values }: Field, radius: number): Float32Array {
  const rows = new Float32Array(values.length);
  const result = new Float32Array(values.length);
  alongRows(values, widthPx, radius, rows);
  downColumns(rows, widthPx, radius, result);
  return result;
}
