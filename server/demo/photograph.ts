/** Where the demo's photograph lies and whom to thank for it. IO: reads that file. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { EncodedRaster } from '../core/image/raster.ts';
import { encodedRaster } from '../core/image/raster.ts';
import { say } from '../core/say/say.ts';
import { decodeSrgb } from '../imaging/decode.ts';

export const PHOTOGRAPH_PATH = fileURLToPath(
  new URL('./photos/autumn-meadow-and-massif.jpg', import.meta.url),
);

export const PHOTOGRAPH_CREDIT = say`Photograph: Aitzol Berasategi, CC-BY 4.0, resized`;

/** The photograph in sRGB. @param sidePx Its longest side; never enlarged. */
export async function readPhotograph(sidePx: number): Promise<EncodedRaster> {
  const bytes = await readFile(PHOTOGRAPH_PATH);
  const { width, height, samples } = await decodeSrgb(
    { bytes, mediaType: 'image/jpeg', orientation: 1 },
    sidePx,
  );
  return encodedRaster(width, height, samples);
}
