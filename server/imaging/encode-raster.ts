/**
 * Pixels made by our own code as files for browsers, and made smaller. In the flow: compare-states -> [encode-raster].
 * IO: libvips encodes. JPEG as the viewing copies of pictures are: 4:4:4 at quality 92, without metadata.
 */
import sharp from 'sharp';
import { type EncodedRaster, encodedRaster } from '../core/image/raster.ts';
import { shrink } from './decode.ts';

const fromRaster = ({ widthPx: width, heightPx: height, samples }: EncodedRaster) =>
  sharp(samples, { raw: { width, height, channels: 3 } });

/** @param sidePx long side at most; a smaller picture stays as it is. */
export async function smallerRaster(raster: EncodedRaster, sidePx: number): Promise<EncodedRaster> {
  if (Math.max(raster.widthPx, raster.heightPx) <= sidePx) return raster;
  const { data, info } = await shrink(fromRaster(raster), sidePx).raw().toBuffer({ resolveWithObject: true });
  return encodedRaster(info.width, info.height, data);
}

export function viewingJpeg(raster: EncodedRaster): Promise<Buffer> {
  return fromRaster(raster).jpeg({ quality: 92, chromaSubsampling: '4:4:4' }).toBuffer();
}

/** @param codes sRGB, one a pixel. */
export function greyPng(codes: Uint8Array, width: number, height: number): Promise<Buffer> {
  return sharp(codes, { raw: { width, height, channels: 1 } })
    .toColourspace('b-w')
    .png()
    .toBuffer();
}
