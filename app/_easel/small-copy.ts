/**
 * The pixels of a small copy of a picture, for measuring in this browser.
 *
 * In the flow: HTTP copy -> canvas -> [small-copy] -> preview worker. IO: fetches one picture, decodes it on a canvas.
 */
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { copyAddress } from './picture-copies.tsx';
import type { CanvasPixels } from './preview-measuring.ts';

/** Long side, pixels: small enough that two of them are measured within one step of a drag. */
const LONG_SIDE_PX = 320;

interface SmallCopy {
  /** What is cut out of it, 0..1 of the picture. */
  box?: Box;
  /** Long side, pixels, at most. */
  sidePx?: number;
}

const WHOLE: Box = [0, 0, 1, 1];

/** @throws Error when the picture cannot be fetched or decoded. */
export async function smallCopy(
  boardId: string,
  pictureId: string,
  { box: [x0, y0, x1, y1] = WHOLE, sidePx = LONG_SIDE_PX }: SmallCopy = {},
): Promise<CanvasPixels> {
  const image = new Image();
  image.src = copyAddress(boardId, pictureId, 640);
  await image.decode();
  const [from, wide] = [image.naturalWidth * x0, image.naturalWidth * (x1 - x0)];
  const [under, high] = [image.naturalHeight * y0, image.naturalHeight * (y1 - y0)];
  const scale = Math.min(1, sidePx / Math.max(wide, high));
  const width = Math.max(1, Math.round(wide * scale));
  const height = Math.max(1, Math.round(high * scale));
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (!context) throw new Error('This browser gives no canvas to decode a picture on.');
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, from, under, wide, high, 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  return { widthPx: width, heightPx: height, rgba: data };
}
