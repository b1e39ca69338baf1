/**
 * Finds glare: near-clipped, nearly neutral blobs brighter than what surrounds them.
 *
 * In the flow: corrected plate + near-clipped pixels of the photo -> [glare] -> mask -> prepare. A blob grows ring
 * by ring until its surroundings stop getting darker. Pure. Source: definition of the measuring rules; the limits
 * are our own.
 */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { EncodedRaster } from '../image/raster.ts';

/** Largest channel of the photo from which a pixel is near-clipped. */
export const NEAR_CLIPPED = 250;
/** Least / largest channel, in linear light, of what is nearly neutral. */
const NEUTRAL = 0.5;
/** Fewest pixels of a blob, and largest part of the painting that one can cover. */
const FEWEST_PX = 6;
const LARGEST = 0.2;
/** Share of near-clipped pixels above which the photo is overexposed and nothing can be told apart. */
const OVEREXPOSED = 0.4;
/** Light around a blob over its own, under which it stands out. */
const STANDS_OUT = 0.5;
/** The same where the cards say that paint can't be this light. */
const STANDS_OUT_FOR_SURE = 0.85;
/** Part of a blob's rim that may lie on the border of the painting: more is a blown sky. */
const ON_BORDER = 0.2;
/** A ring is at the level of the surroundings when it is no darker than this share of the ring two before. */
const LEVEL = 0.985;
/** How far a blob may grow: in its own radii, and as a share of the long side. */
const GROWS = 1.5;
const GROWS_AT_MOST = 0.03;

export interface Glare {
  /** 1 where there is glare, a byte a pixel. */
  readonly mask: Uint8Array;
  readonly share: number;
}

interface Blob {
  readonly pixels: number[];
  /** Pixels of it on the border of the painting, and on its own rim. */
  readonly onBorder: number;
  readonly onRim: number;
}

function isNeutral({ samples }: EncodedRaster, pixel: number): boolean {
  const at = pixel * 3;
  const [red, green, blue] = [samples[at] as number, samples[at + 1] as number, samples[at + 2] as number];
  const least = LINEAR_OF_CODE[Math.min(red, green, blue)] as number;
  return least >= NEUTRAL * (LINEAR_OF_CODE[Math.max(red, green, blue)] as number);
}

/** The four neighbours inside the picture. */
function neighbours(pixel: number, widthPx: number, count: number): number[] {
  const x = pixel % widthPx;
  const found: number[] = [];
  if (x > 0) found.push(pixel - 1);
  if (x < widthPx - 1) found.push(pixel + 1);
  if (pixel >= widthPx) found.push(pixel - widthPx);
  if (pixel + widthPx < count) found.push(pixel + widthPx);
  return found;
}

/** Everything connected to one pixel of the core. */
function blobFrom(start: number, core: Uint8Array, seen: Uint8Array, widthPx: number): Blob {
  const pixels = [start];
  seen[start] = 1;
  let [onBorder, onRim] = [0, 0];
  /** 1 where the neighbour belongs to the core. */
  const visit = (other: number): number => {
    if (core[other] === 0) return 0;
    if (seen[other] === 0) {
      seen[other] = 1;
      pixels.push(other);
    }
    return 1;
  };
  for (const pixel of pixels) {
    const x = pixel % widthPx;
    const [left, right] = [x > 0, x < widthPx - 1];
    const [above, below] = [pixel >= widthPx, pixel + widthPx < core.length];
    let within = left ? visit(pixel - 1) : 0;
    if (right) within += visit(pixel + 1);
    if (above) within += visit(pixel - widthPx);
    if (below) within += visit(pixel + widthPx);
    if (!(left && right && above && below)) onBorder++;
    if (within < 4) onRim++;
  }
  return { pixels, onBorder, onRim };
}

function blobsOf(core: Uint8Array, widthPx: number): Blob[] {
  const seen = new Uint8Array(core.length);
  const blobs: Blob[] = [];
  for (let start = 0; start < core.length; start++) {
    if (core[start] === 1 && seen[start] === 0) blobs.push(blobFrom(start, core, seen, widthPx));
  }
  return blobs;
}

