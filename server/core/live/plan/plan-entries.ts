/**
 * Which entries the `setup` room's root `plan` may hold: one check a prefix, each in the file that owns the prefix.
 *
 * In the flow: update -> effect -> shapes -> [plan-entries]. Pure.
 */
import { cropFits } from './crops.ts';
import { rearrangingFits } from './rearranging.ts';
import { keptFits, ladderFits, targetFits } from './taken-plan.ts';
import { valuesFit } from './values.ts';
import { handleFits, wishFits } from './wishes.ts';

type EntryCheck = (key: string, value: unknown) => boolean;

const CHECKS: readonly EntryCheck[] = [
  ladderFits,
  targetFits,
  wishFits,
  handleFits,
  keptFits,
  cropFits,
  valuesFit,
  rearrangingFits,
];

/** Whether the entry under `key` is well formed. */
export function planEntryFits(key: string, value: unknown): boolean {
  return CHECKS.some((fits) => fits(key, value));
}
