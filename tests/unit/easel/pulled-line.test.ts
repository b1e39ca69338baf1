/** A point pulled out of an outline takes its followed neighbours along; what others changed meanwhile stays. */
import { describe, expect, test } from 'vitest';
import { pulledLine, stretchesBeside, withBetterLines } from '#app/_easel/pulled-line.ts';
import { reapplied } from '#app/_easel/reapplied.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';

/** A ridge of points one hundredth of the width apart, closed below. */
const FOLLOWED: Outline = [
  ...Array.from({ length: 81 }, (_, at): FractionPoint => [0.1 + at / 100, 0.5]),
  [0.9, 1],
  [0.1, 1],
];
const SPARSE: Outline = [
  [0.1, 0.5],
  [0.5, 0.5],
  [0.9, 0.5],
  [0.9, 1],
  [0.1, 1],
];

const pulled = (before: Outline, at: number, dy: number): Outline =>
  before.map(([x, y], index) => (index === at ? [x, y + dy] : [x, y]));

describe('a point pulled by four and a half hundredths of the width', () => {
  test('takes the followed line along as far as the hand went, on both sides', () => {
    const { outline, at } = pulledLine(FOLLOWED, pulled(FOLLOWED, 40, -0.045), 40, 1);
    expect(outline[at]).toEqual([0.5, 0.455]);
    expect(outline[at - 1]?.[0]).toBeCloseTo(0.45, 1);
    expect(outline[at + 1]?.[0]).toBeCloseTo(0.55, 1);
    expect(FOLLOWED.length - outline.length).toBe(8);
    expect(() => checkOutline('it', outline)).not.toThrow();
  });

  test('leaves points alone that were set one by one, and those on the picture’s border', () => {
    expect(pulledLine(SPARSE, pulled(SPARSE, 1, -0.04), 1, 1).outline).toHaveLength(5);
    const bordered: Outline = [
      [0, 0.5],
      [0.01, 0.5],
      [0.02, 0.5],
      [0.5, 0.9],
      [0, 0.9],
    ];
    expect(pulledLine(bordered, pulled(bordered, 1, -0.05), 1, 1).outline).toContainEqual([0, 0.5]);
  });
});

describe('better lines on both sides of a point', () => {
  test('are put between it and its neighbours; a side without one stays straight', () => {
    expect(stretchesBeside(SPARSE, 0)).toEqual([
      [SPARSE[4], SPARSE[0]],
      [SPARSE[0], SPARSE[1]],
    ]);
    const line: FractionPoint[] = [
      [0.1, 0.5],
      [0.3, 0.45],
      [0.5, 0.5],
    ];
    expect(withBetterLines(SPARSE, 0, [null, line])).toEqual([SPARSE[0], [0.3, 0.45], ...SPARSE.slice(1)]);
    expect(withBetterLines(SPARSE, 1, [line, null])).toEqual([SPARSE[0], [0.3, 0.45], ...SPARSE.slice(1)]);
  });
});

describe('a change that adds or takes points, put onto what another hand changed meanwhile,', () => {
  const mine: Outline = [SPARSE[0], [0.2, 0.4], [0.3, 0.4], ...SPARSE.slice(1)] as Outline;

  test('leaves both changes standing', () => {
    const theirs = pulled(SPARSE, 3, -0.1);
    expect(reapplied(SPARSE, mine, theirs)).toEqual([
      SPARSE[0],
      [0.2, 0.4],
      [0.3, 0.4],
      SPARSE[1],
      SPARSE[2],
      theirs[3],
      SPARSE[4],
    ]);
  });

  test('keeps the neighbours as the other hand has them', () => {
    const theirs = pulled(SPARSE, 1, 0.1);
    expect(reapplied(SPARSE, mine, theirs)).toEqual([
      SPARSE[0],
      [0.2, 0.4],
      [0.3, 0.4],
      theirs[1],
      ...SPARSE.slice(2),
    ]);
  });

  test('is all that counts where its place is gone', () => {
    const anew: Outline = [
      [0, 0],
      [1, 0],
      [1, 1],
    ];
    expect(reapplied(SPARSE, mine, anew)).toEqual(mine);
  });
});
