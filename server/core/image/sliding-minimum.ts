/**
 * Minimum over a square window, clipped to the picture, in time that does not grow with the window.
 *
 * In the flow: light over air of one plane -> [sliding-minimum] -> share of air. Pure.
 * Source: van Herk (1992), Gil & Werman (1993): running minima forwards and backwards in blocks.
 */

/** Running minima in blocks of `window`, both ways, over a line padded with `radius` of +Infinity at each end. */
function runBlocks(line: Float32Array, window: number, forward: Float32Array, backward: Float32Array): void {
  for (let at = 0; at < line.length; at++) {
    const value = line[at] as number;
    forward[at] = at % window === 0 ? value : Math.min(value, forward[at - 1] as number);
  }
  for (let at = line.length - 1; at >= 0; at--) {
    const value = line[at] as number;
    const blockEnds = at % window === window - 1 || at === line.length - 1;
    backward[at] = blockEnds ? value : Math.min(value, backward[at + 1] as number);
  }
}

/** Walks the `lines` lines of a grid in place: `step` apart along a line, `stride` apart from line to line. */
function slideLines(
  values: Float32Array,
  grid: { lines: number; length: number; step: number; stride: number },
  radius: number,
): void {
  const { lines, length, step, stride } = grid;
  const window = 2 * radius + 1;
  const line = new Float32Array(length + 2 * radius).fill(Number.POSITIVE_INFINITY);
  const forward = new Float32Array(line.length);
  const backward = new Float32Array(line.length);
  for (let number = 0, start = 0; number < lines; number++, start += stride) {
    for (let at = 0, from = start; at < length; at++, from += step)
      line[radius + at] = values[from] as number;
    runBlocks(line, window, forward, backward);
    for (let at = 0, to = start; at < length; at++, to += step) {
      values[to] = Math.min(backward[at] as number, forward[at + window - 1] as number);
    }
  }
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
  const result = values.slice();
  slideLines(result, { lines: rows, length: columns, step: 1, stride: columns }, radius);
  slideLines(result, { lines: columns, length: rows, step: columns, stride: 1 }, radius);
  return result;
}
