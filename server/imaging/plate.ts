/**
 * From a file to the plate that is measured: the one path, for the server and for the headless command alike.
 *
 * In the flow: inspect → original → [plate] → measure. IO: reads the file; libvips decodes.
 * Decode → orientation → profile to sRGB → shrink → (a painting's photo: card gain, light field, squaring) →
 * one rounding to 8 bits. What was clipped is told from the full-size picture before shrinking.
 */
import { basename } from 'node:path';
import sharp from 'sharp';
import { type PhotoNotes, photographed } from '../core/capture/photographed.ts';
import type { PhotoCorrection } from '../core/contract/setup.ts';
import { encodedRaster, type MeasurablePlate, PLATE_LIMIT_PX } from '../core/image/raster.ts';

import { meanSidesPx } from '../core/rectify/side-ratio.ts';
import { type ClippedShares, clipOnGrid } from './clip-map.ts';
import { type DecodedPicture, decodeOwnSamples, decodeSrgb, isProfiled, shrink } from './decode.ts';
import { inspect } from './inspect.ts';
import { type Original, originalOf } from './original.ts';
import { type EncodedRendition, losslessPng } from './renditions.ts';

/** Longest side of a photo that is to be squared, pixels. */
const WORKING_LIMIT_PX = 4096;

/** A plate as it is before any correction, with how much of the full-size picture was clipped. */
export interface UncorrectedPlate extends MeasurablePlate {
  readonly clipped: Uint8Array;
  readonly shares: ClippedShares;
  /** Long side of the picture before shrinking. */
  readonly fullSidePx: number;
}

/**
 * The plate of a reference's file.
 *
 * @param path A JPEG, PNG, WebP, TIFF, AVIF or HEIC file.
 * @throws Problem as `inspect` and `originalOf` do.
 */
export async function readPlate(path: string): Promise<MeasurablePlate> {
  return uncorrectedPlate(await readOriginal(path), PLATE_LIMIT_PX);
}

/**
 * The plate of a painting's photo, put right, with what is known about the photograph.
 *
 * @throws Problem as `readPlate` does, and for corners or cards that cannot be used.
 */
export async function readPaintingPlate(
  path: string,
  photo?: PhotoCorrection,
  noted?: PhotoNotes,
): Promise<MeasurablePlate> {
  return paintingPlateOf(await readOriginal(path), photo, noted);
}

async function readOriginal(path: string): Promise<Original> {
  const name = basename(path);
  return originalOf(path, await inspect(path, name), name);
}

/** The plate of a stored painting's original; see `readPaintingPlate`. */
export async function paintingPlateOf(
  original: Original,
  photo?: PhotoCorrection,
  noted?: PhotoNotes,
): Promise<MeasurablePlate> {
  const corrected = photo?.corners !== undefined || (photo?.cards?.length ?? 0) > 0;
  const working = await uncorrectedPlate(original, corrected ? workingSide(photo ?? {}) : PLATE_LIMIT_PX);
  return photographed(working, photo, working.fullSidePx, noted);
}

/**
 * Long side to decode a photo at, pixels: where the painting fills half of the photo, twice the plate, so that
 * squaring need not enlarge it. The limit keeps 24 megapixels within 600 MB.
 */
function workingSide({ corners }: PhotoCorrection): number {
  if (!corners) return PLATE_LIMIT_PX;
  const filled = Math.max(...meanSidesPx(corners, 1, 1));
  return Math.round(Math.min(WORKING_LIMIT_PX, PLATE_LIMIT_PX / Math.max(filled, 0.01)));
}

/** The shrunk picture as it is. @param sidePx Longest side of the plate, pixels; a smaller picture keeps its size. */
export async function uncorrectedPlate(original: Original, sidePx: number): Promise<UncorrectedPlate> {
  const own = await decodeOwnSamples(original);
  const small = (await isProfiled(original)) ? await decodeSrgb(original, sidePx) : await shrunk(own, sidePx);
  const { map, shares } = clipOnGrid(own, small.width, small.height);
  return {
    raster: encodedRaster(small.width, small.height, small.samples),
    clipped: map,
    shares,
    fullSidePx: Math.max(own.width, own.height),
  };
}

/** A plate and its clip map as files, so that measuring later need not read the full-size picture again. */
export async function plateFiles(plate: UncorrectedPlate): Promise<EncodedRendition[]> {
  const { widthPx: width, heightPx: height, samples } = plate.raster;
  const clip = sharp(plate.clipped, { raw: { width, height, channels: 1 } });
  return [
    await losslessPng('plate', { width, height, samples: new Uint8Array(samples) }),
    {
      name: 'clip-map',
      mediaType: 'image/png',
      width,
      height,
      bytes: await clip.toColourspace('b-w').png({ compressionLevel: 6 }).toBuffer(),
    },
  ];
}

/** The plate from the two files that `plateFiles` made; the same bytes come out. */
export async function readPlateFiles(plate: Buffer, clipMap: Buffer): Promise<MeasurablePlate> {
  const [colours, clip] = await Promise.all([
    sharp(plate).raw().toBuffer({ resolveWithObject: true }),
    sharp(clipMap).toColourspace('b-w').raw().toBuffer(),
  ]);
  const { width, height } = colours.info;
  return { raster: encodedRaster(width, height, colours.data), clipped: clip };
}

async function shrunk(picture: DecodedPicture, sidePx: number): Promise<DecodedPicture> {
  const { width, height, samples } = picture;
  if (Math.max(width, height) <= sidePx) return picture;
  const { data, info } = await shrink(sharp(samples, { raw: { width, height, channels: 3 } }), sidePx)
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, samples: data };
}
