/** The order in which paintings wait: the earliest promise first, those without one after, the longest wait first. Pure. */

export interface Waiting {
  promisedFor: string | null;
  askedAt: string;
}

/** For `sort`: negative when the first comes first. */
export function byPromiseThenWait(one: Waiting, two: Waiting): number {
  if (one.promisedFor !== two.promisedFor) {
    if (one.promisedFor === null) return 1;
    if (two.promisedFor === null) return -1;
    return one.promisedFor < two.promisedFor ? -1 : 1;
  }
  return one.askedAt < two.askedAt ? -1 : one.askedAt > two.askedAt ? 1 : 0;
}
