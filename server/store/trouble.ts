/**
 * Turns what the operating system or the database throws into a `Problem` where a person can act on it.
 *
 * In the flow: store and uploads -> [trouble] -> respond. Pure.
 */
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

const FULL_CODES = new Set(['ENOSPC', 'EDQUOT', '53100']);
const FULL_WORDS = /no space left on device|ENOSPC|disk full|could not extend file/i;

/** Whether something was thrown because the disk (or the quota) is full, at any depth of its causes. */
export function isDiskFull(thrown: unknown): boolean {
  if (!(thrown instanceof Error)) return false;
  const code = 'code' in thrown ? String(thrown.code) : '';
  if (FULL_CODES.has(code) || FULL_WORDS.test(thrown.message)) return true;
  return isDiskFull(thrown.cause);
}

/** The sentence for a disk that filled up while running. */
export function diskFull(cause?: unknown): Problem {
  return new Problem(
    'disk-full',
    say`The disk that holds the data folder is full, so this could not be saved. Nothing half-written was kept. Free some space on the server and try again.`,
    { cause },
  );
}

/** The problem a person can act on, or the thrown thing itself when it is a bug. */
export function storeProblem(thrown: unknown): unknown {
  if (isProblem(thrown)) return thrown;
  return isDiskFull(thrown) ? diskFull(thrown) : thrown;
}
