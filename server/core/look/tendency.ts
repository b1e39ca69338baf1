/**
 * What a painter's own guesses of value have in common: which way, and about how far, the eye leans.
 *
 * In the flow: guesses kept in one browser -> [tendency] -> sentences for the one who guessed. Pure.
 * Medians, so that one slip of the hand does not count; bounds of dark and light are thirds of the scale.
 */
import { median } from '../image/percentiles.ts';

/** One guess: both in steps, 0..10. */
export interface Guess {
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly guessed: number;
  readonly shown: number;
}

export const VALUE_ZONES = ['darks', 'middles', 'lights'] as const;
export type ValueZone = (typeof VALUE_ZONES)[number];

export interface Tendency {
  readonly zone: ValueZone;
  readonly guesses: number;
  /** Median of guess − value, in steps: − = seen too dark. */
  readonly lean: number;
  /** Median distance from the value, in steps, whichever way. */
  readonly miss: number;
}

/** Guesses of a zone before anything is said about it: fewer are chance. */
export const FEWEST_GUESSES = 4;
/** Only so many of the last guesses of a zone count: the eye learns. */
const LAST = 12;

export function zoneOf(step: number): ValueZone {
  if (step < 10 / 3) return 'darks';
  return step < 20 / 3 ? 'middles' : 'lights';
}

/** For each zone with enough guesses, dark to light. @param guesses oldest first. */
export function tendencies(guesses: readonly Guess[]): Tendency[] {
  return VALUE_ZONES.flatMap((zone) => {
    const those = guesses.filter(({ shown }) => zoneOf(shown) === zone).slice(-LAST);
    const errors = those.map(({ guessed, shown }) => guessed - shown);
    const [lean, miss] = [median(errors), median(errors.map(Math.abs))];
    if (those.length < FEWEST_GUESSES || lean === null || miss === null) return [];
    return [{ zone, guesses: those.length, lean, miss }];
  });
}
