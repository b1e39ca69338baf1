/**
 * A stored original as upright 8-bit sRGB pixels, whole or shrunk, and as the file's own samples.
 *
 * In the flow: original → [decode] → plate, renditions, clip map. IO: libvips decodes the bytes.
 * Transparency is laid on white, the ground of paper and of an untouched canvas. Profiles go through lcms with
 * libvips' default (perceptual) intent, which for matrix profiles is the relative colorimetric one. CMYK without
 * a profile is read with libvips' own.
 */
import sharp, { type Metadata, type Sharp } from 'sharp';
import { MAX_PIXELS, TAKE_IN_SECONDS } from './limits.ts';
import type { Original } from './original.ts';
import { readingFailed } from './reading-failed.ts';

/** Every picture is read once or twice: a cache of operations would only hold memory. */
sharp.cache(false);

/** Interleaved RGB, 8 bits, upright; `samples` has width × height × 3 entries. */
export interface DecodedPicture {
  readonly width: number;
  readonly height: number;
  readonly samples: Uint8Array;
}

const KIND = { 'image/jpeg': 'JPEG', 'image/png': 'PNG', 'image/webp': 'WebP' } as const;

/**
 * The picture in sRGB, shrunk to fit a square; never enlarged.
 *
 * @param sidePx Longest side of what comes out; null for the full size.
 * @throws Problem `picture-unreadable` for damaged or cut-off data, `picture-too-slow` past the time limit.
 */
export async function decodeSrgb(original: Original, sidePx: number | null): Promise<DecodedPicture> {
  return guarded(original, async () => {
    const header = await open(original, false).metadata();
    const picture = turned(open(original, false), original.orientation).flatten({ background: '#fff' });
    if (sidePx !== null) shrink(picture, sidePx);
    return header.depth === 'ushort' ? roundTo8Bits(picture) : raw8(picture.toColourspace('srgb'));
  });
}

/**
 * The picture's own samples before any profile, upright and full size: what clipping is told from.
 *
 * CMYK comes as sRGB, since its own samples have no light end and no dark end in common with the others.
 */
export async function decodeOwnSamples(original: Original): Promise<DecodedPicture> {
  return guarded(original, async () => {
    const cmyk = (await open(original, true).metadata()).space === 'cmyk';
    const picture = turned(open(original, !cmyk), original.orientation).flatten({ background: '#fff' });
    return raw8(picture.toColourspace('srgb'));
  });
}

/** Whether a colour profile stands between the file's own samples and sRGB. */
export async function isProfiled(original: Original): Promise<boolean> {
  return guarded(original, async () => isConverted(await open(original, true).metadata()));
}

function isConverted({ icc, space, depth }: Metadata): boolean {
  return icc !== undefined || space === 'cmyk' || depth === 'ushort';
}

/** Shrinks within a square with libvips' default reduction (Lanczos 3); a smaller picture stays as it is. */
export function shrink(picture: Sharp, sidePx: number): Sharp {
  return picture.resize(sidePx, sidePx, { fit: 'inside', withoutEnlargement: true, fastShrinkOnLoad: false });
}

function open(original: Original, ignoreIcc: boolean): Sharp {
  return sharp(original.bytes, { failOn: 'truncated', limitInputPixels: MAX_PIXELS, ignoreIcc }).timeout({
    seconds: TAKE_IN_SECONDS,
  });
}

/** Applies an EXIF orientation (Exif 2.32, tag 274). sharp mirrors before it turns. */
function turned(picture: Sharp, orientation: number): Sharp {
  switch (orientation) {
    case 2:
      return picture.flop();
    case 3:
      return picture.rotate(180);
    case 4:
      return picture.flip();
    case 5:
      return picture.flop().rotate(270);
    case 6:
      return picture.rotate(90);
    case 7:
      return picture.flop().rotate(90);
    case 8:
      return picture.rotate(270);
    default:
      return picture;
  }
}

async function raw8(picture: Sharp): Promise<DecodedPicture> {
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  if (info.channels !== 3) throw new Error(`Three channels were expected and ${info.channels} came.`);
  return { width: info.width, height: info.height, samples: data };
}

/** libvips cuts 16 bits down to 8 by dropping the lower half; rounding keeps the mean where it was. */
async function roundTo8Bits(picture: Sharp): Promise<DecodedPicture> {
  const { data, info } = await picture
    .toColourspace('rgb16')
    .raw({ depth: 'ushort' })
    .toBuffer({ resolveWithObject: true });
  const wide = new Uint16Array(data.buffer, data.byteOffset, data.length / 2);
  const samples = new Uint8Array(wide.length);
  for (let index = 0; index < samples.length; index++) samples[index] = Math.round((wide[index] ?? 0) / 257);
  return { width: info.width, height: info.height, samples };
}

async function guarded<T>(original: Original, decode: () => Promise<T>): Promise<T> {
  try {
    return await decode();
  } catch (cause) {
    throw readingFailed(cause, KIND[original.mediaType], original.bytes.length);
  }
}
