/**
 * Works out values, patches and squints beside the page, so that neither hand nor eye waits for it.
 *
 * In the flow: look-line -> [look worker] -> look-line. Fetches and decodes the lossless small copy of a picture once,
 * then answers one question after another. IO: messages; HTTP for the copies.
 */
import { type EncodedRaster, encodedFromRgba } from '#server/core/image/raster.ts';
import { type LookAs, type LookPixels, litRaster, lookPixels, squinted } from './look-pixels.ts';

/** `address` of the copy, whole. */
export interface LookQuestion {
  number: number;
  address: string;
  as: LookAs;
  ask: 'pixels' | 'squinted';
}

export type LookAnswer = { number: number } & (
  | { pixels: LookPixels }
  | { squinted: ImageBitmap }
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
    image.data[to] = samples[from] ?? 0;
    image.data[to + 1] = samples[from + 1] ?? 0;
    image.data[to + 2] = samples[from + 2] ?? 0;
    image.data[to + 3] = 255;
  }
  return createImageBitmap(image);
}

const lit = new Map<string, EncodedRaster>();
/** Lit pictures kept: two, squared and as photographed. */
const LIT_KEPT = 4;

/** A picture in its light, kept for the next strength of squinting. */
async function litAt({ address, as: { photo, squared } }: LookQuestion): Promise<EncodedRaster> {
  const raw = await copyAt(address);
  const key = JSON.stringify([address, photo, squared]);
  const raster = lit.get(key) ?? litRaster(raw, { photo, squared });
  lit.set(key, raster);
  for (const old of [...lit.keys()].slice(0, -LIT_KEPT)) lit.delete(old);
  return raster;
}

async function answer(question: LookQuestion): Promise<LookAnswer> {
  const { number, as, ask } = question;
  const raster = await litAt(question);
  if (ask === 'pixels') return { number, pixels: lookPixels(raster, as.squint) };
  return { number, squinted: await bitmapOf(squinted(raster, as.squint)) };
}

self.onmessage = ({ data }: MessageEvent<LookQuestion>) => {
  answer(data).then(
    (given) => self.postMessage(given, { transfer: 'squinted' in given ? [given.squinted] : [] }),
    (thrown: unknown) => self.postMessage({ number: data.number, trouble: String(thrown) }),
  );
};
