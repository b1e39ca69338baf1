/** Frames, places of planes, strokes and the preview's setup. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cssMatrix } from '#app/_easel/frame.ts';
import { previewSetup } from '#app/_easel/preview-setup.ts';
import { ridgePath } from '#app/_easel/shape-path.ts';
import { squaredFrameOf } from '#app/_easel/squared-frame.ts';
import { thinned } from '#app/_easel/stroke-points.ts';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { caretAfter } from '#app/_talk/caret.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';

const CORNERS: [FractionPoint, FractionPoint, FractionPoint, FractionPoint] = [
  [0.1, 0.15],
  [0.92, 0.08],
  [0.88, 0.9],
  [0.05, 0.95],
];
const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });

describe('a squared painting', () => {
  const frame = squaredFrameOf({ corners: CORNERS, size: [40, 30] }, { width: 1600, height: 1200 });

  test('has its corners in the corners and the typed proportion', () => {
    expect(frame?.size.width).toBeCloseTo((frame?.size.height ?? 0) * (4 / 3), 9);
    const shown = CORNERS.map((corner) => frame?.shown(corner) ?? [9, 9]);
    const expected = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ];
    shown.forEach((point, at) => {
      expect(point[0]).toBeCloseTo(expected[at]?.[0] ?? 9, 9);
      expect(point[1]).toBeCloseTo(expected[at]?.[1] ?? 9, 9);
    });
  });

  test('points go there and back', () => {
    fc.assert(
      fc.property(share, share, (x, y) => {
        const [backX, backY] = frame?.original(frame.shown([x, y])) ?? [9, 9];
        expect(backX).toBeCloseTo(x, 9);
        expect(backY).toBeCloseTo(y, 9);
      }),
    );
  });

  test('the CSS transform puts a pixel where the frame says', () => {
    // CSS Transforms 2, §12: matrix3d lists columns; x' = (m11 x + m21 y + m41) / w, w = m14 x + m24 y + m44.
    const [width, height] = [640, 480];
    const m = cssMatrix(
      frame?.matrix ?? [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      width,
      height,
    )
      .slice(9, -1)
      .split(',')
      .map(Number);
    const at = (index: number) => m[index] ?? Number.NaN;
    fc.assert(
      fc.property(share, share, (u, v) => {
        const [x, y] = [u * width, v * height];
        const w = at(3) * x + at(7) * y + at(15);
        const [sx, sy] = frame?.shown([u, v]) ?? [9, 9];
        expect((at(0) * x + at(4) * y + at(12)) / w).toBeCloseTo(sx * width, 6);
        expect((at(1) * x + at(5) * y + at(13)) / w).toBeCloseTo(sy * height, 6);
      }),
    );
  });

  test('corners that no flat picture can have are not squared', () => {
    const [a, b, c, d] = CORNERS;
    expect(squaredFrameOf({ corners: [a, c, b, d] }, { width: 100, height: 100 })).toBeNull();
    expect(squaredFrameOf({}, { width: 100, height: 100 })).toBeNull();
  });
});

describe('planes on a picture', () => {
  const sky: Outline = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ];
  const hill: Outline = [
    [0, 0.5],
    [1, 0.5],
    [1, 1],
    [0, 1],
  ];
  const places = planePlaces([
    { planeId: 'sky', outline: sky },
    { planeId: 'hill', outline: hill },
  ]);

  test('a nearer plane covers a farther one, for numbers and for pins', () => {
    expect(places.planeAt([0.5, 0.2])).toBe('sky');
    expect(places.planeAt([0.5, 0.8])).toBe('hill');
    expect(places.badges.get('sky')?.[1]).toBeLessThan(0.5);
    expect(places.badges.get('hill')?.[1]).toBeGreaterThan(0.5);
  });

  test('a plane that is covered altogether has no number', () => {
    const covered = planePlaces([
      { planeId: 'hill', outline: hill },
      { planeId: 'wall', outline: sky },
    ]);
    expect(covered.badges.has('hill')).toBe(false);
  });

  test('where there is no plane, none is named', () => {
    expect(planePlaces([{ planeId: 'hill', outline: hill }]).planeAt([0.5, 0.1])).toBeNull();
  });

  test('the drawn line leaves out the picture border', () => {
    expect(ridgePath(hill, 1)).toBe('M0.0 500.0L1000.0 500.0');
  });
});

describe('strokes', () => {
  test('keep their ends and pressure, lose what nobody could see', () => {
    const points = Array.from({ length: 9000 }, (_, at): [number, number, number] => [at / 9000, 0.5, 0.7]);
    const kept = thinned(points);
    expect(kept.length).toBeLessThanOrEqual(4000);
    expect(kept[0]).toEqual([0, 0.5, 0.7]);
    expect(kept.at(-1)?.[0]).toBeCloseTo(8999 / 9000, 3);
  });
});

describe('the setup of the preview', () => {
  const plane = (id: string, number: number): PlaneView => ({
    ...{ id, name: id, kind: 'land', tilt: null, number, unreliable: null },
  });
  const outline: Outline = [
    [0, 0.5],
    [1, 0.5],
    [1, 1],
  ];
  const moved: Outline = [
    [0, 0.4],
    [1, 0.5],
    [1, 1],
  ];

  test('takes the moving outline in place of the stored one, on its picture only', () => {
    const setup = previewSetup({
      planes: [plane('a', 1), plane('b', 2)],
      onReference: new Map([['a', outline]]),
      onPainting: new Map([['a', outline]]),
      photo: {},
      moving: { kind: 'painting', outlines: new Map([['a', moved]]) },
    });
    expect(setup?.planes.map(({ name }) => name)).toEqual(['a']);
    expect(setup?.planes[0]?.reference).toEqual(outline);
    expect(setup?.planes[0]?.painting).toEqual(moved);
  });

  test('a plane that was not carried lies on the squared painting as on the reference', () => {
    const setup = previewSetup({
      planes: [plane('a', 1)],
      onReference: new Map([
        [
          'a',
          [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ],
        ],
      ]),
      onPainting: new Map(),
      photo: { corners: CORNERS },
      moving: { kind: 'reference', outlines: new Map([['z', outline]]) },
    });
    setup?.planes[0]?.painting?.forEach((point, at) => {
      expect(point[0]).toBeCloseTo(CORNERS[at]?.[0] ?? 9, 9);
      expect(point[1]).toBeCloseTo(CORNERS[at]?.[1] ?? 9, 9);
    });
    expect(setup?.planes[0]?.painting).toHaveLength(4);
  });

  test('painted from life, the painting is measured alone', () => {
    const from = {
      planes: [plane('a', 1)],
      photo: {},
      onReference: null,
      onPainting: new Map([['a', outline]]),
    };
    const setup = previewSetup({ ...from, moving: { kind: 'painting', outlines: new Map([['a', moved]]) } });
    expect(setup?.planes[0]?.reference).toEqual(moved);
  });
});

describe('the caret while others write', () => {
  test.each([
    ['hello', 'oh hello', 2, 5],
    ['hello', 'hello there', 2, 2],
    ['one two three', 'one three', 13, 9],
    ['one two three', 'one three', 1, 1],
  ])('from “%s” to “%s” it goes from %i to %i', (before, after, caret, expected) => {
    expect(caretAfter(before, after, caret)).toBe(expected);
  });
});
