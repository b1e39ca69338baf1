/**
 * Takes the rim off every plane, exactly, by Euclidean distance.
 *
 * In the flow: label map -> [erode] -> figures. A pixel is left out when the distance between its centre and
 * the centre of a pixel of another label is below the radius; the picture's border is no boundary.
 * Two passes, linear in pixels: the distance to another label along each column, then along each row how far
 * a column's distance still reaches (Pythagoras), as in the separable transform of Felzenszwalb &
 * Huttenlocher (2012), cut off at the radius. Pure.
 */
import { NO_PLANE } from './label-map.ts';

/** Distance along the column to a pixel of another label, 1 up to `cap`, which also stands for "none". */
function columnDistances(labels: Uint8Array, widthPx: number, cap: number): Uint8Array {
  const distances = new Uint8Array(labels.length).fill(cap);
  for (let at = widthPx; at < labels.length; at++) {
    const before = distances[at - widthPx] as number;
    if (labels[at] !== labels[at - widthPx]) distances[at] = 1;
    else if (before < cap) distances[at] = before + 1;
  }
  for (let at = labels.length - widthPx - 1; at >= 0; at--) {
    const after = distances[at + widthPx] as number;
    if (labels[at] !== labels[at + widthPx]) distances[at] = 1;
    else if (after + 1 < (distances[at] as number)) distances[at] = after + 1;
  }
  return distances;
}

/** For each column distance the widest step aside that stays nearer than the radius; −1 when none does. */
function reaches(radiusPx: number, cap: number): Int16Array {
  return Int16Array.from({ length: cap + 1 }, (_, distance) => {
    if (distance >= radiusPx) return -1;
    let aside = 0;
    while ((aside + 1) ** 2 + distance ** 2 < radiusPx ** 2) aside++;
    return aside;
  });
}

/** Takes off what lies within reach of another label, walking from one end of the row to the other. */
function sweepRow(
  labels: Uint8Array,
  distances: Uint8Array,
  reach: Int16Array,
  row: { start: number; end: number; step: 1 | -1 },
  kept: Uint8Array,
): void {
  const { start, end, step } = row;
  const beside = reach[0] as number;
  let left = 0; // pixels still within reach, this one counted
  let before = labels[start] as number;
  for (let at = start; at !== end; at += step) {
    const label = labels[at] as number;
    if (label !== before) left = beside;
    before = label;
    const own = (reach[distances[at] as number] as number) + 1;
    if (own > left) left = own;
    if (left > 0) {
      kept[at] = NO_PLANE;
      left--;
    }
  }
}

/** Whether a row is all one plane and no column of it comes near another; most rows are. */
function isFarFromAll(
  labels: Uint8Array,
  distances: Uint8Array,
  first: number,
  last: number,
  cap: number,
): boolean {
  const label = labels[first];
  for (let at = first; at <= last; at++) {
    if (distances[at] !== cap || labels[at] !== label) return false;
  }
  return true;
}

/**
 * Labels with the rim of every plane taken off (`NO_PLANE` there).
 * @param radiusPx distance below which a pixel is left out, up to 254.
 */
export function erodeLabels(
  labels: Uint8Array,
  widthPx: number,
  heightPx: number,
  radiusPx: number,
): Uint8Array {
  const cap = Math.min(255, Math.ceil(radiusPx) + 1);
  const distances = columnDistances(labels, widthPx, cap);
  const reach = reaches(radiusPx, cap);
  const kept = labels.slice();
  for (let y = 0; y < heightPx; y++) {
    const first = y * widthPx;
    const last = first + widthPx - 1;
    if (isFarFromAll(labels, distances, first, last, cap)) continue;
    sweepRow(labels, distances, reach, { start: first, end: last + 1, step: 1 }, kept);
    sweepRow(labels, distances, reach, { start: last, end: first - 1, step: -1 }, kept);
  }
  return kept;
}

/** Labels of blocks of `side` × `side` pixels: a block belongs to a plane when all its pixels do. */
export function labelsOfBlocks(
  labels: Uint8Array,
  widthPx: number,
  heightPx: number,
  side: 1 | 2,
): Uint8Array {
  if (side === 1) return labels;
  const columns = Math.ceil(widthPx / 2);
  const blocks = new Uint8Array(columns * Math.ceil(heightPx / 2));
  for (let y = 0, to = 0; y < heightPx; y += 2) {
    const upper = y * widthPx;
    const lower = Math.min(heightPx - 1, y + 1) * widthPx;
    for (let x = 0; x < widthPx; x += 2, to++) {
      const right = Math.min(widthPx - 1, x + 1);
      const label = labels[upper + x] as number;
      const same =
        label === labels[upper + right] && label === labels[lower + x] && label === labels[lower + right];
      blocks[to] = same ? label : NO_PLANE;
    }
  }
  return blocks;
}
