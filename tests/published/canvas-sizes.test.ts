/** Canvas sizes against public listings: common practice, not a standard; some sizes in inches are from memory. */
import { describe, expect, it } from 'vitest';
import { CANVAS_SIZES, sizesThatFit, turnedLike } from '#server/core/rectify/canvas-sizes.ts';
import table from './canvas-formats.json' with { type: 'json' };

describe('usual canvas sizes', () => {
  it('are those of suppliers in inches, each once', () => {
    const listed = table.data.us_inches.map(({ inches }) => inches.toReversed().join(' x ')).sort();
    const ours = CANVAS_SIZES.filter(({ unit }) => unit === 'in').map(
      ({ long, short }) => `${long} x ${short}`,
    );
    expect(ours.sort()).toEqual(listed);
  });

  it.each(table.data.french_cm)('have number $no of the French series in F, P and M', ({ no, F, P, M }) => {
    const sizes = Object.entries({ F, P, M }).map(([letter, sides]) => {
      const size = CANVAS_SIZES.find(({ name }) => name === `${no}${letter}`);
      return { sides, ours: [size?.long, size?.short], unit: size?.unit };
    });
    for (const { sides, ours, unit } of sizes) {
      expect(ours).toEqual(sides);
      expect(unit).toBe('cm');
    }
  });

  it('give the mean proportions of the French series', () => {
    for (const [letter, mean] of Object.entries(table.mean_ratios)) {
      const ratios = CANVAS_SIZES.filter(({ name }) => name?.endsWith(letter)).map(
        ({ long, short }) => long / short,
      );
      expect(ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length).toBeCloseTo(mean, 3);
    }
  });

  it('fit a proportion lying or standing, the nearest first', () => {
    expect(
      sizesThatFit(4 / 3)
        .slice(0, 3)
        .map(({ long, short }) => `${long} x ${short}`),
    ).toEqual(['8 x 6', '12 x 9', '16 x 12']);
    expect(sizesThatFit(3 / 4)).toEqual(sizesThatFit(4 / 3));
    expect(sizesThatFit(1).every(({ long, short }) => long === short)).toBe(true);
    expect(sizesThatFit(9)).toEqual([]);
    const [size] = sizesThatFit(4 / 5);
    expect(size && turnedLike(size, 4 / 5)).toEqual([8, 10]);
  });
});
