/**
 * Planes grown a little over what lies in none of them, so that a sliver between two outlines isn't left in the old light.
 *
 * In the flow: label map -> [grown-labels] -> soft planes. Pure.
 */
import { NO_PLANE } from '../../planes/label-map.ts';

/** Neighbours of a pixel that are in the picture. */
function neighbours(at: number, widthPx: number, length: number): number[] {
  const x = at % widthPx;
  const found = [at - widthPx, at + widthPx].filter((other) => other >= 0 && other < length);
  if (x > 0) found.push(at - 1);
  if (x < widthPx - 1) found.push(at + 1);
  return found;
}

/** The first of a pixel's neighbours that lies in a plane. */
function planeBeside(labels: Uint8Array, at: number, widthPx: number): number {
  for (const other of neighbours(at, widthPx, labels.length)) {
    if (labels[other] !== NO_PLANE) return labels[other] as number;
  }
  return NO_PLANE;
}

function bareRim(labels: Uint8Array, widthPx: number): number[] {
  const rim: number[] = [];
  for (let at = 0; at < labels.length; at++) {
    if (labels[at] === NO_PLANE && planeBeside(labels, at, widthPx) !== NO_PLANE) rim.push(at);
  }
  return rim;
}

/** A copy in which every bare pixel within `reachPx` steps of a plane belongs to the nearest one. */
export function grownLabels(labels: Uint8Array, widthPx: number, reachPx: number): Uint8Array {
  const grown = labels.slice();
  let rim = bareRim(grown, widthPx);
  for (let step = 0; step < reachPx && rim.length > 0; step++) {
    const planes = rim.map((at) => planeBeside(grown, at, widthPx));
    rim.forEach((at, place) => {
      grown[at] = planes[place] as number;
    });
    const next = rim.flatMap((at) => neighbours(at, widthPx, grown.length));
    rim = [...new Set(next.filter((at) => grown[at] === NO_PLANE))];
  }
  return grown;
}
