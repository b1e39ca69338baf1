/** How far the colours of a picture can be trusted. Pure. */
import type { Grade } from '../readings/noise.ts';

/** `exact` for a reference, which is taken as it is; else the grade of the painting's photo. */
export type Trust = 'exact' | Grade;

/** The least that two sources together can be trusted: `exact` only where both are. */
export function jointTrust(one: Trust, other: Trust): Trust {
  const order: Trust[] = ['exact', 'A', 'B', 'C'];
  return order[Math.max(order.indexOf(one), order.indexOf(other))] ?? 'C';
}
