/**
 * Copies of pictures inside a worker: fetched and decoded once, kept, and made into bitmaps again.
 *
 * In the flow: HTTP copy -> [copies] -> what a worker reckons with. IO: HTTP, an off-screen canvas.
 */
import { type EncodedRaster, encodedFromRgba } from '#server/core/image/raster.ts';

const copies = new Map<string, Promise<EncodedRaster>>();

/**
 * A copy's pixels, kept once it was decoded; what failed is fetched again next time.
 *
 * @param address Whole, since a worker has no page to start from.
 * @throws Error when it cannot be fetched or decoded.
 */
export function copyAt(address: string): Promise<EncodedRaster> {
  const kept = copies.get(address);
  if (kept) return kept;
  const coming = decoded(address);
  copies.set(address, coming);
  coming.catch(() => copies.delete(address));
  return coming;
}

async function decoded(address: string): Promise<EncodedRaster> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The picture came with status ${response.status}.`);
  const bitmap = await createImageBitmap(await response.blob());
  const { width, height } = bitmap;
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('This browser gives no canvas to decode a picture on.');
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  return encodedFromRgba(width, height, context.getImageData(0, 0, width, height).data);
}

/** A picture to draw on a canvas, opaque. */
export function bitmapOf({ widthPx, heightPx, samples }: EncodedRaster): Promise<ImageBitmap> {
  const image = new ImageData(widthPx, heightPx);
  for (let from = 0, to = 0; from < samples.length; from += 3, to += 4) {
    image.data[to] = samples[from] ?? 0;
    image.data[to + 1] = samples[from + 1] ?? 0;
    image.data[to + 2] = samples[from + 2] ?? 0;
    image.data[to + 3] = 255;
  }
  return createImageBitmap(image);
}
