/**
 * Outlines to a label map: which plane each pixel belongs to.
 *
 * In the flow: outlines -> [label-map] -> erode -> figures. One byte a pixel: the plane's index far to near,
 * `NO_PLANE` where there is none. A nearer plane covers a farther one. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';

export const NO_PLANE = 255;

/** Where a scan line at `y` (pixels) crosses the outline, sorted; always an even number. */
function crossings(
  outline: readonly FractionPoint[],
  widthPx: number,
  heightPx: number,
  y: number,
): number[] {
  const found: number[] = [];
  let previous = outline.at(-1);
  for (const point of outline) {
    if (previous) {
      const [y0, y1] = [previous[1] * heightPx, point[1] * heightPx];
      if (y0 <= y !== y1 <= y) {
        const x0 = previous[0] * widthPx;
        found.push(x0 + ((y - y0) / (y1 - y0)) * (point[0] * widthPx - x0));
      }
    }
    previous = point;
  }
  return found.sort((p, q) => p - q);
}

function fillOutline(
  labels: Uint8Array,
  widthPx: number,
  heightPx: number,
  outline: readonly FractionPoint[],
  label: number,
): void {
  const ys = outline.map((point) => point[1] * heightPx);
  const top = Math.max(0, Math.ceil(Math.min(...ys) - 0.5));
  const bottom = Math.min(heightPx - 1, Math.floor(Math.max(...ys) - 0.5));
  for (let row = top; row <= bottom; row++) {
    const xs = crossings(outline, widthPx, heightPx, row + 0.5);
    for (let pair = 0; pair + 1 < xs.length; pair += 2) {
      const from = Math.max(0, Math.ceil((xs[pair] as number) - 0.5));
      const to = Math.min(widthPx, Math.ceil((xs[pair + 1] as number) - 0.5));
      if (to > from) labels.fill(label, row * widthPx + from, row * widthPx + to);
    }
  }
}

/**
 * The label map of outlines given far to near.
 *
 * A pixel is inside where its centre is, by the even–odd rule. @param outlines at most 254, checked before.
 */
export function drawLabelMap(
  widthPx: number,
  heightPx: number,
  outlines: readonly (readonly FractionPoint[])[],
): Uint8Array {
  const labels = new Uint8Array(widthPx * heightPx).fill(NO_PLANE);
  outlines.forEach((outline, label) => {
    fillOutline(labels, widthPx, heightPx, outline, label);
  });
  return labels;
}

/** Pixels of each of the first `planes` labels. */
export function countLabels(labels: Uint8Array, planes: number): number[] {
  const counts = new Uint32Array(256);
  for (let at = 0; at < labels.length; at++) {
    const label = labels[at] as number;
    counts[label] = (counts[label] as number) + 1;
  }
  return Array.from(counts.subarray(0, planes));
}
