/** A draft outline whose stretches bend onto a ridge, and what taking back a click takes with it. */
import { describe, expect, test } from 'vitest';
import type { OutlineDraft } from '#app/_easel/easel-state.tsx';
import { bent, withoutLastStop } from '#app/_easel/use-follow.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';

const [a, b, c]: FractionPoint[] = [
  [0, 0.5],
  [0.5, 0.4],
  [1, 0.5],
];
const [one, two]: FractionPoint[] = [
  [0.2, 0.45],
  [0.3, 0.42],
];
const clicks = [a, b, c] as FractionPoint[];
const draft: OutlineDraft = { pictureId: 'p', planeId: 'q', way: 'ridge', points: clicks, stops: clicks };

describe('a stretch', () => {
  test('takes the points that were followed between its two ends', () => {
    const followed = bent(draft, [a, one, two, b] as FractionPoint[]);
    expect(followed.points).toEqual([a, one, two, b, c]);
    expect(followed.stops).toEqual(clicks);
  });

  test('that is gone by the time the line comes stays as it is', () => {
    expect(
      bent({ ...draft, points: [a, c] as FractionPoint[] }, [a, one, b] as FractionPoint[]).points,
    ).toEqual([a, c]);
  });
});

describe('taking back a click', () => {
  test('takes what was followed on the way to it', () => {
    const followed = bent(draft, [b, one, two, c] as FractionPoint[]);
    expect(withoutLastStop(followed)?.points).toEqual([a, b]);
  });

  test('leaves nothing of a single one', () => {
    expect(
      withoutLastStop({ ...draft, points: [a] as FractionPoint[], stops: [a] as FractionPoint[] }),
    ).toBeNull();
  });
});
