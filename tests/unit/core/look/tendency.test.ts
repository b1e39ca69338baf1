/** What is said of one's own guesses: only after enough of them, by the middle one, zone by zone. */
import { describe, expect, it } from 'vitest';
import { FEWEST_GUESSES, type Guess, tendencies, zoneOf } from '#server/core/look/tendency.ts';

const guesses = (shown: number, errors: readonly number[]): Guess[] =>
  errors.map((error, at) => ({ at, shown, guessed: shown + error }));

describe('tendency', () => {
  it('says nothing of a zone before there are enough guesses', () => {
    expect(tendencies([])).toEqual([]);
    expect(tendencies(guesses(2, [-1, -1, -1]))).toEqual([]);
    expect(FEWEST_GUESSES).toBe(4);
  });

  it('takes the middle guess, so that one slip does not count', () => {
    const [darks] = tendencies(guesses(2, [-0.5, -0.5, -1, 6, -0.5]));
    expect(darks).toEqual({ zone: 'darks', guesses: 5, lean: -0.5, miss: 0.5 });
  });

  it('keeps the zones apart, dark to light', () => {
    const found = tendencies([...guesses(9, [1, 1, 1, 1]), ...guesses(5, [0, 0, 0, 0])]);
    expect(found.map(({ zone, lean }) => [zone, lean])).toEqual([
      ['middles', 0],
      ['lights', 1],
    ]);
  });

  it('forgets old guesses: the eye learns', () => {
    const [middles] = tendencies([...guesses(5, Array(20).fill(2)), ...guesses(5, Array(12).fill(0))]);
    expect(middles?.lean).toBe(0);
    expect(middles?.guesses).toBe(12);
  });

  it('divides the scale in three', () => {
    expect([0, 3.3, 3.4, 6.6, 6.7, 10].map(zoneOf)).toEqual([
      'darks',
      'darks',
      'middles',
      'middles',
      'lights',
      'lights',
    ]);
  });
});
