/**
 * A stored picture as it stands on a printed page: put right, cut, shrunk, as a JPEG.
 *
 * In the flow: sheet's worker -> [sheet-picture] -> server/sheet. IO: reads the plate's file; libvips encodes. Made from
 * the plate of at most 2048 px, not from the original: on paper that is more than 200 dots an inch.
 */
import sharp from 'sharp';
import type { PhotoCorrection } from '../core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '../core/image/raster.ts';
import { applyCorrection, planCorrection } from '../core/rectify/correct-photo.ts';

/** A picture for a page. */
export interface PagePicture {
  jpeg: Buffer;
  widthPx: number;
  heightPx: number;
}

export interface WantedPicture {
  platePath: string;
  /** How the photo of a painting is put right; null = as it stands. */
  photo: PhotoCorrection | null;
  /** x0, y0, x1, y1 in 0..1 of the picture; null = whole. */
  box: readonly [number, number, number, number] | null;
}

/** @param sidePx Longest side, pixels; a smaller picture keeps its size. @throws Problem `corners-invalid`, `card-invalid`. */
export async function pagePicture(wanted: WantedPicture, sidePx: number): Promise<PagePicture> {
  const { widthPx: width, heightPx: height, samples } = await shownRaster(wanted);
  const picture = sharp(samples, { raw: { width, height, channels: 3 } })
    .resize(sidePx, sidePx, { fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: 88, chromaSubsampling: '4:4:4', mozjpeg: false });
  const { data, info } = await picture.toBuffer({ resolveWithObject: true });
  return { jpeg: data, widthPx: info.width, heightPx: info.height };
}

/** The pixels that are shown: put right, then cut. */
export async function shownRaster({ platePath, photo, box }: WantedPicture): Promise<EncodedRaster> {
  const { data, info } = await sharp(platePath).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const plate = encodedRaster(info.width, info.height, data);
  const right =
    photo?.corners || photo?.cards?.length ? applyCorrection(plate, planCorrection(plate, photo)) : plate;
  return box ? cut(right, box) : right;
}

async function cut(
  { widthPx, heightPx, samples }: EncodedRaster,
  [x0, y0, x1, y1]: readonly [number, number, number, number],
): Promise<EncodedRaster> {
  const left = Math.min(widthPx - 1, Math.max(0, Math.round(x0 * widthPx)));
  const top = Math.min(heightPx - 1, Math.max(0, Math.round(y0 * heightPx)));
  const width = Math.max(1, Math.min(widthPx, Math.round(x1 * widthPx)) - left);
  const height = Math.max(1, Math.min(heightPx, Math.round(y1 * heightPx)) - top);
  const { data, info } = await sharp(samples, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .extract({ left, top, width, height })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return encodedRaster(info.width, info.height, data);
}
