/**
 * Puts photos right beside the page, so that neither hand nor eye waits for it.
 *
 * In the flow: photo-line -> [photo worker] -> photo-line. Fetches and decodes copies of one picture, then answers one
 * question after another. IO: messages; HTTP for the copies.
 */
import { proposeCorners } from '#server/core/capture/propose-corners.ts';
import type { FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedFromRgba } from '#server/core/image/raster.ts';
import { proposeCard } from '#server/core/rectify/propose-card.ts';
import { putRight, type RightedWish } from './answering.ts';

/** `address` of the copy that the question is about, whole. */
export type PhotoQuestion = { number: number; address: string } & (
  | { ask: 'corners' }
  | { ask: 'card'; at: FractionPoint }
  | ({ ask: 'right' } & RightedWish)
);

export interface RightedPicture {
  bitmap: ImageBitmap;
  lit: boolean;
  notes: readonly string[];
}

/** `corners` and `box` are null where nothing was found for sure; `trouble` is a whole sentence or null. */
export type PhotoAnswer = { number: number } & (
  | { corners: NonNullable<PhotoCorrection['corners']> | null }
  | { box: [number, number, number, number] | null }
  | { righted: RightedPicture | string }
  | { trouble: string }
);

const copies = new Map<string, Promise<EncodedRaster>>();

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

/** A copy, kept once it was decoded; what failed is fetched again next time. */
function copyAt(address: string): Promise<EncodedRaster> {
  const kept = copies.get(address);
  if (kept) return kept;
  const coming = decoded(address);
  copies.set(address, coming);
  coming.catch(() => copies.delete(address));
  return coming;
}

function bitmapOf({ widthPx, heightPx, samples }: EncodedRaster): Promise<ImageBitmap> {
  const image = new ImageData(widthPx, heightPx);
  for (let from = 0, to = 0; from < samples.length; from += 3, to += 4) {
    image.data[to] = samples[from] as number;
    image.data[to + 1] = samples[from + 1] as number;
    image.data[to + 2] = samples[from + 2] as number;
    image.data[to + 3] = 255;
  }
  return createImageBitmap(image);
}

async function answer(question: PhotoQuestion): Promise<PhotoAnswer> {
  const { number, address } = question;
  const raster = await copyAt(address);
  if (question.ask === 'corners') {
    const [a, b, c, d] = proposeCorners(raster) ?? [];
    return { number, corners: a && b && c && d ? [a, b, c, d] : null };
  }
  if (question.ask === 'card') return { number, box: proposeCard(raster, question.at) };
  const righted = putRight(raster, question);
  if (typeof righted === 'string') return { number, righted };
  const bitmap = await bitmapOf(righted.raster);
  return { number, righted: { bitmap, lit: righted.lit, notes: righted.notes } };
}

self.onmessage = ({ data }: MessageEvent<PhotoQuestion>) => {
  answer(data).then(
    (given) => {
      const bitmap = 'righted' in given && typeof given.righted !== 'string' ? given.righted.bitmap : null;
      self.postMessage(given, { transfer: bitmap ? [bitmap] : [] });
    },
    (thrown: unknown) => self.postMessage({ number: data.number, trouble: String(thrown) }),
  );
};
