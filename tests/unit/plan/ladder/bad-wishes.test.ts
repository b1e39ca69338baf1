/** What a planned ladder says to wishes that cannot be, and to pictures without planes. */
import { describe, expect, it } from 'vitest';
import { planLadder } from '#server/core/plan/ladder/plan-ladder.ts';
import { isProblem } from '#server/core/problem.ts';
import { AIR, SKY, says, valley, wood } from './hazy-valley.ts';
import { madeUp } from './made-up.ts';

describe('bad wishes', () => {
  it.each([
    { wishes: { strength: -1 }, part: /0 or more, not -1/ },
    { wishes: { strength: Number.NaN }, part: /0 or more, not NaN/ },
    { wishes: { handles: { meadow: { mid: Number.POSITIVE_INFINITY } } }, part: /is a number, not Infinity/ },
  ])('are refused in one sentence: $wishes', ({ wishes, part }) => {
    try {
      planLadder(valley(), wishes);
      expect.unreachable();
    } catch (thrown) {
      expect(isProblem(thrown)).toBe(true);
      expect(String(thrown)).toMatch(part);
    }
  });

  it('of a photograph without planes give an empty ladder that says so', () => {
    const { ladder, notes } = planLadder({ planes: [], air: null });
    expect(ladder).toEqual([]);
    expect(says(notes, /No ladder is planned/)).toHaveLength(1);
  });

  it('of a photograph that is all sky give the sky', () => {
    const { ladder } = planLadder(madeUp([SKY], AIR));
    expect(ladder.map(({ name }) => name)).toEqual(['sky']);
  });

  it('of a plane that could not be measured leave it out, with the reason', () => {
    const picture = madeUp([SKY, wood('twig', 0.5), wood('meadow', 1)], AIR);
    const nothing = { mid: null, dark: null, notes: ['Not measured: it covers 0.10 % of the picture.'] };
    const planes = picture.planes.map((plane, at) =>
      at === 1 ? { ...plane, measures: { ...plane.measures, ...nothing } } : plane,
    );
    const { ladder, notes } = planLadder({ ...picture, planes });
    expect(ladder.map(({ name }) => name)).toEqual(['sky', 'meadow']);
    expect(says(notes, /leaves out the twig\. Not measured/)).toHaveLength(1);
  });
});
