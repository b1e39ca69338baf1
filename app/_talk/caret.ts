/** Where the caret belongs after somebody else changed the text round it. In the flow: live text -> [caret] -> field. Pure. */

/**
 * @param caret Place in `before`, in UTF-16 units.
 * @returns The same place in `after`: moved along when the change lies before it, kept when it lies behind.
 */
export function caretAfter(before: string, after: string, caret: number): number {
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && before[head] === after[head]) head++;
  if (caret <= head) return caret;
  let tail = 0;
  while (tail < shorter - head && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  const changedTo = before.length - tail;
  return caret >= changedTo ? caret + after.length - before.length : Math.min(caret, after.length - tail);
}
