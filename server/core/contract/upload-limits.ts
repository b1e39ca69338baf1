/**
 * How large an uploaded file may be, and the sentences for one that is too large or empty.
 *
 * In the flow: browser and upload handler → [upload-limits] → inspect, which has the limits of pixels. Pure.
 */
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';

/** 60 MB. A 24-megapixel camera JPEG has 8 to 15, a 16-bit TIFF of a phone picture about 70: ask for a smaller copy. */
export const MAX_FILE_BYTES = 60_000_000;

/** The advice that closes every refusal of a kind of file. */
export const CHOOSE_A_PICTURE = say`Choose a JPEG, PNG, WebP, TIFF, AVIF or HEIC file.`;

/** A file without a single byte. @param name File name as its sender gave it. */
export function fileEmpty(name: string): Problem {
  return new Problem(
    'file-empty',
    say`${name} has 0 bytes: it may not have been copied fully. Choose it again.`,
  );
}

/** @param sizeBytes Bytes of the file; null when reading stopped at the limit. */
export function fileTooLarge(name: string, sizeBytes: number | null): Problem {
  const limit = MAX_FILE_BYTES / 1e6;
  const size = sizeBytes === null ? null : (sizeBytes / 1e6).toFixed(1);
  return new Problem(
    'file-too-large',
    size === null
      ? say`${name} has more than ${limit} MB and the limit is ${limit} MB. Post a smaller copy, for example a JPEG 4000 px wide.`
      : say`${name} has ${size} MB and the limit is ${limit} MB. Post a smaller copy, for example a JPEG 4000 px wide.`,
  );
}
