/** Percentiles against sorting, by the definition of Hyndman & Fan (1996), type 7. */
import { describe, expect, it } from 'vitest';
import {
  COLOUR_RANGE,
  LIGHTNESS_RANGE,
  median,
  percentiles,
  UNIT_RANGE,
} from '#server/core/image/percentiles.ts';
import { percentileOf } from '#tests/fixtures/scenes/truth.ts';

const FRACTIONS = [0, 0.05, 0.5, 0.9, 0.95, 1];

describe('percentiles', () => {
  it('interpolate between order statistics as type 7 does', () => {
    // Hyndman & Fan type 7 of 1, 2, 3, 4: 1 + 3p.
    const found = percentiles(Float32Array.of(4, 1, 3, 2), [0.25, 0.5, 0.9], LIGHTNESS_RANGE);
    [1.75, 2.5, 3.7].forEach((figure, at) => {
      expect(found[at]).toBeCloseTo(figure, 6);
    });
  });

  it.each([1, 2, 5, 4096, 4097, 50_000])('agree with sorting %d values', (count) => {
    const values = Float32Array.from({ length: count }, (_, at) => 50 + 49 * Math.sin(at * 12.9898 + 1) ** 3);
    percentiles(values, FRACTIONS, LIGHTNESS_RANGE).forEach((figure, at) => {
      expect(Math.abs(figure - percentileOf(values, FRACTIONS[at] as number))).toBeLessThan(0.002);
    });
  });

  it('agree with sorting where nearly all values are the same, and at both ends of the range', () => {
    const values = Float32Array.from({ length: 20_000 }, (_, at) => (at % 20 === 0 ? -127 : 100));
    percentiles(values, FRACTIONS, COLOUR_RANGE).forEach((figure, at) => {
      expect(Math.abs(figure - percentileOf(values, FRACTIONS[at] as number))).toBeLessThan(0.005);
    });
    expect(percentiles(new Float32Array(9000).fill(1), [0.5], UNIT_RANGE)[0]).toBeCloseTo(1, 4);
  });

  it('leave their input alone and refuse an empty one', () => {
    const values = Float32Array.of(3, 1, 2);
    percentiles(values, [0.5], LIGHTNESS_RANGE);
    expect([...values]).toEqual([3, 1, 2]);
    expect(() => percentiles(new Float32Array(0), [0.5], LIGHTNESS_RANGE)).toThrow('No value');
  });
});

describe('the median of a plain list', () => {
  it('is the middle, the mean of the two middles, or nothing', () => {
    expect([median([3, 1, 2]), median([4, 1, 2, 3]), median([])]).toEqual([2, 2.5, null]);
  });
});
