/**
 * Repeatable random numbers: the same seed, the same doubt.
 *
 * Source: Marsaglia (2003), "Xorshift RNGs", Journal of Statistical Software 8(14); the 32-bit triple 13, 17, 5. Pure.
 */

/** Whole numbers from 0 up to a bound. @param seed any whole number but 0. */
export function randomBelow(seed: number): (bound: number) => number {
  let state = seed | 0 || 1;
  return (bound) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return Math.floor(((state >>> 0) / 4294967296) * bound);
  };
}
