/**
 * How often one visitor may do something; counted in memory, forgotten at a restart.
 *
 * Windows are fixed: `limit` calls in each stretch of `windowMs`. The counts lie behind a global symbol, for
 * Next may bundle this module more than once. In the flow: handlers -> [rate limit]. IO: none.
 */
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

export interface Limit {
  /** What is limited, in words that complete "too many ...". */
  what: string;
  limit: number;
  windowMs: number;
}

/** A class behind one router enters together, so this is generous; tokens are 256 bits anyway. */
export const ENTERING: Limit = { what: say`tries to enter`, limit: 60, windowMs: 60_000 };
export const UPLOADING: Limit = { what: say`uploads`, limit: 60, windowMs: 60_000 };
/** Each takes a worker a second. */
export const DRAWING: Limit = { what: say`sheets`, limit: 30, windowMs: 60_000 };
export const INVITING: Limit = { what: say`new invites`, limit: 60, windowMs: 60_000 };
/** Enough for somebody who is pestered, too few to pester those who read reports. */
export const REPORTING: Limit = { what: say`reports`, limit: 12, windowMs: 10 * 60_000 };
export const BLOCKING: Limit = { what: say`changes of whom you block`, limit: 60, windowMs: 60_000 };

const QUARTER_HOUR_MS = 15 * 60_000;
const SIGN_IN = say`tries to sign in`;
/** With one address from one place: a guesser gets nowhere, somebody who mistypes does. */
export const SIGNING_IN: Limit = { what: SIGN_IN, limit: 10, windowMs: QUARTER_HOUR_MS };
/** With one address from anywhere; more than above, so that nobody is locked out by a stranger's ten tries. */
export const SIGNING_IN_EMAIL: Limit = { what: SIGN_IN, limit: 100, windowMs: QUARTER_HOUR_MS };
/** From one place with any address; a class behind one router signs in together. */
export const SIGNING_IN_ADDRESS: Limit = { what: SIGN_IN, limit: 60, windowMs: QUARTER_HOUR_MS };
export const CHANGING_PASSWORD: Limit = {
  what: say`tries to change a password`,
  limit: 10,
  windowMs: QUARTER_HOUR_MS,
};

const COUNTS = Symbol.for('veilstep.rate-limit');
/** Above this many keys the ones whose window is over are dropped. */
const MOST_KEYS = 10_000;

interface Count {
  used: number;
  endsAt: number;
}

/**
 * Counts one call.
 *
 * @param who Whom it counts for: an address or a person id.
 * @throws Problem 'too-many-requests' with the limit and how long to wait.
 */
export function countCall({ what, limit, windowMs }: Limit, who: string, now = Date.now()): void {
  const counts = allCounts();
  if (counts.size > MOST_KEYS) dropOver(counts, now);
  const key = `${what} ${limit} ${who}`;
  const standing = counts.get(key);
  const count = standing && standing.endsAt > now ? standing : { used: 0, endsAt: now + windowMs };
  counts.set(key, count);
  count.used += 1;
  if (count.used <= limit) return;
  throw new Problem(
    'too-many-requests',
    say`Too many ${what}: at most ${limit} in ${inWords(windowMs)}. Wait ${inWords(count.endsAt - now)} and try again.`,
  );
}

/** Whole seconds, or whole minutes from two minutes on, rounded up. */
function inWords(durationMs: number): string {
  const seconds = Math.ceil(durationMs / 1000);
  if (seconds >= 120) return say`${Math.ceil(seconds / 60)} minutes`;
  return seconds === 1 ? say`1 second` : say`${seconds} seconds`;
}

function allCounts(): Map<string, Count> {
  const holder = globalThis as unknown as Record<symbol, Map<string, Count> | undefined>;
  holder[COUNTS] ??= new Map();
  return holder[COUNTS];
}

function dropOver(counts: Map<string, Count>, now: number): void {
  for (const [key, count] of counts) if (count.endsAt <= now) counts.delete(key);
}
