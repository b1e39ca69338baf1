/** The way to the air against Koschmieder's law (1924), with the figures of `tests/published/aerial-perspective.json`. */
import { describe, expect, test } from 'vitest';
import { airGeometry, likePlane } from '#app/_air/air-geometry.ts';
import { transmission } from '#server/core/colour/air-law.ts';
import { airPath, labThroughAir } from '#server/core/colour/air-path.ts';
import { labFromRgb, rgbFromLab } from '#server/core/colour/lab.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import table from '#tests/published/aerial-perspective.json' with { type: 'json' };
import { plane, result } from './a-document.ts';

const { data } = table;
const GREEN = { L: 52, a: -18, b: 34 };
const AIR = { L: 86, a: -2, b: -8 };

describe('the way to the air', () => {
  test.each(data.dark_ridge_V20km.rows)('lifts a dark ridge at $d_km km as published', ({ d_km, Y, L }) => {
    const { J, A } = data.dark_ridge_V20km;
    const through = transmission(Math.log(50) / 20, d_km);
    const seen = labThroughAir(labFromRgb([J, J, J]), labFromRgb([A, A, A]), through);
    expect(Math.abs(seen.L - L)).toBeLessThanOrEqual(0.000501);
    expect(rgbFromLab(seen)[1]).toBeCloseTo(Y, 5);
  });

  test.each(data.bright_object_V20km.rows)(
    'darkens what is brighter than the air at $d_km km',
    ({ d_km, L }) => {
      const { J, A } = data.bright_object_V20km;
      const seen = labThroughAir(
        labFromRgb([J, J, J]),
        labFromRgb([A, A, A]),
        transmission(Math.log(50) / 20, d_km),
      );
      expect(Math.abs(seen.L - L)).toBeLessThanOrEqual(0.000501);
    },
  );

  test('mixes the linear light of a hill half and half with the air', () => {
    const { J_linear, A_linear } = data.coloured_hill;
    const [thing, air] = [J_linear, A_linear].map(([r = 0, g = 0, b = 0]) => labFromRgb([r, g, b])) as [
      typeof AIR,
      typeof AIR,
    ];
    rgbFromLab(labThroughAir(thing, air, 0.5)).forEach((channel, at) => {
      expect(channel).toBeCloseTo(((J_linear[at] ?? 0) + (A_linear[at] ?? 0)) / 2, 9);
    });
  });

  test('begins at the thing, ends at the air, and bends away from the straight line in CIELAB', () => {
    const way = airPath(GREEN, AIR, 8);
    expect(way).toHaveLength(9);
    expect(way[0]?.L).toBeCloseTo(GREEN.L, 6);
    expect(way[8]?.b).toBeCloseTo(AIR.b, 6);
    // Half the light mixed is lighter than half the way in L*, which follows the cube root of light.
    expect(way[4]?.L).toBeGreaterThan((GREEN.L + AIR.L) / 2 + 1);
  });
});

describe('where things stand in the air view', () => {
  const kinds = ['sky', 'wood', 'land', 'wood'] as const;
  const coloured = (L: number, a: number, b: number) => ({
    ...plane(L - 10, L, L + 10),
    ...{ a, b, chroma: Math.hypot(a, b) },
  });
  const half = labThroughAir(GREEN, AIR, 0.5);
  const document = {
    target: 'reference',
    air: { reference: AIR, painting: AIR },
    planes: [
      result('sky', coloured(86, -2, -8), coloured(86, -2, -8)),
      result('far wood', coloured(half.L, half.a, half.b), {
        ...coloured(half.L, half.a, half.b),
        doubt: { mid: [half.L - 4, half.L + 4], chroma: [3, 15] },
      }),
      result('field', coloured(60, -8, 36), coloured(60, -8, 36)),
      result('near wood', coloured(GREEN.L, GREEN.a, GREEN.b), coloured(GREEN.L, GREEN.a, GREEN.b)),
    ],
  } as unknown as MeasureDocument; // Only what the view reads.

  test('a way begins at the plane of the same kind that is nearest to the eye', () => {
    const all = [true, true, true, true];
    expect([0, 1, 2, 3].map((index) => likePlane(kinds, all, index))).toEqual([null, 3, null, null]);
    expect(likePlane(['land', 'land', 'land'], [true, true, false], 0)).toBe(1);
    expect(likePlane([null, null], [true, true], 0)).toBeNull();
    expect(airGeometry(document, kinds).columns.map(({ from }) => from)).toEqual([null, 4, null, null]);
  });

  test('chroma runs to the right and lightness upward, to a whole ten beyond the strongest colour', () => {
    const { columns, mostChroma } = airGeometry(document, kinds);
    expect(mostChroma).toBe(40);
    expect(columns[3]?.painting.own).toEqual({
      x: expect.closeTo(Math.hypot(18, 34) / 40, 12),
      y: expect.closeTo(0.48, 12),
    });
    expect(columns[1]?.painting.doubt).toEqual({ x: expect.closeTo(0.15, 12), y: expect.closeTo(0.04, 12) });
    expect(columns[1]?.reference?.doubt).toBeNull();
  });

  test('a plane under half its light of air has gone half of its way', () => {
    const painting = airGeometry(document, kinds).columns[1]?.painting;
    expect(painting?.travelled).toHaveLength(17);
    expect(painting?.ahead).toHaveLength(17);
    expect(painting?.travelled.at(-1)?.y).toBeCloseTo(painting?.own?.y ?? -1, 9);
    expect(painting?.ahead.at(-1)?.x).toBeCloseTo(painting?.air?.x ?? -1, 9);
  });

  test('without a like plane the way begins at the plane itself, and none of it is gone', () => {
    const field = airGeometry(document, kinds).columns[2]?.painting;
    expect(field?.start).toBeNull();
    expect(field?.travelled).toHaveLength(1);
    expect(field?.ahead).toHaveLength(33);
    expect(field?.ahead[0]?.y).toBeCloseTo(field?.own?.y ?? -1, 9);
  });

  test('the sky has no way, nor has any plane without an air colour', () => {
    expect(airGeometry(document, kinds).columns[0]?.painting).toMatchObject({ travelled: [], ahead: [] });
    const bare = airGeometry({ ...document, air: { reference: null, painting: null } }, kinds);
    expect(bare.columns[1]?.painting).toMatchObject({ travelled: [], ahead: [], air: null });
  });

  test('the painting stands alone without a reference', () => {
    const alone = airGeometry({ ...document, target: 'none' }, kinds);
    expect(alone.columns.map(({ reference }) => reference)).toEqual([null, null, null, null]);
  });
});
