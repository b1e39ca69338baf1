/** CIEDE2000 against Sharma, Wu & Dalal (2005), Table 1. */
import { describe, expect, it } from 'vitest';
import { difference1976, difference2000, hueDifferenceDeg } from '#server/core/colour/difference.ts';
import table from './ciede2000.json' with { type: 'json' };

/** Half a unit of the fourth printed decimal. */
const PRINTED = 0.00005;
const lab = ([L, a, b]: number[]) => ({ L: L as number, a: a as number, b: b as number });

describe('CIEDE2000, Sharma, Wu & Dalal (2005), Table 1', () => {
  it('has all 34 pairs', () => {
    expect(table.data).toHaveLength(34);
  });

  it.each(table.data)('gives pair $pair to 4 decimals, in both orders', ({ lab1, lab2, dE00 }) => {
    expect(Math.abs(difference2000(lab(lab1), lab(lab2)) - dE00)).toBeLessThanOrEqual(PRINTED + 1e-9);
    expect(Math.abs(difference2000(lab(lab2), lab(lab1)) - dE00)).toBeLessThanOrEqual(PRINTED + 1e-9);
  });
});

describe('CIE 1976 difference and hue steps', () => {
  it('is the plain distance in CIELAB', () => {
    expect(difference1976({ L: 50, a: 1, b: 2 }, { L: 53, a: 5, b: 14 })).toBeCloseTo(13, 12);
  });

  it('wraps hue differences to half a turn', () => {
    expect(hueDifferenceDeg(10, 350)).toBe(20);
    expect(hueDifferenceDeg(350, 10)).toBe(-20);
    expect(hueDifferenceDeg(180, 0)).toBe(180);
  });
});
