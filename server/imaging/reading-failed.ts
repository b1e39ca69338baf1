/**
 * What libvips said when it could not read a picture, as a sentence for the person who posted it.
 *
 * In the flow: original, decode → [reading-failed]. Pure.
 */
import { isProblem, type Problem } from '../core/problem.ts';
import { TAKE_IN_SECONDS } from './limits.ts';
import { tooSlow, truncated, unreadable } from './problems.ts';

/** @param kind For example `JPEG`. @param sizeBytes Bytes of the file. */
export function readingFailed(cause: unknown, kind: string, sizeBytes: number): Problem {
  if (isProblem(cause)) return cause;
  const message = cause instanceof Error ? cause.message : String(cause);
  if (/timeout/i.test(message)) return tooSlow(TAKE_IN_SECONDS);
  if (/premature|truncated|end of (file|stream|image)|unexpected end|not enough data/i.test(message)) {
    return truncated(sizeBytes, cause);
  }
  return unreadable(kind, cause);
}
