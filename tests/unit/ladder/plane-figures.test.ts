import { describe, expect, test } from 'vitest';
import { digitsFor, doubted } from '#app/_ladder/doubted.ts';
import { gapText, huesText, measureText, stepText } from '#app/_ladder/measure-rows.ts';
import { barsInWords, planeDoubt, planeFigures } from '#app/_ladder/plane-figures.ts';
import type { PlaneResult } from '#server/core/contract/measures.ts';
import { plane, result } from './a-document.ts';

const textOf = (rows: { label: string; text: string }[]) =>
  Object.fromEntries(rows.map(({ label, text }) => [label, text]));

/** The plane with the same half interval at every lightness, and at every colour, of its gap. */
function within(plain: PlaneResult, lightness: number, colour: number): PlaneResult {
  const around = (key: 'dark' | 'mid' | 'light' | 'chroma' | 'warmCool', half: number) => {
    const value = plain.gap?.[key] ?? 0;
    return { [key]: [value - half, value + half] as [number, number] };
  };
  const gap = {
    ...{ ...around('dark', lightness), ...around('mid', lightness), ...around('light', lightness) },
    ...{ ...around('chroma', colour), ...around('warmCool', colour) },
  };
  return { ...plain, doubt: { gap, recession: {} } };
}

const massif = (gap: Parameters<typeof result>[3]) => result('massif', plane(1, 2, 3), plane(1, 2, 3), gap);

describe('the figures under a plane', () => {
  test('say the gap in steps of 10 L*, chroma in C*, and warm–cool with its sign', () => {
    const gap = { light: 3, mid: -5, dark: -8.4, chroma: 5.2, warmCool: -6.4 };
    expect(textOf(planeFigures(massif(gap), 'A'))).toEqual({
      lights: '+0.3 step',
      middle: '−0.5 step',
      darks: '−0.8 step',
      chroma: '+5 C*',
      'warm–cool': '−6',
    });
  });

  test('speak of steps when it is more than one', () => {
    const rows = planeFigures(massif({ dark: -12, mid: 10, light: 10.4 }), 'A');
    expect(textOf(rows)).toMatchObject({ darks: '−1.2 steps', middle: '+1.0 step', lights: '+1.0 step' });
  });

  test('never show a signed nought', () => {
    const rows = planeFigures(massif({ dark: -0.4, mid: 0.4, warmCool: -0.3 }), 'A');
    expect(textOf(rows)).toMatchObject({ darks: '0.0 step', middle: '0.0 step', 'warm–cool': '0' });
  });

  test('show a dash where a figure could not be taken', () => {
    expect(new Set(planeFigures(massif({}), 'B').map(({ text }) => text))).toEqual(new Set(['—']));
  });

  test('have no more digits than their doubt, and tell which of them lie beyond it', () => {
    const rows = planeFigures(within(massif({ dark: -12, mid: 6, light: 10.4, chroma: 9 }), 9.9, 8), 'B');
    expect(textOf(rows)).toMatchObject({ darks: '−1 step', middle: '+1 step', lights: '+1 step' });
    expect(rows.map(({ sure }) => sure)).toEqual([true, false, true, true, false]);
  });

  test('leave colour out where no colour is said', () => {
    const labels = planeFigures(massif({ mid: 9, chroma: 30 }), 'C').map(({ label }) => label);
    expect(labels).toEqual(['lights', 'middle', 'darks']);
    expect(planeFigures(massif({ mid: 9, chroma: 30 }), null)).toHaveLength(3);
  });

  test('say only which way a difference goes where no amount may be said', () => {
    for (const grade of ['C', null] as const) {
      const plain = within(massif({ dark: -30, mid: 26, light: 3 }), 20, 20);
      expect(textOf(planeFigures(plain, grade))).toEqual({
        lights: 'about the same',
        middle: 'lighter',
        darks: 'darker',
      });
      expect(planeDoubt(plain, grade)).toBeNull();
    }
    expect(planeFigures(massif({}), 'C').map(({ text }) => text)).toEqual(['—', '—', '—']);
    const sea = result('sea', null, plane(31, 47, 62));
    expect(textOf(planeFigures(sea, 'C'))).toMatchObject({ middle: 'value 4.7' });
  });

  test('give the painting’s own values where there is no target', () => {
    const sea = result('sea', null, { ...plane(31, 47, 62), chroma: 12.6, warmCool: 4.2 });
    expect(textOf(planeFigures(sea, 'A'))).toEqual({
      lights: 'value 6.2',
      middle: 'value 4.7',
      darks: 'value 3.1',
      chroma: '13 C*',
      'warm–cool': '+4',
    });
  });

  test('stand over how far off they may be', () => {
    expect(planeDoubt(within(massif({ mid: 1 }), 3.4, 5.2), 'A')).toBe('± 0.3 step, 5 C*');
    expect(planeDoubt(within(massif({ mid: 1 }), 9.9, 16), 'B')).toBe('± 1.0 step, 16 C*');
    expect(planeDoubt(massif({ mid: 1 }), 'A')).toBeNull();
  });
});

