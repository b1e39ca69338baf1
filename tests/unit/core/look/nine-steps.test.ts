/** The nine steps against Munsell value as published (ASTM D1535, Newhall, Nickerson & Judd 1943), and their greys. */
import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { greyOf, NINE_STEPS, STEP_L, stepOfLightness, stepsInWords } from '#server/core/look/nine-steps.ts';
import table from '../../../published/munsell-value.json' with { type: 'json' };

const toLab = converter('lab65');

describe('the nine steps', () => {
  it('lie within 0.11 of a step of the Munsell values 1 to 9', () => {
    const apart = NINE_STEPS.map((step) => {
      const printed = table.data.find(({ V }) => V === step);
      return Math.abs((printed?.L ?? Number.NaN) / STEP_L - step);
    });
    expect(apart).toHaveLength(9);
    expect(Math.max(...apart)).toBeLessThanOrEqual(0.11);
  });

  it('are drawn in greys of that lightness, as near as eight bits allow', () => {
    for (const step of NINE_STEPS) {
      const { l, a, b } = toLab(greyOf(step * STEP_L)) ?? { l: 0, a: 9, b: 9 };
      expect(Math.abs(l - step * STEP_L)).toBeLessThan(0.25);
      expect(Math.hypot(a, b)).toBeLessThan(0.05);
    }
  });

  it('hold values to the scale', () => {
    expect([-4, 52, 104].map(stepOfLightness)).toEqual([0, 5.2, 10]);
    expect(greyOf(-5)).toBe('#000000');
    expect(greyOf(120)).toBe('#ffffff');
  });

  it.each([
    [1, 0.25, 'a quarter of a step'],
    [-5, 0.5, 'half a step'],
    [9, 0.25, 'a step'],
    [-12, 0.25, 'a step and a quarter'],
    [27, 0.5, 'two steps and a half'],
    [61, 0.5, 'six steps'],
    [3, 1, 'a step'],
  ] as const)('put %d L* into words by %d of a step', (lightness, unit, words) => {
    expect(stepsInWords(lightness, unit)).toBe(words);
  });
});