function countOf(map: Uint8Array): number {
  let count = 0;
  for (let at = 0; at < map.length; at++) count += map[at] as number;
  return count;
}

const meanLight = (light: Float32Array, pixels: readonly number[]): number =>
  pixels.reduce((sum, pixel) => sum + (light[pixel] as number), 0) / pixels.length;

/** Pixels beside a ring that were not taken yet; they are taken now. */
function nextRing(ring: readonly number[], taken: Set<number>, widthPx: number, count: number): number[] {
  const next: number[] = [];
  for (const pixel of ring) {
    for (const other of neighbours(pixel, widthPx, count)) {
      if (taken.has(other)) continue;
      taken.add(other);
      next.push(other);
    }
  }
  return next;
}

/**
 * Rings around a blob until the light no longer falls.
 * @returns the grown blob and the light around it; null where the blob fills the picture.
 */
function grown(
  blob: Blob,
  light: Float32Array,
  widthPx: number,
  longSidePx: number,
): { pixels: number[]; around: number } | null {
  const most = Math.max(
    4,
    Math.min(GROWS * Math.sqrt(blob.pixels.length / Math.PI), GROWS_AT_MOST * longSidePx),
  );
  const taken = new Set(blob.pixels);
  const levels: number[] = [meanLight(light, blob.pixels)];
  const pixels = [...blob.pixels];
  let ring = blob.pixels;
  for (let step = 1; step <= most; step++) {
    const next = nextRing(ring, taken, widthPx, light.length);
    if (next.length === 0) break;
    const level = meanLight(light, next);
    const before = levels[step - 2];
    levels.push(level);
    ring = next;
    if (before !== undefined && step > 2 && level >= before * LEVEL) break;
    for (const pixel of next) pixels.push(pixel);
  }
  const around = levels.at(-1);
  return levels.length < 2 || around === undefined ? null : { pixels, around };
}

/** By its size and place. Along the painting's border lies a blown sky rather than glare. */
function mayBeGlare({ pixels, onBorder, onRim }: Blob, pixelsInAll: number, beyondPaint: boolean): boolean {
  if (pixels.length < FEWEST_PX || pixels.length > LARGEST * pixelsInAll) return false;
  return beyondPaint || onBorder <= ON_BORDER * onRim;
}

/**
 * Finds and masks glare.
 * @param plate corrected. @param nearClipped 1 where a channel of the photo is at `NEAR_CLIPPED` or more, a byte a
 *   plate pixel. @param beyondPaint whether the cards say that light this strong is beyond white paint.
 */
export function findGlare(plate: EncodedRaster, nearClipped: Uint8Array, beyondPaint: boolean): Glare {
  const { widthPx, heightPx, samples } = plate;
  const mask = new Uint8Array(nearClipped.length);
  const near = countOf(nearClipped);
  if (near < FEWEST_PX || near > OVEREXPOSED * mask.length) return { mask, share: 0 };
  const core = nearClipped.map((value, pixel) => (value === 1 && isNeutral(plate, pixel) ? 1 : 0));
  const blobs = blobsOf(core, widthPx).filter((blob) => mayBeGlare(blob, core.length, beyondPaint));
  if (blobs.length === 0) return { mask, share: 0 };
  const light = new Float32Array(core.length);
  for (let pixel = 0; pixel < light.length; pixel++) {
    light[pixel] = LINEAR_OF_CODE[samples[pixel * 3 + 1] as number] as number;
  }
  for (const blob of blobs) {
    const found = grown(blob, light, widthPx, Math.max(widthPx, heightPx));
    const limit = beyondPaint ? STANDS_OUT_FOR_SURE : STANDS_OUT;
    if (!found || found.around > limit * meanLight(light, blob.pixels)) continue;
    for (const pixel of found.pixels) mask[pixel] = 1;
  }
  return { mask, share: countOf(mask) / mask.length };
}