describe('the bars in words', () => {
  const massifAt = (dark: number | null) => result('massif', plane(30, 52, 71), plane(dark, 47, 66), {});

  test('tell where the target’s bar stands and then the painting’s, on the scale that is drawn', () => {
    expect(barsInWords(massifAt(24), 'reference', 'A')).toEqual([
      'reference: darks at value 3.0, middle 5.2, lights 7.1.',
      'painting: darks at value 2.4, middle 4.7, lights 6.6.',
    ]);
  });

  test('give whole values where the photo carries no amount, and no target where there is none', () => {
    expect(barsInWords(massifAt(24), 'none', 'C')).toEqual([
      'painting: darks at value 2, middle 5, lights 7.',
    ]);
  });

  test('leave out a bar that is not drawn', () => {
    const [said, ...more] = barsInWords(massifAt(null), 'reference', 'A');
    expect(said).toBe('reference: darks at value 3.0, middle 5.2, lights 7.1.');
    expect(more).toEqual([]);
  });
});

describe('digits', () => {
  test('end where the doubt has its first significant digit (JCGM 100:2008, 7.2.6 allows two)', () => {
    expect([0.012, 0.3, 0.94, 0.96, 3.3, 16].map((half) => digitsFor(half, 3))).toEqual([2, 1, 1, 0, 0, 0]);
    expect(digitsFor(0.001, 1)).toBe(1);
    expect(digitsFor(null, 2)).toBe(2);
    expect(digitsFor(0, 2)).toBe(2);
  });

  test('are the same for a figure and for the ends of its interval', () => {
    const written = { digits: 2, times: 1, signed: false };
    expect(doubted(4.62, [4.31, 4.93], written)).toEqual({ text: '4.6', range: '4.3 to 4.9' });
    expect(doubted(46.2, [42.9, 49.5], written)).toEqual({ text: '46', range: '43 to 50' });
    expect(doubted(4.62, undefined, written)).toEqual({ text: '4.62', range: null });
    expect(doubted(4.62, [4.62, 4.62], written)).toEqual({ text: '4.62', range: null });
    expect(doubted(null, [1, 2], written)).toEqual({ text: '—', range: null });
  });
});

describe('the table', () => {
  test('shows shares in per cent and keeps the sign of what has one', () => {
    expect(measureText('share', 0.1724).text).toBe('17.2');
    expect(measureText('a', 2.71).text).toBe('+2.7');
    expect(measureText('dark', 31.04).text).toBe('31.0');
    expect(measureText('hue', null).text).toBe('—');
    expect(gapText('share', -0.01).text).toBe('−1.0');
    expect(gapText('dark', 0.12).text).toBe('+0.1');
  });

  test('puts the ends of the interval after each figure', () => {
    expect(measureText('airShare', 0.31, [0.26, 0.36])).toEqual({ text: '31', range: '26 to 36' });
    expect(gapText('warmCool', 4, [-4.2, 12.2])).toEqual({ text: '+4', range: '−4 to +12' });
    expect(stepText(-6.24, [-6.5, -5.98])).toEqual({ text: '−6.2', range: '−6.5 to −6.0' });
  });

  test('ends an interval where no figure can lie, but not that of a difference', () => {
    expect(measureText('light', 98, [94.7, 101.3]).range).toBe('95 to 100');
    expect(measureText('chroma', 4, [-1, 9]).range).toBe('0 to 9');
    expect(gapText('chroma', 4, [-1, 9]).range).toBe('−1 to +9');
  });

  test('turns the ends of a hue round the circle', () => {
    expect(measureText('hue', 350, [330, 370]).range).toBe('330 to 10');
    expect(measureText('hue', 5, [-15, 25]).range).toBe('345 to 25');
    expect(gapText('hue', -3, [-200, 194]).range).toBe('−180 to +180');
  });

  test('names the hues that are there, largest first', () => {
    const shares = { red: 0, orange: 0.2, yellow: 0.004, green: 0.796, blue: 0, violet: 0 };
    expect(huesText(shares)).toBe('green 80, orange 20');
    expect(huesText(null)).toBe('—');
  });
});
