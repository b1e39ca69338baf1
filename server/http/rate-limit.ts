/**
 * How often one visitor may do something; counted in memory, forgotten at a restart.
 *
 * Windows are fixed: `limit` calls in each stretch of `windowMs`. The counts lie behind a global symbol, for
 * Next may bundle this module more than once. In the flow: handlers -> [rate limit]. IO: none.
 */
import { Problem } from '../core/problem.ts';

export interface Limit {
  /** What is limited, in words that complete "too many ...". */
  what: string;
  limit: number;
  windowMs: number;
}

/** A class behind one router enters together, so this is generous; tokens are 256 bits anyway. */
export const ENTERING: Limit = { what: 'tries to enter', limit: 60, windowMs: 60_000 };
export const UPLOADING: Limit = { what: 'uploads', limit: 60, windowMs: 60_000 };
export const INVITING: Limit = { what: 'new invites', limit: 60, windowMs: 60_000 };

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
  const key = `${what} ${who}`;
  const standing = counts.get(key);
  const count = standing && standing.endsAt > now ? standing : { used: 0, endsAt: now + windowMs };
  counts.set(key, count);
  count.used += 1;
  if (count.used <= limit) return;
  const seconds = Math.ceil((count.endsAt - now) / 1000);
  throw new Problem(
    'too-many-requests',
    `Too many ${what}: at most ${limit} in ${Math.round(windowMs / 1000)} seconds. Wait ${seconds} ` +
      `second${seconds === 1 ? '' : 's'} and try again.`,
  );
}

function allCounts(): Map<string, Count> {
  const holder = globalThis as unknown as Record<symbol, Map<string, Count> | undefined>;
  holder[COUNTS] ??= new Map();
  return holder[COUNTS];
}

function dropOver(counts: Map<string, Count>, now: number): void {
  for (const [key, count] of counts) if (count.endsAt <= now) counts.delete(key);
}
