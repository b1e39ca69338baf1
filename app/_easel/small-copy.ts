/**
 * The pixels of a small copy of a picture, for measuring in this browser.
 *
 * In the flow: HTTP copy -> canvas -> [small-copy] -> preview worker. IO: fetches one picture, decodes it on a canvas.
 */
import { copyAddress } from './picture-copies.tsx';
import type { CanvasPixels } from './preview-measuring.ts';

/** Long side, pixels: small enough that two of them are measured within one step of a drag. */
const LONG_SIDE_PX = 320;

/** @param longSidePx At most 640. @throws Error when the picture cannot be fetched or decoded. */
export async function smallCopy(
  boardId: string,
  pictureId: string,
  longSidePx = LONG_SIDE_PX,
): Promise<CanvasPixels> {
  const image = new Image();
  image.src = copyAddress(boardId, pictureId, 640);
  await image.decode();
  const scale = Math.min(1, longSidePx / Math.max(image.naturalWidth, image.naturalHeight));
  const width = Math.max(1, Math.round(image.naturalWidth * scale));
  const height = Math.max(1, Math.round(image.naturalHeight * scale));
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (!context) throw new Error('This browser gives no canvas to decode a picture on.');
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  return { widthPx: width, heightPx: height, rgba: data };
}
