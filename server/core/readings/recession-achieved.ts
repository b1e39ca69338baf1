/**
 * How much of the target's step back a far plane took, as one figure.
 *
 * In the flow: recession of the document -> [one figure] -> observations, screen. Pure.
 */
import type { Recession } from '../contract/measures.ts';
import { median } from '../image/percentiles.ts';
import type { Grade } from './noise.ts';

/** Above this the painter used more air than the target: a neutral note. */
export const MORE_AIR = 1.6;

/**
 * Median of the ratios that could be taken; at grade C (or none) without chroma and air, which are not to be trusted.
 * @returns 1 = as the target; null where none could be taken.
 */
export function recessionAchieved(recession: Recession | null, grade: Grade | null): number | null {
  if (!recession) return null;
  const trusted = [recession.darks, recession.spread];
  if (grade === 'A' || grade === 'B') trusted.push(recession.chroma, recession.air);
  return median(trusted.flatMap((figure) => (figure === null ? [] : [figure])));
}
