/**
 * Fractional order: a key between any two keys, so that moving one thing rewrites that thing alone.
 *
 * Two people who move different planes at once therefore lose nothing. Keys are read as the digits after the
 * point of a number in base 62 and compare as plain strings. Pure.
 */

const DIGITS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
/** Beyond this many characters a list is numbered afresh. */
export const LONGEST_ORDER = 100;

/**
 * A key strictly between two keys, as short as can be.
 *
 * @param low The key before, or null at the start of the list.
 * @param high The key after, or null at its end.
 * @returns Null when `low` is not below `high`: nothing lies between.
 */
export function orderBetween(low: string | null, high: string | null): string | null {
  if (low !== null && high !== null && low >= high) return null;
  let key = '';
  let bounded = high !== null;
  for (let at = 0; ; at++) {
    const from = digitAt(low, at, 0);
    const to = bounded ? digitAt(high, at, 0) : DIGITS.length;
    if (to - from > 1) return key + DIGITS[Math.floor((from + to) / 2)];
    key += DIGITS[from];
    if (to !== from) bounded = false;
  }
}

/** `count` keys in rising order with room between them. */
export function ordersFor(count: number): string[] {
  return Array.from({ length: count }, (_, index) => {
    const place = Math.floor(((index + 1) * DIGITS.length ** 2) / (count + 1));
    const key = `${DIGITS[Math.floor(place / DIGITS.length)]}${DIGITS[place % DIGITS.length]}`;
    return key.endsWith('0') ? `${key}V` : key;
  });
}

function digitAt(key: string | null, at: number, beyond: number): number {
  const digit = key?.[at];
  return digit === undefined ? beyond : DIGITS.indexOf(digit);
}
