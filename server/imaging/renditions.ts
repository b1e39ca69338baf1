/**
 * The smaller copies of a picture that browsers see: three viewing sizes and a lossless small one.
 *
 * In the flow: original → [renditions] → blobs. IO: libvips encodes.
 * Viewing copies are JPEG 4:4:4 at quality 92 in sRGB: WebP and AVIF at their usual settings shift colours by
 * 4 dE00 at the 95th percentile, this by 1.4. None carries metadata.
 */
import sharp, { type Sharp } from 'sharp';
import { PICTURE_SIZES } from '../core/contract/picture-choices.ts';
import { type DecodedPicture, decodeSrgb, shrink } from './decode.ts';
import type { Original } from './original.ts';

/** One smaller copy. */
export interface EncodedRendition {
  /** '640', '1280', '2560', 'lossless-640', 'plate' or 'clip-map'. */
  readonly name: string;
  readonly mediaType: 'image/jpeg' | 'image/png';
  readonly width: number;
  readonly height: number;
  readonly bytes: Buffer;
}

const LARGEST_SIDE_PX = Math.max(...PICTURE_SIZES);
const SMALLEST_SIDE_PX = Math.min(...PICTURE_SIZES);

/** The copies that browsers see; a picture smaller than a size stands in that size as it is. */
export async function viewingCopies(original: Original): Promise<EncodedRendition[]> {
  const largest = await decodeSrgb(original, LARGEST_SIDE_PX);
  const copies: EncodedRendition[] = [];
  for (const side of PICTURE_SIZES) {
    const picture = shrink(fromPixels(largest), side).jpeg({ quality: 92, chromaSubsampling: '4:4:4' });
    copies.push(await encoded(`${side}`, 'image/jpeg', picture));
  }
  const small = shrink(fromPixels(largest), SMALLEST_SIDE_PX).png({ compressionLevel: 9 });
  copies.push(await encoded(`lossless-${SMALLEST_SIDE_PX}`, 'image/png', small));
  return copies;
}

/** Pixels as a PNG that decodes to the same pixels; quick rather than small. */
export async function losslessPng(name: string, pixels: DecodedPicture): Promise<EncodedRendition> {
  return encoded(name, 'image/png', fromPixels(pixels).png({ compressionLevel: 2, adaptiveFiltering: true }));
}

function fromPixels({ width, height, samples }: DecodedPicture): Sharp {
  return sharp(samples, { raw: { width, height, channels: 3 } });
}

async function encoded(
  name: string,
  mediaType: EncodedRendition['mediaType'],
  picture: Sharp,
): Promise<EncodedRendition> {
  const { data, info } = await picture.toBuffer({ resolveWithObject: true });
  return { name, mediaType, width: info.width, height: info.height, bytes: data };
}
