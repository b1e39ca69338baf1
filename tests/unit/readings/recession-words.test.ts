import { describe, expect, test } from 'vitest';
import type { PlaneResult, Recession } from '#server/core/contract/measures.ts';
import { achievedOf, recessionWords } from '#server/core/readings/recession-words.ts';
import { plane, result } from '#tests/unit/ladder/a-document.ts';

function ridge(recession: Recession | null, half?: number): PlaneResult {
  const known = Object.entries(recession ?? {}).filter(
    (entry): entry is [string, number] => entry[1] !== null,
  );
  const doubt = Object.fromEntries(
    known.map(([key, value]): [string, [number, number]] => [
      key,
      [value - (half ?? 0), value + (half ?? 0)],
    ]),
  );
  return {
    ...result('ridge', plane(1, 2, 3), plane(1, 2, 3)),
    recession,
    ...(half === undefined ? {} : { doubt: { gap: {}, recession: doubt } }),
  };
}

describe('how far a plane goes back, as one figure', () => {
  const four = { darks: 0.4, spread: 0.5, chroma: 0.7, air: 0.9 };

  test('is the median of what could be taken, and so is each end of its doubt', () => {
    expect(achievedOf(ridge(four, 0.1), 'A')).toEqual({
      figure: expect.closeTo(0.6, 12),
      interval: [expect.closeTo(0.5, 12), expect.closeTo(0.7, 12)],
    });
    expect(achievedOf(ridge({ ...four, darks: null, spread: null, air: null }), 'B')).toEqual({
      figure: 0.7,
      interval: null,
    });
  });

  test('leaves chroma and air out where colour is not to be trusted', () => {
    expect(achievedOf(ridge(four, 0.1), 'C')?.figure).toBeCloseTo(0.45, 12);
    expect(achievedOf(ridge({ ...four, darks: null, spread: null }), null)).toBeNull();
    expect(achievedOf(ridge(null), 'A')).toBeNull();
  });
});

describe('how far a plane goes back, in words', () => {
  const said = (figure: number, half: number, grade: 'A' | 'B' | 'C') =>
    recessionWords({ figure, interval: [figure - half, figure + half] }, 'reference', grade);

  test('has quarters at grade A and halves at B', () => {
    expect(said(0.27, 0.1, 'A')).toBe('goes about a quarter of the reference’s way back into the air');
    expect(said(0.72, 0.1, 'A')).toBe('goes about three quarters of the reference’s way back into the air');
    expect(said(0.72, 0.1, 'B')).toBe('goes about half of the reference’s way back into the air');
    expect(said(0.85, 0.1, 'B')).toBe('goes about half of the reference’s way back into the air');
    expect(said(0.05, 0.1, 'A')).toBe('hardly goes back into the air');
    expect(said(-0.5, 0.2, 'B')).toBe('comes forward instead of going back');
  });

  test('is as far as the target where the doubt reaches it, and farther without blame', () => {
    expect(said(0.8, 0.25, 'A')).toBe('goes back into the air as far as in the reference');
    expect(said(2, 0.4, 'A')).toBe('goes back farther into the air than in the reference');
    expect(recessionWords({ figure: 0.5, interval: null }, 'plan', 'A')).toBe(
      'goes about half of the planned way back into the air',
    );
  });

  test('is of order only at grade C', () => {
    expect(said(0.3, 0.4, 'C')).toBe('goes back less far than in the reference');
    expect(said(0.7, 0.4, 'C')).toBe('goes back as far as in the reference, as far as this photo tells');
    expect(said(2, 0.4, 'C')).toBe('goes back farther than in the reference');
  });
});
