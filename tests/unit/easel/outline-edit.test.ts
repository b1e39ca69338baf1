/** What the hand does to an outline; core's own check says whether the outcome can be used. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  closedRidge,
  movedOutline,
  nearestEdge,
  simplified,
  withoutPoint,
  withPointAfter,
  withPointMoved,
  withPointNear,
} from '#app/_easel/outline-edit.ts';
import { reapplied } from '#app/_easel/reapplied.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { signedArea } from '#server/core/geometry/outline.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';

const SQUARE: Outline = [
  [0.2, 0.2],
  [0.8, 0.2],
  [0.8, 0.8],
  [0.2, 0.8],
];
const ridge = fc
  .array(fc.double({ min: 0.05, max: 0.95, noNaN: true }), { minLength: 3, maxLength: 40 })
  .map((heights) => heights.map((y, at): FractionPoint => [0.02 + (0.96 * at) / (heights.length - 1), y]));

describe('a ridge that closes by itself', () => {
  test('any line from side to side becomes an outline that core accepts, below and above', () => {
    fc.assert(
      fc.property(ridge, (line) => {
        for (const kind of ['land', 'sky'] as const)
          expect(() => checkOutline('x', closedRidge(line, kind))).not.toThrow();
      }),
    );
  });

  test('what lies below the ridge and what lies above it make up the whole picture', () => {
    fc.assert(
      fc.property(ridge, (line) => {
        const area =
          Math.abs(signedArea(closedRidge(line, 'land'))) + Math.abs(signedArea(closedRidge(line, 'sky')));
        expect(area).toBeCloseTo(1, 9);
      }),
    );
  });

  test('it does not matter from which side the line is drawn', () => {
    fc.assert(
      fc.property(ridge, (line) => {
        expect(closedRidge([...line].reverse(), 'wood')).toEqual(closedRidge(line, 'wood'));
      }),
    );
  });

  test('ends far from the sides drop straight down', () => {
    expect(
      closedRidge(
        [
          [0.3, 0.4],
          [0.6, 0.5],
        ],
        'land',
      ),
    ).toEqual([
      [0.3, 0.4],
      [0.6, 0.5],
      [0.6, 1],
      [0.3, 1],
    ]);
  });
});

describe('a simplified line', () => {
  test('keeps its ends and departs from no drawn point by more than the tolerance', () => {
    const line = fc.array(
      fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
      {
        minLength: 2,
        maxLength: 80,
      },
    );
    fc.assert(
      fc.property(line, (points) => {
        const kept = simplified(points, 0.05, 1);
        expect(kept[0]).toEqual(points[0]);
        expect(kept.at(-1)).toEqual(points.at(-1));
        for (const point of points) {
          const open = kept.length > 1 ? nearestOf(kept, point) : 0;
          expect(open).toBeLessThanOrEqual(0.05 + 1e-9);
        }
      }),
    );
  });

  test('a straight line is its two ends', () => {
    const points = Array.from({ length: 50 }, (_, at): FractionPoint => [at / 49, 0.5]);
    expect(simplified(points, 0.001, 0.7)).toEqual([points[0], points[49]]);
  });
});

/** Distance to the open line through `kept`. */
function nearestOf(kept: readonly FractionPoint[], [x, y]: FractionPoint): number {
  let best = Number.POSITIVE_INFINITY;
  for (let at = 0; at + 1 < kept.length; at++) {
    const a = kept[at] ?? ([0, 0] as const);
    const b = kept[at + 1] ?? a;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = dx * dx + dy * dy;
    const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / length));
    best = Math.min(best, Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy));
  }
  return best;
}

describe('points of an outline', () => {
  test('a new point lands on the nearest edge, between its two ends', () => {
    const { outline, at } = withPointNear(SQUARE, [0.5, 0.21], 1);
    expect(at).toBe(1);
    expect(outline[1]).toEqual([0.5, 0.21]);
    expect(outline).toHaveLength(5);
    expect(nearestEdge(SQUARE, [0.21, 0.5], 1).edge).toBe(3);
  });

  test('a point after the last one stands between it and the first', () => {
    expect(withPointAfter(SQUARE, 3).outline[4]).toEqual([0.2, 0.5]);
  });

  test('three points are the fewest', () => {
    const three = withoutPoint(SQUARE, 0);
    expect(three).toHaveLength(3);
    expect(withoutPoint(three, 0)).toEqual(three);
  });

  test('moving stays inside the picture and touches no other point', () => {
    const moved = withPointMoved(SQUARE, 2, 9, -9);
    expect(moved[2]).toEqual([1, 0]);
    expect(moved.filter((_, at) => at !== 2)).toEqual(SQUARE.filter((_, at) => at !== 2));
  });

  test('a moved outline still runs out of the picture where it did', () => {
    const band: Outline = [
      [0, 0.5],
      [1, 0.4],
      [1, 1],
      [0, 1],
    ];
    expect(movedOutline(band, 0.1, 0.1)).toEqual([
      [0, 0.6],
      [1, 0.5],
      [1, 1],
      [0, 1],
    ]);
  });
});

describe('two people at one outline', () => {
  test('each moves another point and both moves stay', () => {
    const mine = withPointMoved(SQUARE, 0, -0.1, 0);
    const theirs = withPointMoved(SQUARE, 2, 0.1, 0);
    const both = reapplied(SQUARE, mine, theirs);
    expect(both[0]).toEqual(mine[0]);
    expect(both[2]).toEqual(theirs[2]);
  });

  test('a point that the other added stays when mine is put on top', () => {
    const theirs = withPointAfter(SQUARE, 1).outline;
    const both = reapplied(SQUARE, withPointMoved(SQUARE, 3, 0, 0.1), theirs);
    expect(both).toHaveLength(5);
    expect(both[4]?.[1]).toBeCloseTo(0.9, 9);
  });

  test('nobody else was there: mine as it is', () => {
    const mine = withPointMoved(SQUARE, 1, 0, 0.05);
    expect(reapplied(SQUARE, mine, SQUARE)).toEqual(mine);
  });
});
