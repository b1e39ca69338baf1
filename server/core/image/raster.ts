/**
 * The shapes pixels travel in.
 *
 * In the flow: decode -> [raster] -> correct -> prepare -> measure. Rows run top to bottom, samples are
 * interleaved: red of (x, y) sits at `(y * widthPx + x) * 3`.
 * Pure: types and conversions, no IO.
 */
import type { PhotoFacts } from '../capture/photo-facts.ts';

/** 8-bit sRGB (IEC 61966-2-1), three samples a pixel, no alpha. */
export interface EncodedRaster {
  readonly encoding: 'srgb8';
  readonly widthPx: number;
  readonly heightPx: number;
  /** `widthPx * heightPx * 3` samples, 0..255. */
  readonly samples: Uint8Array | Uint8ClampedArray;
}

/** Values of a clip map. */
export const CLIP = { none: 0, blown: 1, crushed: 2 } as const;

/** A plate ready to be measured: upright, corrected, at most `PLATE_LIMIT_PX` on the long side. */
export interface MeasurablePlate {
  readonly raster: EncodedRaster;
  /**
   * One byte a plate pixel: `CLIP.blown` where the decoded picture before shrinking had a channel of 254 or
   * more, `CLIP.crushed` where all channels were 1 or less, else `CLIP.none`. Left out or null: it is read
   * from the plate itself.
   */
  readonly clipped?: Uint8Array | null;
  /** 1 where there is glare, a byte a plate pixel; null or left out where there is none or nobody looked. */
  readonly glare?: Uint8Array | null;
  /** How a painting was photographed; left out for references. */
  readonly facts?: PhotoFacts | null;
}

/** Longest side of a plate, pixels. Plates are never enlarged. */
export const PLATE_LIMIT_PX = 2048;

/**
 * Wraps samples as an encoded raster.
 * @throws Error when the number of samples is not width × height × 3 (a bug of the caller).
 */
export function encodedRaster(
  widthPx: number,
  heightPx: number,
  samples: Uint8Array | Uint8ClampedArray,
): EncodedRaster {
  if (samples.length !== widthPx * heightPx * 3) {
    throw new Error(
      `A raster of ${widthPx} by ${heightPx} needs ${widthPx * heightPx * 3} samples, not ${samples.length}.`,
    );
  }
  return { encoding: 'srgb8', widthPx, heightPx, samples };
}

/** Drops the fourth sample of a canvas' RGBA pixels (which are opaque for our pictures). */
export function encodedFromRgba(widthPx: number, heightPx: number, rgba: ArrayLike<number>): EncodedRaster {
  const samples = new Uint8Array(widthPx * heightPx * 3);
  for (let from = 0, to = 0; to < samples.length; from += 4, to += 3) {
    samples[to] = rgba[from] as number;
    samples[to + 1] = rgba[from + 1] as number;
    samples[to + 2] = rgba[from + 2] as number;
  }
  return encodedRaster(widthPx, heightPx, samples);
}

/** The clip map of a picture at its own size: see `MeasurablePlate.clipped`. */
export function clipMap(raster: EncodedRaster): Uint8Array {
  const { samples } = raster;
  const map = new Uint8Array(raster.widthPx * raster.heightPx);
  for (let pixel = 0, at = 0; pixel < map.length; pixel++, at += 3) {
    map[pixel] = clipOf(samples[at] as number, samples[at + 1] as number, samples[at + 2] as number);
  }
  return map;
}

/** Clip value of one 8-bit colour. */
export function clipOf(red: number, green: number, blue: number): number {
  if (red >= 254 || green >= 254 || blue >= 254) return CLIP.blown;
  return red <= 1 && green <= 1 && blue <= 1 ? CLIP.crushed : CLIP.none;
}
