/**
 * How hard a plane's edge stands against what lies farther behind it.
 *
 * In the flow: label map + unblurred L* -> [edge] -> figures. At points along the boundary L* is read along
 * the normal; the shortest stretch in which it goes from 10 % to 90 % of the way is the width of the edge.
 * Edge = contrast across / width, the width in % of the picture's width. Pure.
 */
import { NO_PLANE } from '../planes/label-map.ts';
import type { Prepared } from './prepare.ts';

/** Points looked at along one boundary. */
const MOST_POINTS = 240;
/** Half length of a profile and radius of the window that gives the normal, as shares of the long side. */
const HALF_PROFILE = 0.01;
const NORMAL_WINDOW = 0.005;
/** Samples a pixel along the profile. */
const PER_PIXEL = 2;
/** Contrast in L* under which an edge is lost: hardness 0. */
const LOST_CONTRAST = 1;

/**
 * Pixels of each plane that touch a farther plane, row by row.
 * @param labels one byte a pixel. @returns by label.
 */
export function boundariesOf(labels: Uint8Array, widthPx: number, planes: number): number[][] {
  const found: number[][] = Array.from({ length: planes }, () => []);
  const note = (at: number, beside: number): void => {
    const [p, q] = [labels[at] as number, labels[beside] as number];
    if (p === NO_PLANE || q === NO_PLANE) return;
    found[Math.max(p, q)]?.push(p > q ? at : beside);
  };
  for (let start = 0; start < labels.length; start += widthPx) {
    const last = start + widthPx - 1;
    const hasBelow = last + widthPx < labels.length;
    for (let at = start; at <= last; at++) {
      const label = labels[at];
      if (hasBelow && label !== labels[at + widthPx]) note(at, at + widthPx);
      if (at < last && label !== labels[at + 1]) note(at, at + 1);
    }
  }
  return found;
}

/** At most `MOST_POINTS` of some pixels, evenly spaced. */
function thinned(pixels: readonly number[]): number[] {
  const every = Math.max(1, pixels.length / MOST_POINTS);
  return Array.from(
    { length: Math.min(MOST_POINTS, pixels.length) },
    (_, at) => pixels[Math.floor(at * every)] as number,
  );
}

/** 1 in the near plane, −1 in a farther one, 0 elsewhere. */
function sideOf(label: number, near: number): number {
  if (label === near) return 1;
  return label < near ? -1 : 0;
}

/** Unit vector from the farther plane into the near one, or null where it can't be told. */
function normalAt(
  prepared: Prepared,
  labels: Uint8Array,
  x: number,
  y: number,
  near: number,
): [number, number] | null {
  const { widthPx, heightPx } = prepared;
  const radius = Math.max(3, Math.round(NORMAL_WINDOW * prepared.longSidePx));
  let [sumX, sumY] = [0, 0];
  for (let py = Math.max(0, y - radius); py <= Math.min(heightPx - 1, y + radius); py++) {
    const half = Math.floor(Math.sqrt(radius ** 2 - (py - y) ** 2));
    for (let px = Math.max(0, x - half); px <= Math.min(widthPx - 1, x + half); px++) {
      const towards = sideOf(labels[py * widthPx + px] as number, near);
      sumX += towards * (px - x);
      sumY += towards * (py - y);
    }
  }
  const length = Math.hypot(sumX, sumY);
  return length === 0 ? null : [sumX / length, sumY / length];
}

function sampleAt(lightness: Float32Array, widthPx: number, x: number, y: number): number {
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const [along, down] = [x - left, y - top];
  const at = top * widthPx + left;
  const upper = (lightness[at] as number) * (1 - along) + (lightness[at + 1] as number) * along;
  const lower =
    (lightness[at + widthPx] as number) * (1 - along) + (lightness[at + widthPx + 1] as number) * along;
  return upper * (1 - down) + lower * down;
}

