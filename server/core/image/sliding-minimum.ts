/**
 * Minimum over a square window, clipped to the picture, in time that does not grow with the window.
 *
 * In the flow: light over air of one plane -> [sliding-minimum] -> share of air. Pure.
 * Source: van Herk (1992), Gil & Werman (1993): running minima forwards and backwards in blocks.
 */

/** Along each row: minimum within `radius` cells, in place. */
function slideRows(values: Float32Array, columns: number, rows: number, radius: number): void {
  const window = 2 * radius + 1;
  const line = new Float32Array(columns + 2 * radius).fill(Number.POSITIVE_INFINITY);
  const forward = new Float32Array(line.length);
  const backward = new Float32Array(line.length);
  for (let row = 0; row < rows; row++) {
    const start = row * columns;
    line.set(values.subarray(start, start + columns), radius);
    for (let block = 0; block < line.length; block += window) {
      const end = Math.min(block + window, line.length);
      let least = Number.POSITIVE_INFINITY;
      for (let at = block; at < end; at++) forward[at] = least = Math.min(least, line[at] as number);
      least = Number.POSITIVE_INFINITY;
      for (let at = end - 1; at >= block; at--) backward[at] = least = Math.min(least, line[at] as number);
    }
    for (let at = 0; at < columns; at++) {
      values[start + at] = Math.min(backward[at] as number, forward[at + window - 1] as number);
    }
  }
}

/** The rows become columns. */
function transposed(values: Float32Array, columns: number, rows: number): Float32Array {
  const result = new Float32Array(values.length);
  const side = 32; // small tiles, so that both grids stay in the processor's cache
  for (let top = 0; top < rows; top += side) {
    for (let left = 0; left < columns; left += side) {
      const bottom = Math.min(rows, top + side);
      const right = Math.min(columns, left + side);
      for (let row = top; row < bottom; row++) {
        for (let column = left; column < right; column++) {
          result[column * rows + row] = values[row * columns + column] as number;
        }
      }
    }
  }
  return result;
}

/**
 * Square-window minimum of a grid. Cells that do not count hold +Infinity.
 * @param radius cells to each side. @returns a new grid of the same size.
 */
export function slidingMinimum(
  values: Float32Array,
  columns: number,
  rows: number,
  radius: number,
): Float32Array {
  const along = values.slice();
  slideRows(along, columns, rows, radius);
  const down = transposed(along, columns, rows);
  slideRows(down, rows, columns, radius);
  return transposed(down, rows, columns);
}
