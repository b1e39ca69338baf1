/**
 * A small seeded generator, so that the invented paintings come out the same every time.
 *
 * Pure. Source: mulberry32 by Tommy Ettinger (public domain), from memory; quality far beyond what a brush needs.
 */

/** @param seed Any integer. @returns A function giving numbers in 0..1 (1 excluded), the same row for the same seed. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A list in a random order (Fisher and Yates); the list that came in is left as it is. */
export function shuffled<T>(list: readonly T[], random: () => number): T[] {
  const order = [...list];
  for (let left = order.length - 1; left > 0; left--) {
    const pick = Math.floor(random() * (left + 1));
    // Both places are in the list.
    [order[left], order[pick]] = [order[pick] as T, order[left] as T];
  }
  return order;
}
