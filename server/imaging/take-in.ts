/**
 * Everything that is stored of an upload, worked out from its file: original, viewing copies, plate, clip map.
 *
 * In the flow: upload → [take-in] (in a worker) → blobs and rows. IO: reads the file, writes nothing.
 */
import { createHash } from 'node:crypto';
import { PLATE_LIMIT_PX } from '../core/image/raster.ts';
import type { ClippedShares } from './clip-map.ts';
import { inspect } from './inspect.ts';
import { type Original, originalOf } from './original.ts';
import { plateFiles, uncorrectedPlate } from './plate.ts';
import { type EncodedRendition, viewingCopies } from './renditions.ts';

/** A rendition with the SHA-256 of its bytes. */
export interface HashedRendition extends EncodedRendition {
  readonly hash: string;
}

/** What is stored of one picture. Sizes in upright pixels. */
export interface TakenIn {
  readonly width: number;
  readonly height: number;
  readonly original: Original & { readonly hash: string };
  readonly renditions: readonly HashedRendition[];
  readonly clipped: ClippedShares;
}

/**
 * @param path The uploaded file.
 * @param name Its name as the sender gave it; for sentences only.
 * @throws Problem for whatever is not one whole, still picture within the limits.
 */
export async function takeIn(path: string, name: string): Promise<TakenIn> {
  const inspection = await inspect(path, name);
  const original = await originalOf(path, inspection, name);
  const plate = await uncorrectedPlate(original, PLATE_LIMIT_PX);
  const renditions = [...(await viewingCopies(original)), ...(await plateFiles(plate))];
  return {
    width: inspection.width,
    height: inspection.height,
    original: { ...original, hash: sha256(original.bytes) },
    renditions: renditions.map((rendition) => ({ ...rendition, hash: sha256(rendition.bytes) })),
    clipped: plate.shares,
  };
}

function sha256(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex');
}
