/**
 * Which planes each pixel belongs to and how much, with soft edges: at most three a pixel, in four bytes.
 *
 * In the flow: plate + label map -> [soft-planes] -> relight, on the page's shader too. Pure. What lies in no plane keeps
 * its light; the weights of a pixel add up to 1.
 */
import { lightnessOfPixels } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { NO_PLANE } from '../../planes/label-map.ts';
import { grownLabels } from './grown-labels.ts';
import { type Guide, guidedWeights, guideOf } from './guided-weights.ts';
import { snappedLabels } from './snapped-labels.ts';

/**
 * Radius of the edges' softness, as a share of the long side: twice that and the band of `snapped-labels` lie within the
 * rim that measuring leaves out.
 */
const SOFT_EDGE = 0.0017;
/** Gaps between outlines that are closed, as a share of the long side. */
const CLOSED_GAP = 0.015;
/** Number that stands for "in no plane" in the packed bytes. */
export const BARE = 15;
/** Weights below this are nothing. */
const LEAST = 1 / 255;

export interface SoftPlanes {
  readonly widthPx: number;
  readonly heightPx: number;
  /**
   * Four bytes a pixel: the first plane (low four bits) and the second (high four bits), the third plane, weight of the
   * second, weight of the third, both in 255ths. `BARE` stands for none. The first has what is left of 1.
   */
  readonly packed: Uint8Array;
}

interface Best {
  readonly planes: Uint8Array;
  readonly weights: Float32Array;
}

/** Keeps the three weightiest planes of each pixel, the weightiest first. */
function keepBest({ planes, weights }: Best, pixel: number, plane: number, weight: number): void {
  const start = pixel * 3;
  let place = start + 3;
  while (place > start && weight > (weights[place - 1] as number)) place--;
  if (place === start + 3) return;
  for (let at = start + 2; at > place; at--) {
    weights[at] = weights[at - 1] as number;
    planes[at] = planes[at - 1] as number;
  }
  weights[place] = weight;
  planes[place] = plane;
}

function pack({ planes, weights }: Best, pixels: number): Uint8Array {
  const packed = new Uint8Array(pixels * 4);
  for (let pixel = 0, from = 0, to = 0; pixel < pixels; pixel++, from += 3, to += 4) {
    const sum = (weights[from] as number) + (weights[from + 1] as number) + (weights[from + 2] as number);
    packed[to] = (planes[from] as number) | ((planes[from + 1] as number) << 4);
    packed[to + 1] = planes[from + 2] as number;
    packed[to + 2] = Math.round((255 * (weights[from + 1] as number)) / sum);
    packed[to + 3] = Math.round((255 * (weights[from + 2] as number)) / sum);
  }
  return packed;
}

/** Rows in which one plane meets others, or null where it meets none. */
function metRows(labels: Uint8Array, widthPx: number, plane: number): { top: number; bottom: number } | null {
  let [top, bottom] = [-1, -1];
  for (let at = 0; at < labels.length; at++) {
    const own = labels[at] === plane;
    const right = at % widthPx < widthPx - 1 && (labels[at + 1] === plane) !== own;
    const below = at + widthPx < labels.length && (labels[at + widthPx] === plane) !== own;
    if (!right && !below) continue;
    const row = Math.floor(at / widthPx);
    if (top < 0) top = row;
    bottom = row + 1;
  }
  return top < 0 ? null : { top, bottom };
}

/** Weights of one plane: 1 or 0 but near where it meets others, where the filter works. */
function weightsOf(guide: Guide, labels: Uint8Array, plane: number): Float32Array {
  const { widthPx, heightPx, radiusPx } = guide;
  const inside = new Float32Array(labels.length);
  for (let at = 0; at < labels.length; at++) if (labels[at] === plane) inside[at] = 1;
  const met = metRows(labels, widthPx, plane);
  if (!met) return inside;
  // Twice the radius is what the filter changes; twice that, so that the cut itself changes nothing.
  const first = Math.max(0, met.top - 4 * radiusPx - 1);
  const last = Math.min(heightPx, met.bottom + 4 * radiusPx + 2);
  const [from, to] = [first * widthPx, last * widthPx];
  const rows = (values: Float32Array): Float32Array => values.subarray(from, to);
  const cut = {
    ...guide,
    heightPx: last - first,
    values: rows(guide.values),
    mean: rows(guide.mean),
    variance: rows(guide.variance),
  };
  inside.set(guidedWeights(cut, inside.slice(from, to)), from);
  return inside;
}

/** @param labels plane of each pixel, at most twelve planes, 255 = none. */
export function softPlanes(raster: EncodedRaster, labels: Uint8Array, planeCount: number): SoftPlanes {
  const { widthPx, heightPx } = raster;
  const longSidePx = Math.max(widthPx, heightPx);
  const closed = grownLabels(labels, widthPx, Math.round(CLOSED_GAP * longSidePx));
  const grown = snappedLabels(raster, closed, labels, planeCount);
  const radiusPx = Math.max(1, Math.floor(SOFT_EDGE * longSidePx));
  const guide = guideOf(lightnessOfPixels(raster), widthPx, radiusPx);
  const best = {
    planes: new Uint8Array(labels.length * 3).fill(BARE),
    weights: new Float32Array(labels.length * 3),
  };
  const numbers = [...Array.from({ length: planeCount }, (_, plane) => plane), BARE];
  for (const plane of numbers) {
    const weights = weightsOf(guide, grown, plane === BARE ? NO_PLANE : plane);
    for (let pixel = 0; pixel < weights.length; pixel++) {
      const weight = weights[pixel] as number;
      if (weight >= LEAST) keepBest(best, pixel, plane, weight);
    }
  }
  return { widthPx, heightPx, packed: pack(best, labels.length) };
}

/** Calls back for each plane of a pixel that has a weight, 0..1; `BARE` for none. */
export function eachPlane(
  { packed }: SoftPlanes,
  pixel: number,
  visit: (plane: number, weight: number) => void,
): void {
  const at = pixel * 4;
  const second = packed[at + 2] as number;
  const third = packed[at + 3] as number;
  visit((packed[at] as number) & 15, (255 - second - third) / 255);
  if (second > 0) visit((packed[at] as number) >> 4, second / 255);
  if (third > 0) visit(packed[at + 1] as number, third / 255);
}
