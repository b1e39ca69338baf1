/**
 * Why a file is not taken in, in whole sentences: what happened, the number behind it, what to do.
 *
 * In the flow: inspect, decode → [problems] → the person who posted. Pure.
 */
import { CHOOSE_A_PICTURE } from '../core/contract/upload-limits.ts';
import { Problem } from '../core/problem.ts';
import { LANGUAGE, LOCALE } from '../core/say/language.ts';
import { say } from '../core/say/say.ts';
import { MAX_PIXELS, MAX_SIDE_RATIO, MIN_SIDE_PX } from './limits.ts';

/** @param likeness What the file begins like, for example `plain text`. */
export function notAPicture(name: string, likeness: string): Problem {
  return new Problem(
    'picture-not-a-picture',
    say`${name} is not a picture: it begins like ${likeness}. ${CHOOSE_A_PICTURE}`,
  );
}

/** @param kind What the file is, with its article, for example `an SVG drawing`. */
export function kindRefused(name: string, kind: string, advice = CHOOSE_A_PICTURE): Problem {
  return new Problem('picture-kind-refused', say`${name} is ${kind}, which is not taken in here. ${advice}`);
}

/** @param frames Number of frames where the file tells it. */
export function animated(name: string, frames: number | null): Problem {
  const count = frames === null ? say`several frames` : say`${frames} frames`;
  return new Problem(
    'picture-animated',
    say`${name} is animated: it has ${count} and only a single picture can be measured. Post one frame of it.`,
  );
}

/** @param width, height Pixels. */
export function tooManyPixels(width: number, height: number): Problem {
  const megapixels = ((width * height) / 1e6).toFixed(1);
  return new Problem(
    'picture-too-many-pixels',
    say`This picture has ${megapixels} megapixels and the limit is ${MAX_PIXELS / 1e6}. Post a smaller copy.`,
  );
}

/** @param width, height Pixels. */
export function tooSmall(width: number, height: number): Problem {
  return new Problem(
    'picture-too-small',
    say`This picture has ${width} × ${height} pixels and at least ${MIN_SIDE_PX} × ${MIN_SIDE_PX} are needed. Post the picture itself rather than its thumbnail.`,
  );
}

/** @param width, height Pixels. */
export function tooThin(width: number, height: number): Problem {
  const ratio = (Math.max(width, height) / Math.min(width, height)).toFixed(1);
  return new Problem(
    'picture-too-small',
    say`This picture has ${width} × ${height} pixels: one side is ${ratio} times the other and the limit is ${MAX_SIDE_RATIO} times. Post the part of it that was painted.`,
  );
}

/** With commas between thousands in English; a point there would be taken for that of a fraction. */
function bytesInWords(sizeBytes: number): string {
  return sizeBytes.toLocaleString(LOCALE, { useGrouping: LANGUAGE === 'en' });
}

/** The file ends before its picture does. @param sizeBytes Bytes that are there. */
export function truncated(sizeBytes: number, cause?: unknown): Problem {
  return new Problem(
    'picture-unreadable',
    say`This picture is cut short: its file ends after ${bytesInWords(sizeBytes)} bytes, before the picture is complete. Copy it from the camera again.`,
    { cause },
  );
}

/** The file says it is a picture and cannot be decoded. @param kind For example `JPEG`. */
export function unreadable(kind: string, cause?: unknown): Problem {
  return new Problem(
    'picture-unreadable',
    say`This ${kind} file is damaged and cannot be read. Open it in a picture program, save a copy and post that.`,
    { cause },
  );
}

/** Decoding took longer than it may. @param seconds The limit. */
export function tooSlow(seconds: number): Problem {
  return new Problem(
    'picture-too-slow',
    say`Reading this picture took longer than ${seconds} seconds, so it was stopped. Post a smaller copy or a JPEG of it.`,
  );
}
