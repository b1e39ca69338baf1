/** Splitting a plane by a line and making one of two: nothing falls bare, nothing else changes, lines and points stay. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import type { Ring } from '#server/core/planes/edit/layers.ts';
import { mergedRing } from '#server/core/planes/edit/merge.ts';
import { splitOff } from '#server/core/planes/edit/split.ts';
import { drawLabelMap, NO_PLANE } from '#server/core/planes/label-map.ts';
import { GRID, place, planes, ridge, WHOLE } from './some-planes.ts';

const RUNS = { numRuns: 80 };
const seenOf = (rings: readonly Ring[]) => drawLabelMap(GRID.columns, GRID.rows, rings);
const HILL: Ring = [
  [0, 0.4],
  [0.5, 0.3],
  [1, 0.4],
  [1, 1],
  [0, 1],
];
const across = (y: number): FractionPoint[] => [
  [-0.02, y],
  [0.5, y + 0.05],
  [1.02, y],
];

describe('a split', () => {
  test('leaves everything that is not the plane as it was, and all of the plane to the two', () => {
    const line = fc.array(place, { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(planes, line, fc.integer({ min: 0, max: 3 }), (rings, stops, plane) => {
        const split = splitOff(rings, GRID, plane, 'land', stops);
        if (!split) return;
        expect(() => checkOutline('it', split.ring)).not.toThrow();
        const was = seenOf(rings);
        const is = seenOf([...rings.slice(0, plane + 1), split.ring, ...rings.slice(plane + 1)]);
        let strangers = 0;
        was.forEach((label, cell) => {
          const now = is[cell] as number;
          const same =
            label === plane
              ? now === plane || now === plane + 1
              : now === (label > plane ? label + 1 : label);
          if (!same) strangers++;
        });
        // Where the new line was tidied it may lap over a farther plane's border by a hair.
        expect(strangers).toBeLessThan(25);
        expect(is.filter((label) => label === plane + 1).length).toBeGreaterThan(0);
        expect(is.filter((label) => label === plane).length).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  test('runs through the points of its line, and the rest of the outline keeps its own', () => {
    const split = splitOff([WHOLE, HILL], GRID, 1, 'land', across(0.6));
    expect(split?.part).toBe('nearer');
    const has = ([x, y]: FractionPoint) =>
      split?.ring.some((point) => Math.hypot(point[0] - x, point[1] - y) < 1e-9);
    expect([has([0.5, 0.65]), has([1, 1]), has([0, 1])]).toEqual([true, true, true]);
    expect(has([0.5, 0.3])).toBe(false);
  });

  test('gives the upper part of a sky, since that is the nearer', () => {
    const split = splitOff([WHOLE, HILL], GRID, 0, 'sky', across(0.15));
    expect(split?.ring.every(([, y]) => y < 0.21)).toBe(true);
  });

  test('may be drawn only as far as the plane goes, or not even that', () => {
    for (const ends of [0, 0.2] as const) {
      const line: FractionPoint[] = [
        [ends, 0.7],
        [1 - ends, 0.7],
      ];
      const split = splitOff([WHOLE, HILL], GRID, 1, 'land', line);
      expect(Math.min(...(split?.ring.map(([, y]) => y) ?? []))).toBeCloseTo(0.7, 1);
      expect(split?.ring.some(([x]) => x < 0.01) && split.ring.some(([x]) => x > 0.99)).toBe(true);
    }
  });

  test('side by side takes the smaller part and says where it lies', () => {
    const upright = (x: number): FractionPoint[] => [
      [x, 0],
      [x, 1],
    ];
    expect(splitOff([WHOLE, HILL], GRID, 1, 'land', upright(0.7))?.part).toBe('right');
    expect(splitOff([WHOLE, HILL], GRID, 1, 'land', upright(0.3))?.part).toBe('left');
  });

  test('does not happen where the line passes the plane by', () => {
    expect(splitOff([WHOLE, HILL], GRID, 1, 'land', across(0.1))).toBeNull();
  });
});

describe('two planes made one', () => {
  test('show as one what both showed, and nothing falls bare', () => {
    fc.assert(
      fc.property(ridge(0.35), ridge(0.65), (far, near) => {
        const rings = [WHOLE, far, near];
        const ring = mergedRing(rings, GRID, 1, 2);
        if (!ring) throw new Error('They touch, so they can be one.');
        expect(() => checkOutline('it', ring)).not.toThrow();
        const [was, is] = [seenOf(rings), seenOf([WHOLE, ring])];
        const strangers = was.filter((label, cell) => Math.min(label, 1) !== is[cell]).length;
        expect(strangers).toBeLessThan(15);
        expect(is.includes(NO_PLANE)).toBe(false);
      }),
      RUNS,
    );
  });

  test('come back to the outline that was split', () => {
    const split = splitOff([WHOLE, HILL], GRID, 1, 'land', across(0.6));
    if (!split) throw new Error('The line goes across.');
    expect(mergedRing([WHOLE, HILL, split.ring], GRID, 1, 2)).toEqual(HILL);
  });

  test('that do not touch are joined behind something nearer, and not before something farther', () => {
    const box = (x0: number, x1: number): Ring => [
      [x0, 0.4],
      [x1, 0.4],
      [x1, 0.9],
      [x0, 0.9],
    ];
    const [left, tree, right] = [box(0.1, 0.4), box(0.35, 0.7), box(0.65, 0.9)];
    expect(mergedRing([WHOLE, left, right], GRID, 1, 2)).toBeNull();
    const ring = mergedRing([WHOLE, left, right, tree], GRID, 1, 2);
    expect(ring?.some(([x]) => x < 0.11) && ring.some(([x]) => x > 0.89)).toBe(true);
    const is = seenOf([WHOLE, ring ?? [], tree]);
    const was = seenOf([WHOLE, left, right, tree]);
    const strangers = was.filter((label, cell) => (label === 3 ? 2 : Math.min(label, 1)) !== is[cell]).length;
    expect(strangers).toBeLessThan(15);
  });

  test('where only one has an outline, keep that', () => {
    expect(mergedRing([WHOLE, HILL, null], GRID, 1, 2)).toEqual(HILL);
    expect(mergedRing([WHOLE, null, HILL], GRID, 1, 2)).toEqual(HILL);
  });
});
