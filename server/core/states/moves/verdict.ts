/**
 * How much of an advised move was made: in words, and no surer than both photographs are.
 *
 * In the flow: change of a figure + what was advised -> [verdict] -> moves-made. A move counts when it exceeds twice its
 * deviation, as for every reading. Amounts are judged at grades A and B alone. Pure.
 */
import type { MoveVerdict } from '../../contract/moves.ts';
import type { PlaneChange } from './plane-change.ts';

/** Deviations that a move must exceed. */
export const SIGMAS = 2;
/** Shares of the advised move at which the words change. */
const [A_LITTLE, MOST, BEYOND] = [0.25, 0.75, 1.4];

/**
 * @param advised What was advised, signed, in the figure's unit; null where only the way was said.
 * @param sign Which way it should go. @param amounts Whether both photographs carry amounts.
 */
export function verdictOf(
  { by, sigma }: PlaneChange,
  sign: 1 | -1,
  advised: number | null,
  amounts: boolean,
): MoveVerdict {
  const doubt = SIGMAS * sigma;
  if (Math.abs(by) <= doubt) return advised !== null && Math.abs(advised) < doubt ? 'small' : 'none';
  if (by * sign < 0) return 'other-way';
  if (!amounts || advised === null || advised * sign <= 0) return 'that-way';
  const share = by / advised;
  // Past it only where what is too much is more than the doubt.
  if (share >= BEYOND && Math.abs(by - advised) > doubt) return 'past';
  if (share >= MOST) return 'all';
  return share >= A_LITTLE ? 'half' : 'little';
}
