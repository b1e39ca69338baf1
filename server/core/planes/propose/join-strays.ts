/**
 * Makes every superpixel one connected piece.
 *
 * In the flow: [superpixels]: the last step of SLIC. Pieces smaller than a quarter of a superpixel join the
 * neighbour that was numbered before them. Pure.
 * Source: Achanta et al. (2012), section "Post-processing".
 */

interface Pieces {
  labels: Int32Array;
  count: number;
}

/** Collects the 4-connected piece that holds `start`, and numbers it. @returns its pixels. */
function collect(
  from: Int32Array,
  to: Int32Array,
  start: number,
  number: number,
  columns: number,
  stack: Int32Array,
): number {
  const label = from[start];
  let [filled, next] = [1, 0];
  stack[0] = start;
  to[start] = number;
  while (next < filled) {
    const at = stack[next++] as number;
    const x = at % columns;
    const beside = [
      x > 0 ? at - 1 : -1,
      x < columns - 1 ? at + 1 : -1,
      at - columns,
      at + columns < to.length ? at + columns : -1,
    ];
    for (const other of beside) {
      if (other >= 0 && to[other] === -1 && from[other] === label) {
        to[other] = number;
        stack[filled++] = other;
      }
    }
  }
  return filled;
}

/** A numbered piece beside these pixels: to the left of one or above it. −1 where there is none. */
function neighbourOf(
  to: Int32Array,
  pixels: Int32Array,
  filled: number,
  number: number,
  columns: number,
): number {
  for (let at = 0; at < filled; at++) {
    const pixel = pixels[at] as number;
    if (pixel % columns > 0 && to[pixel - 1] !== number && to[pixel - 1] !== -1)
      return to[pixel - 1] as number;
    const above = pixel - columns;
    if (above >= 0 && to[above] !== number && to[above] !== -1) return to[above] as number;
  }
  return -1;
}

/** @param smallest pieces with fewer pixels are joined to a neighbour. */
export function joinStrays(labels: Int32Array, columns: number, rows: number, smallest: number): Pieces {
  const joined = new Int32Array(columns * rows).fill(-1);
  const pixels = new Int32Array(columns * rows);
  let count = 0;
  for (let start = 0; start < joined.length; start++) {
    if (joined[start] !== -1) continue;
    const filled = collect(labels, joined, start, count, columns, pixels);
    const host = filled < smallest ? neighbourOf(joined, pixels, filled, count, columns) : -1;
    if (host < 0) {
      count++;
      continue;
    }
    for (let at = 0; at < filled; at++) joined[pixels[at] as number] = host;
  }
  return { labels: joined, count };
}
