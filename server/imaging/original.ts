/**
 * What is kept of an upload: its pixels and its profile, everything else removed.
 *
 * In the flow: inspect → [original] → decode, renditions, blob. IO: reads the file.
 * JPEG, PNG and WebP keep their compressed data bit for bit; TIFF, AVIF and HEIC are re-written as lossless PNG.
 */
import { readFile } from 'node:fs/promises';
import sharp, { type Metadata } from 'sharp';
import { decodeHeic } from './heic.ts';
import { cleanProfile } from './icc.ts';
import { type Inspection, TYPE_NAMES } from './inspect.ts';
import { readMainItem } from './isobmff.ts';
import { MAX_PIXELS, TAKE_IN_SECONDS } from './limits.ts';
import { stripPng, withProfile } from './png-chunks.ts';
import { readingFailed } from './reading-failed.ts';
import { profileOf } from './stated-colour.ts';
import { stripJpeg } from './strip-jpeg.ts';
import { stripWebp } from './strip-webp.ts';

/** A stored original: bytes of a JPEG, PNG or WebP file without metadata. */
export interface Original {
  readonly bytes: Buffer;
  readonly mediaType: 'image/jpeg' | 'image/png' | 'image/webp';
  /** EXIF orientation 1..8 that still has to be applied, since the bytes no longer say it. */
  readonly orientation: number;
}

/**
 * @param path The uploaded file.
 * @param inspection What `inspect` said of it.
 * @param name Its name, for sentences only.
 * @throws Problem `picture-unreadable` for damaged or cut-off files, `picture-kind-refused` for HDR ones.
 */
export async function originalOf(path: string, inspection: Inspection, name: string): Promise<Original> {
  const bytes = await readFile(path);
  const { type, orientation } = inspection;
  switch (type) {
    case 'jpeg':
      return { bytes: stripJpeg(bytes), mediaType: 'image/jpeg', orientation };
    case 'png':
      return { bytes: stripPng(bytes), mediaType: 'image/png', orientation };
    case 'webp':
      return { bytes: stripWebp(bytes), mediaType: 'image/webp', orientation };
    case 'heic':
      return upright(await heicToPng(bytes, name));
    case 'avif':
      return upright(await toPng(bytes, inspection, profileOf(readMainItem(bytes)?.colour ?? null, name)));
    case 'tiff':
      return upright(await toPng(bytes, inspection, null));
  }
}

function upright(png: Buffer): Original {
  return { bytes: png, mediaType: 'image/png', orientation: 1 };
}

async function heicToPng(bytes: Buffer, name: string): Promise<Buffer> {
  const item = readMainItem(bytes);
  const stated = profileOf(item?.colour ?? null, name);
  const { width, height, channels, samples } = await decodeHeic(bytes, item?.bits ?? 8);
  const wide = samples instanceof Uint16Array;
  const picture = sharp(samples, { raw: { width, height, channels } });
  const png = await (wide ? picture.toColourspace('rgb16') : picture).png({ compressionLevel: 4 }).toBuffer();
  return withProfile(png, stated && cleanProfile(stated));
}

/** Samples as they are in the file, 8 or 16 bits; only what PNG cannot hold (CMYK, Lab) is turned into sRGB. */
async function toPng(bytes: Buffer, { type }: Inspection, stated: Buffer | null): Promise<Buffer> {
  try {
    // libtiff reports a missing strip as an error, not as a truncation.
    const options = { failOn: 'error', limitInputPixels: MAX_PIXELS } as const;
    const header = await sharp(bytes, options).metadata();
    const holds = ['srgb', 'rgb16', 'b-w', 'grey16'].includes(header.space);
    const png = await sharp(bytes, { ...options, ignoreIcc: holds })
      .timeout({ seconds: TAKE_IN_SECONDS })
      .autoOrient()
      .toColourspace(pngColourSpace(header))
      .png({ compressionLevel: 4 })
      .toBuffer();
    const profile = stated ?? header.icc ?? null;
    return withProfile(png, holds && profile ? cleanProfile(profile) : null);
  } catch (cause) {
    throw readingFailed(cause, TYPE_NAMES[type], bytes.length);
  }
}

function pngColourSpace({ space, depth }: Metadata): 'srgb' | 'rgb16' | 'b-w' | 'grey16' {
  const grey = space === 'b-w' || space === 'grey16';
  if (depth === 'ushort' || depth === 'short') return grey ? 'grey16' : 'rgb16';
  return grey ? 'b-w' : 'srgb';
}
