import { describe, expect, it } from 'vitest';
import type { PlaneGap, Step } from '#server/core/contract/measures.ts';
import { gapWords } from '#server/core/gaps/gap-words.ts';
import { swappedWords } from '#server/core/gaps/order-words.ts';
import { gap } from '#tests/unit/ladder/a-document.ts';

type Intervals = Record<string, [number, number]>;
const grades = { A: 'A', B: 'B', C: 'C' } as const;

describe('words of the gap', () => {
  const held = gap({ mid: 0, dark: 0, light: 0, chroma: 0, warmCool: 0 });
  /** Half of every 90 % interval: of lightness, of colour. */
  const around = (gap: Record<string, number | null>, half: [number, number]): Intervals =>
    Object.fromEntries(
      Object.entries({ ...held, ...gap }).flatMap(([key, value]) => {
        const by = key === 'chroma' || key === 'warmCool' ? half[1] : half[0];
        return value === null ? [] : [[key, [value - by, value + by]]];
      }),
    );
  const words = (
    gap: Partial<PlaneGap>,
    grade: 'A' | 'B' | 'C' | null,
    half: [number, number],
    target: 'plan' | 'reference' = 'reference',
  ) =>
    gapWords({ gap: { ...held, ...gap }, doubt: { gap: around(gap, half), recession: {} } }, target, grade);

  it('say how much in quarter steps at grade A and in half steps at B', () => {
    expect(words({ mid: 7.2 }, grades.A, [3.3, 5])).toEqual([
      'about three quarters of a step lighter than in the reference',
    ]);
    expect(words({ mid: -8.4 }, grades.B, [6.6, 8.2])).toEqual([
      'about one step darker than in the reference',
    ]);
    expect(words({ mid: -4, warmCool: 9 }, grades.A, [3.3, 5], 'plan')).toEqual([
      'about half a step darker than planned',
      'warmer',
    ]);
  });

  it('speak of the darks, then of the lights, where the middle holds', () => {
    expect(words({ mid: 1, dark: 6, light: -9 }, grades.A, [3.3, 5])).toEqual([
      'darks about half a step lighter than in the reference',
    ]);
    expect(words({ mid: 1, dark: 3, light: -9 }, grades.A, [3.3, 5])).toEqual([
      'lights about one step darker than in the reference',
    ]);
  });

  it('speak of the order of lightness alone at grade C and where there is no grade', () => {
    const far = { mid: -20, warmCool: 40, chroma: 30 };
    expect(words(far, grades.C, [9.9, 16.5])).toEqual(['darker than in the reference']);
    expect(words(far, null, [0.2, 0.3])).toEqual(['darker than in the reference']);
  });

  it('hold within the doubt, and within a touch however small the doubt is', () => {
    expect(words({ mid: 3.2, warmCool: -4.9, chroma: 4.9 }, grades.A, [3.3, 5])).toEqual(['holds']);
    expect(words({ mid: 1.9, warmCool: -2.9, chroma: 2.9 }, grades.B, [0.1, 0.1])).toEqual(['holds']);
    expect(words({ mid: 9.8, warmCool: 40 }, grades.C, [9.9, 16.5])).toEqual([
      'holds, as far as this photo tells',
    ]);
  });

  it('go by the grade alone while no doubt is worked out, and stay silent without anything to compare', () => {
    expect(gapWords({ gap: { ...held, mid: 3.2 } }, 'reference', 'A')).toEqual(['holds']);
    expect(gapWords({ gap: { ...held, mid: 3.4 } }, 'reference', 'A')).toEqual([
      'about a quarter step lighter than in the reference',
    ]);
    expect(gapWords({ gap: { ...held, mid: null, warmCool: null, chroma: null } }, 'plan', 'A')).toEqual([]);
    expect(gapWords({ gap: null }, 'none', 'A')).toEqual([]);
  });
});

describe('neighbours that changed places', () => {
  /** near − far of the middles. */
  const figures = (mid: number) => ({ mid, dark: null, light: null, chroma: null, warmCool: null });
  // Reference: bank 2 lighter than wood; painting: 6 darker.
  const step: Step = {
    ...{ far: 'wood', near: 'bank', reference: figures(2), painting: figures(-6), gap: figures(-8) },
  };
  const doubted = (half: number) => ({
    ...step,
    doubt: { painting: { mid: [-6 - half, -6 + half] as [number, number] }, gap: {} },
  });

  it('are named', () => {
    const sentence = 'In the reference the bank is lighter than the wood; here it is the other way round.';
    expect(swappedWords(step)).toBe(sentence);
    expect(swappedWords(doubted(5.9))).toBe(sentence);
    expect(swappedWords({ ...step, painting: figures(6), gap: figures(4) })).toBeNull();
  });

  it('are left unnamed where the doubt could turn them round', () => {
    expect(swappedWords(doubted(6.1))).toBeNull();
  });
});
