/** Corners and cards that can't be used are refused, or left out with a reason. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Card, FractionPoint } from '#server/core/contract/setup.ts';
import type { Corners } from '#server/core/geometry/homography.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { Problem } from '#server/core/problem.ts';
import { checkCorners } from '#server/core/rectify/check-corners.ts';
import { correctPhoto } from '#server/core/rectify/correct-photo.ts';
import { fractionMapper } from '#server/core/rectify/fraction-mapper.ts';
import { changesNoLight, type LightField, readLight } from '#server/core/rectify/light-field.ts';
import { WHOLE_PHOTO } from '#server/core/rectify/whole-photo.ts';

function refusal(action: () => unknown): string {
  try {
    action();
  } catch (thrown) {
    if (thrown instanceof Problem) return `${thrown.code}: ${thrown.message}`;
    throw thrown;
  }
  return 'accepted';
}

const lightFromCards = (raster: EncodedRaster, cards: Card[]): LightField =>
  readLight(raster, cards, WHOLE_PHOTO, false);

const good: Corners = [
  [0.1, 0.1],
  [0.9, 0.15],
  [0.85, 0.9],
  [0.12, 0.88],
];
const [topLeft, topRight, bottomRight, bottomLeft] = good;

describe('corners', () => {
  it('are taken clockwise from the top left', () => {
    expect(refusal(() => checkCorners(good))).toBe('accepted');
    expect(refusal(() => checkCorners([topLeft, bottomLeft, bottomRight, topRight]))).toContain(
      'wrong way round',
    );
  });

  it('may not cross over, dent, or make a sliver', () => {
    expect(refusal(() => checkCorners([topLeft, topRight, bottomLeft, bottomRight]))).toContain(
      'corners-invalid: The 4 corners cross over',
    );
    expect(refusal(() => checkCorners([topLeft, topRight, [0.3, 0.3], bottomLeft]))).toContain(
      'make a dent at the bottom right',
    );
    expect(
      refusal(() =>
        checkCorners([
          [0.1, 0.1],
          [0.5, 0.1001],
          [0.9, 0.1],
          [0.5, 0.9],
        ]),
      ),
    ).toMatch(/sliver|dent/);
    expect(
      refusal(() =>
        checkCorners([
          [0.1, 0.1],
          [0.12, 0.1],
          [0.12, 0.12],
          [0.1, 0.12],
        ]),
      ),
    ).toContain('enclose 0.0 % of the photo');
  });

  it('lie on the photo', () => {
    expect(refusal(() => checkCorners([topLeft, [1.4, 0.1], bottomRight, bottomLeft]))).toContain(
      'The top right corner lies at (1.4, 0.1)',
    );
    expect(refusal(() => checkCorners([[Number.NaN, 0], topRight, bottomRight, bottomLeft]))).toContain(
      'corners-invalid',
    );
  });
});

describe('points between photo and squared painting', () => {
  const corner = fc.double({ min: -0.09, max: 0.09, noNaN: true });
  const corners = fc
    .tuple(corner, corner, corner, corner, corner, corner, corner, corner)
    .map((d): [FractionPoint, FractionPoint, FractionPoint, FractionPoint] => [
      [0.1 + d[0], 0.1 + d[1]],
      [0.9 + d[2], 0.1 + d[3]],
      [0.9 + d[4], 0.9 + d[5]],
      [0.1 + d[6], 0.9 + d[7]],
    ]);
  const unit = fc.double({ min: 0, max: 1, noNaN: true });

  it('come back to where they were', () => {
    fc.assert(
      fc.property(corners, unit, unit, (found, x, y) => {
        const { toSquared, toOriginal } = fractionMapper({ corners: found });
        const [u, v] = toSquared(toOriginal([x, y]));
        expect(Math.hypot(u - x, v - y)).toBeLessThan(1e-9);
      }),
    );
  });

  it('take the corners to the corners of the square', () => {
    const { toSquared } = fractionMapper({ corners: [...good] });
    const found = good.map((point) => toSquared(point));
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ].forEach((expected, at) => {
      expect(found[at]?.[0]).toBeCloseTo(expected[0] as number, 9);
      expect(found[at]?.[1]).toBeCloseTo(expected[1] as number, 9);
    });
  });

  it('stay where they are without corners, and finite everywhere', () => {
    expect(fractionMapper(undefined).toSquared([0.3, 0.7])).toEqual([0.3, 0.7]);
    const { toSquared } = fractionMapper({
      corners: [
        [0.4, 0.1],
        [0.6, 0.1],
        [1, 0.9],
        [0, 0.9],
      ],
    });
    for (const point of [
      [0, 0],
      [1, 0],
      [0.5, -0.1],
      [0.5, 0],
    ] as FractionPoint[]) {
      const [x, y] = toSquared(point);
      expect(Math.abs(x) <= 10 && Math.abs(y) <= 10).toBe(true);
    }
  });
});

describe('cards', () => {
  const patch = (code: [number, number, number]) =>
    encodedRaster(
      50,
      40,
      Uint8Array.from({ length: 50 * 40 * 3 }, (_, at) => code[at % 3] as number),
    );
  const card: Card = { box: [0.1, 0.1, 0.9, 0.9], Y: 0.18 };

  it('need a box that is one, large enough', () => {
    expect(
      refusal(() => lightFromCards(patch([90, 90, 90]), [{ ...card, box: [0.9, 0.1, 0.1, 0.9] }])),
    ).toContain('card-invalid: Card 1 has the box');
    expect(
      refusal(() => lightFromCards(patch([90, 90, 90]), [card, { ...card, box: [0.1, 0.1, 0.15, 0.15] }])),
    ).toContain('Card 2 covers');
  });

  it.each([
    ['clipped', [255, 200, 190], 'clipped'],
    ['nearly black', [3, 2, 2], 'nearly black'],
    ['no neutral', [240, 120, 40], 'no neutral card'],
  ] as const)('are left out with a reason when %s', (_name, code, reason) => {
    const light = lightFromCards(patch([...code]), [card]);
    expect(light.reasons).toHaveLength(1);
    expect(light.reasons[0]).toContain(reason);
    expect([...light.constant, ...light.perWidth, ...light.perHeight].every((figure) => figure === 0)).toBe(
      true,
    );
  });

  it('give a gain that makes them neutral at their luminance', () => {
    const photo = patch([140, 118, 90]);
    const corrected = correctPhoto(photo, { cards: [card] });
    // 18 % of white is code 118 (IEC 61966-2-1).
    expect([...corrected.samples.subarray(0, 3)]).toEqual([118, 118, 118]);
    expect(lightFromCards(photo, [card])).toMatchObject({ cards: 1, clippedCards: 0, reasons: [] });
  });

  it('that disagree are left out together, with one sentence', () => {
    const twice = encodedRaster(
      60,
      20,
      Uint8Array.from({ length: 60 * 20 * 3 }, (_, at) => ((at / 3) % 60 < 30 ? 60 : 200)),
    );
    const cards: Card[] = [
      { box: [0.05, 0.1, 0.45, 0.9], Y: 0.18 },
      { box: [0.55, 0.1, 0.95, 0.9], Y: 0.18 },
    ];
    const light = lightFromCards(twice, cards);
    expect(light.cards).toBe(0);
    expect(light.reasons).toHaveLength(1);
    expect(light.reasons[0]).toContain('Cards 1 and 2 disagree');
    expect(changesNoLight(light)).toBe(true);
  });
});
