/** Which stretches of carried ridges are drawn as unsure, where they bear a sign, and how they are named. */
import { describe, expect, it } from 'vitest';
import { doubtOf, signsOf, stretchesOf } from '#app/_carry/unsure-places.ts';
import type { CarriedPlane } from '#server/core/planes/carry/lay-planes.ts';

/** A level ridge at 0.5 from left to right in ten sides, closed below; `unsure` by side. */
function plane(unsure: readonly number[]): CarriedPlane {
  const ridge = Array.from({ length: 11 }, (_, at): [number, number] => [at / 10, 0.5]);
  return {
    id: 'hills',
    outline: [...ridge, [1, 1], [0, 1]],
    unsure: Array.from({ length: 13 }, (_, at) => unsure.includes(at)),
  };
}

describe('stretches', () => {
  it('are cut where sure and unsure meet, without what runs along the border', () => {
    const stretches = stretchesOf(plane([3, 4, 5, 11, 12]));
    expect(stretches.map(({ unsure, points }) => [unsure, points.length])).toEqual([
      [false, 4],
      [true, 4],
      [false, 5],
    ]);
  });

  it('bear a sign in their middle', () => {
    const [sign] = signsOf(stretchesOf(plane([4, 5])));
    expect(sign?.[0]).toBeCloseTo(0.5);
    expect(sign?.[1]).toBeCloseTo(0.5);
  });
});

describe('words', () => {
  it.each([
    [[], null],
    [[0, 1], ['left']],
    [[4, 5], ['middle']],
    [
      [0, 1, 8, 9],
      ['left', 'right'],
    ],
    [[0, 1, 2, 3, 4, 5, 6, 7, 8], 'all'],
  ])('of unsure sides %j: %j', (unsure, where) => {
    expect(doubtOf(plane(unsure))?.where ?? null).toEqual(where);
  });

  it('are not spent on a sliver', () => {
    const short: CarriedPlane = {
      id: 'hills',
      outline: [
        [0, 0.5],
        [0.5, 0.5],
        [0.51, 0.5],
        [1, 0.5],
        [1, 1],
        [0, 1],
      ],
      unsure: [false, true, false, false, false, false],
    };
    expect(doubtOf(short)).toBeNull();
  });
});
