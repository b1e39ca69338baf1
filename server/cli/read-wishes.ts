/**
 * What is wished of the planned ladder, as words behind the plan command: `--count`, `--strength`, `--air`.
 *
 * In the flow: command -> [read-wishes] -> planned ladder. They go before what the setup wishes. Pure.
 */
import {
  LIKELY_AIR_NAMES,
  MOST_STRENGTH,
  type PlanWishes,
  WishedAir,
  WishedCount,
  WishedStrength,
} from '../core/contract/plan-wishes.ts';
import { UsageError } from './run-command.ts';

export interface WishWords {
  readonly count?: string | undefined;
  readonly strength?: string | undefined;
  readonly air?: string | undefined;
}

/** A number as it was written; NaN for anything else, an empty word too. */
function numberOf(word: string): number {
  return word.trim() === '' ? Number.NaN : Number(word);
}

function countOf(word: string): number {
  const read = WishedCount.safeParse(numberOf(word));
  if (!read.success) throw new UsageError(`--count is a whole number from 1 to 12, not '${word}'.`);
  return read.data;
}

function strengthOf(word: string): number {
  const read = WishedStrength.safeParse(numberOf(word));
  if (!read.success) throw new UsageError(`--strength is 0 to ${MOST_STRENGTH}, not '${word}'.`);
  return read.data;
}

/** A name, or L*, a*, b* with commas between. */
function airOf(word: string): WishedAir {
  const [L, a, b, ...more] = word.split(',').map(numberOf);
  const colour = more.length === 0 ? { L, a, b } : null;
  const read = WishedAir.safeParse(word.includes(',') ? colour : word);
  if (read.success) return read.data;
  const names = ['photograph', ...LIKELY_AIR_NAMES].join(', ');
  throw new UsageError(`--air is one of ${names}, or L*,a*,b* such as 80,-2,-9; not '${word}'.`);
}

/** @param given of the setup. @throws UsageError for a word that says nothing. */
export function readWishes({ count, strength, air }: WishWords, given: PlanWishes): PlanWishes {
  return {
    ...given,
    ...(count === undefined ? {} : { count: countOf(count) }),
    ...(strength === undefined ? {} : { strength: strengthOf(strength) }),
    ...(air === undefined ? {} : { air: airOf(air) }),
  };
}
