import { describe, expect, test } from 'vitest';
import { gapText, huesText, measureText } from '#app/_ladder/measure-rows.ts';
import { planeFigures } from '#app/_ladder/plane-figures.ts';
import { plane, result } from './a-document.ts';

const textOf = (rows: { label: string; text: string }[]) =>
  Object.fromEntries(rows.map(({ label, text }) => [label, text]));

describe('the figures under a plane', () => {
  test('say the gap in steps of 10 L*, chroma in C*, and warm–cool with its sign', () => {
    const gap = { light: 3, mid: -5, dark: -8.4, chroma: 5.2, warmCool: -6.4 };
    const rows = planeFigures(result('massif', plane(1, 2, 3), plane(1, 2, 3), gap));
    expect(textOf(rows)).toEqual({
      lights: '+0.3 step',
      middle: '−0.5 step',
      darks: '−0.8 step',
      chroma: '+5 C*',
      'warm–cool': '−6',
    });
  });

  test('speak of steps when it is more than one', () => {
    const rows = planeFigures(
      result('massif', plane(1, 2, 3), plane(1, 2, 3), { dark: -12, mid: 10, light: 10.4 }),
    );
    expect(textOf(rows)).toMatchObject({ darks: '−1.2 steps', middle: '+1.0 step', lights: '+1.0 step' });
  });

  test('never show a signed nought', () => {
    const rows = planeFigures(
      result('sky', plane(1, 2, 3), plane(1, 2, 3), { dark: -0.4, mid: 0.4, warmCool: -0.3 }),
    );
    expect(textOf(rows)).toMatchObject({ darks: '0.0 step', middle: '0.0 step', 'warm–cool': '0' });
  });

  test('show a dash where a figure could not be taken', () => {
    const rows = planeFigures(result('sky', plane(1, 2, 3), plane(1, 2, 3), {}));
    expect(new Set(rows.map(({ text }) => text))).toEqual(new Set(['—']));
  });

  test('give the painting’s own values where there is no target', () => {
    const rows = planeFigures(result('sea', null, { ...plane(31, 47, 62), chroma: 12.6, warmCool: 4.2 }));
    expect(textOf(rows)).toEqual({
      lights: 'value 6.2',
      middle: 'value 4.7',
      darks: 'value 3.1',
      chroma: '13 C*',
      'warm–cool': '+4',
    });
  });
});

describe('the table', () => {
  test('shows shares in per cent and keeps the sign of what has one', () => {
    expect(measureText('share', 0.1724)).toBe('17.2');
    expect(measureText('a', 2.71)).toBe('+2.7');
    expect(measureText('dark', 31.04)).toBe('31.0');
    expect(measureText('hue', null)).toBe('—');
    expect(gapText('share', -0.01)).toBe('−1.0');
    expect(gapText('dark', 0.12)).toBe('+0.1');
  });

  test('names the hues that are there, largest first', () => {
    const shares = { red: 0, orange: 0.2, yellow: 0.004, green: 0.796, blue: 0, violet: 0 };
    expect(huesText(shares)).toBe('green 80, orange 20');
    expect(huesText(null)).toBe('—');
  });
});
