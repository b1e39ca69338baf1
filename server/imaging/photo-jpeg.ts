/**
 * Pixels as the JPEG that a phone would hand over.
 *
 * In the flow: demo → [photo-jpeg] → take-in. IO: libvips encodes.
 */
import sharp from 'sharp';
import type { DecodedPicture } from './decode.ts';

/** JPEG 4:4:4 at quality 92, sRGB, without metadata; the same pixels give the same bytes on one version of libvips. */
export function photoJpeg({ width, height, samples }: DecodedPicture): Promise<Buffer> {
  const picture = sharp(samples, { raw: { width, height, channels: 3 } });
  return picture.jpeg({ quality: 92, chromaSubsampling: '4:4:4' }).toBuffer();
}