/** L* along the normal from the farther plane into the near one; null where it would leave either. */
function profileAt(
  prepared: Prepared,
  lightness: Float32Array,
  labels: Uint8Array,
  pixel: number,
  near: number,
): Float64Array | null {
  const { widthPx, heightPx } = prepared;
  const [x, y] = [pixel % widthPx, Math.floor(pixel / widthPx)];
  const normal = normalAt(prepared, labels, x, y, near);
  if (!normal) return null;
  const half = HALF_PROFILE * prepared.longSidePx;
  const inside = (sign: 1 | -1): number | null => {
    const [px, py] = [x + sign * half * normal[0], y + sign * half * normal[1]];
    if (px < 0 || py < 0 || px >= widthPx - 1 || py >= heightPx - 1) return null;
    return labels[Math.round(py) * widthPx + Math.round(px)] as number;
  };
  const farLabel = inside(-1);
  if (farLabel === null || farLabel >= near || inside(1) !== near) return null;
  const steps = Math.round(2 * half * PER_PIXEL);
  return Float64Array.from({ length: steps + 1 }, (_, step) => {
    const along = step / PER_PIXEL - half;
    return sampleAt(
      lightness,
      widthPx,
      Math.min(widthPx - 1.001, Math.max(0, x + along * normal[0])),
      Math.min(heightPx - 1.001, Math.max(0, y + along * normal[1])),
    );
  });
}

function meanBetween(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let at = from; at < to; at++) sum += values[at] as number;
  return sum / (to - from);
}

/** Place between two samples where the way done passes `level`. */
function passing(before: number, after: number, level: number): number {
  return after === before ? 0 : (level - before) / (after - before);
}

/**
 * Contrast across a profile and width of its shortest 10–90 % rise.
 * @param profile equally spaced L*. @returns width in samples, or null width when there is no such rise.
 */
export function riseOf(profile: Float64Array): { contrast: number; width: number | null } {
  const quarter = Math.floor(profile.length / 4);
  const start = meanBetween(profile, 0, quarter);
  const end = meanBetween(profile, profile.length - quarter, profile.length);
  const contrast = Math.abs(end - start);
  if (contrast === 0) return { contrast, width: null };
  const done = profile.map((lightness) => (lightness - start) / (end - start));
  let shortest: number | null = null;
  let began: number | null = null;
  for (let at = 1; at < done.length; at++) {
    const [before, now] = [done[at - 1] as number, done[at] as number];
    if (before <= 0.1 && now > 0.1) began = at - 1 + passing(before, now, 0.1);
    if (began !== null && now >= 0.9) {
      const width = at - 1 + passing(before, now, 0.9) - began;
      if (shortest === null || width < shortest) shortest = width;
      began = null;
    }
  }
  return { contrast, width: shortest };
}

/** Whether glare lies on a pixel. */
function inGlare({ glare, side, columns }: Prepared, pixel: number, widthPx: number): boolean {
  if (!glare) return false;
  const row = Math.floor(pixel / widthPx);
  return glare[Math.floor(row / side) * columns + Math.floor((pixel - row * widthPx) / side)] === 1;
}

/**
 * Edge hardness at points along some pixels of a plane's boundary to what lies farther behind it, in L* per % of the
 * picture's width; points in glare are left out. A plane's edge is their median.
 * @param pixels of the boundary, as many as there are. @param near label of the plane.
 * @returns empty where the plate is too small to tell.
 */
export function hardnessAlong(
  prepared: Prepared,
  labels: Uint8Array,
  pixels: readonly number[],
  near: number,
): number[] {
  const { pixelLightness, widthPx } = prepared;
  if (!pixelLightness) return [];
  const hardness: number[] = [];
  for (const pixel of thinned(pixels)) {
    if (inGlare(prepared, pixel, widthPx)) continue;
    const profile = profileAt(prepared, pixelLightness, labels, pixel, near);
    if (!profile) continue;
    const { contrast, width } = riseOf(profile);
    if (contrast < LOST_CONTRAST) hardness.push(0);
    else if (width !== null) hardness.push(contrast / ((width / PER_PIXEL / widthPx) * 100));
  }
  return hardness;
}
