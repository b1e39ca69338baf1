/** Outlines made from ridges: always fillable, inside the picture, and as near the ridge as was asked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import { outlineBelow } from '#server/core/planes/propose/outlines.ts';

const ROWS = 80;
/** A ridge that may drop out of the picture and come back. */
const ridges = fc
  .array(fc.integer({ min: 0, max: 110 }), { minLength: 3, maxLength: 60 })
  .map((heights) => heights.map((y) => Math.min(ROWS, y)));

describe('the outline below a ridge', () => {
  it('can be filled, or there is none, whatever the ridge does', () => {
    fc.assert(
      fc.property(ridges, ridges, fc.double({ min: 0.1, max: 4, noNaN: true }), (ridge, other, tolerance) => {
        const next = ridge.map((y, column) => Math.max(y, other[column] ?? ROWS));
        for (const front of [undefined, next]) {
          const outline = outlineBelow(ridge, front, ROWS, tolerance);
          if (outline === null) continue;
          checkOutline('plane', outline);
          expect(outline.flat().every((part) => part >= 0 && part <= 1)).toBe(true);
        }
      }),
    );
  });

  it('covers what lies below a smooth ridge to within the tolerance and the half pixel of a row', () => {
    const columns = 200;
    const ridge = Array.from({ length: columns }, (_, x) => Math.round(40 + 12 * Math.sin(x / 25)));
    const outline = outlineBelow(ridge, undefined, ROWS, 0.8) ?? [];
    const labels = drawLabelMap(columns, ROWS, [outline]);
    ridge.forEach((top, x) => {
      const covered = Array.from({ length: ROWS }, (_, y) => labels[y * columns + x]).filter(
        (label) => label === 0,
      );
      expect(Math.abs(covered.length - (ROWS - top))).toBeLessThanOrEqual(2);
    });
    expect(outline.length).toBeLessThan(60);
  });

  it('is none where the plane shows nowhere', () => {
    expect(outlineBelow([80, 80, 80, 80], undefined, ROWS, 1)).toBeNull();
  });
});
