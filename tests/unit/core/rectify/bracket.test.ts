/** Squaring and cards recover a known view and a known light. */
import { describe, expect, it } from 'vitest';
import type { FractionPoint, PhotoCorrection, PlaneKind } from '#server/core/contract/setup.ts';
import type { Corners } from '#server/core/geometry/homography.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import {
  applyCorrection,
  correctPhoto,
  correctPlate,
  planCorrection,
} from '#server/core/rectify/correct-photo.ts';
import { sideRatioOf } from '#server/core/rectify/side-ratio.ts';
import { photographScene, seenByCamera } from '#tests/fixtures/scenes/camera.ts';
import parameters from '#tests/fixtures/scenes/parameters.json' with { type: 'json' };
import { encodeScene, renderScene } from '#tests/fixtures/scenes/render-scene.ts';

const scene = renderScene(parameters.scenes[1] as (typeof parameters.scenes)[number]);
const planes = scene.names.map((name, at) => ({
  name,
  kind: scene.kinds[at] as PlaneKind,
  outline: scene.outlines[at] as FractionPoint[],
}));
const plate = encodedRaster(scene.widthPx, scene.heightPx, encodeScene(scene));
const straight = measurePlanes(prepareMeasurable({ raster: plate }), planes, null);

/** Tolerances of pictures seen through a camera. */
const LIGHTNESS = 1.5;
const CHROMA = 2;

function expectSame(raster: EncodedRaster): void {
  const seen = measurePlanes(prepareMeasurable({ raster }), planes, null);
  straight.planes.forEach((plane, at) => {
    for (const key of ['dark', 'mid', 'light'] as const) {
      expect(
        Math.abs((seen.planes[at]?.[key] ?? Number.NaN) - (plane[key] ?? 0)),
        `${planes[at]?.name} ${key}`,
      ).toBeLessThan(LIGHTNESS);
    }
    for (const key of ['chroma', 'a', 'b'] as const) {
      expect(
        Math.abs((seen.planes[at]?.[key] ?? Number.NaN) - (plane[key] ?? 0)),
        `${planes[at]?.name} ${key}`,
      ).toBeLessThan(CHROMA);
    }
    expect(Math.abs((seen.planes[at]?.share ?? Number.NaN) - plane.share)).toBeLessThan(0.01);
  });
}

const CORNERS: Corners = [
  [0.12, 0.09],
  [0.84, 0.14],
  [0.9, 0.88],
  [0.07, 0.93],
];
const LEFT_CARD = [0.01, 0.3, 0.055, 0.5] as const;
const RIGHT_CARD = [0.93, 0.4, 0.98, 0.6] as const;

function photo(light: (x: number, y: number) => [number, number, number], cards: number[][]): EncodedRaster {
  return photographScene(scene, {
    widthPx: 1100,
    heightPx: 800,
    corners: CORNERS,
    light,
    cards: cards.map((box) => ({ box, luminance: 0.18 })),
  });
}

const size: [number, number] = [scene.widthPx, scene.heightPx];

describe('a photographed painting', () => {
  it('is squared back from a keystone view', () => {
    expectSame(
      correctPhoto(
        photo(() => [1, 1, 1], []),
        { corners: [...CORNERS], size },
      ),
    );
  });

  it('is brought back from one stop under and a warm lamp by one grey card', () => {
    const correction: PhotoCorrection = {
      corners: [...CORNERS],
      size,
      cards: [{ box: [...RIGHT_CARD], Y: 0.18 }],
    };
    expectSame(
      correctPhoto(
        // A gain on red, green and blue is only nearly what a lamp does; real lamps are in tests/unit/capture.
        photo(() => [0.58, 0.5, 0.36], [[...RIGHT_CARD]]),
        correction,
      ),
    );
  });

  it('is brought back from light that falls off by two grey cards', () => {
    const fallOff = (x: number): [number, number, number] => [
      0.8 * Math.exp(-0.35 * x),
      0.8 * Math.exp(-0.3 * x),
      0.7 * Math.exp(-0.25 * x),
    ];
    const cards = [
      { box: [...LEFT_CARD], Y: 0.18 },
      { box: [...RIGHT_CARD], Y: 0.18 },
    ] as PhotoCorrection['cards'];
    expectSame(
      correctPhoto(photo(fallOff, [[...LEFT_CARD], [...RIGHT_CARD]]), { corners: [...CORNERS], size, cards }),
    );
  });

  it('is never enlarged, and at most 2,048 px', () => {
    const small = correctPhoto(
      photo(() => [1, 1, 1], []),
      { corners: [...CORNERS], size },
    );
    expect(Math.max(small.widthPx, small.heightPx)).toBeLessThanOrEqual(1100);
    expect(small.widthPx / small.heightPx).toBeCloseTo(size[0] / size[1], 2);
    const wide = encodedRaster(3000, 40, new Uint8Array(3000 * 40 * 3).fill(90));
    const shrunk = correctPhoto(wide, undefined);
    expect([shrunk.widthPx, shrunk.heightPx]).toEqual([2048, 27]);
    expect(shrunk.samples.every((sample) => sample === 90)).toBe(true);
  });

  it('comes back as it is without corners or cards', () => {
    expect(correctPhoto(plate, undefined)).toBe(plate);
    expect(correctPhoto(plate, { size: [3, 2] })).toBe(plate);
  });

  it('keeps its clip map in place', () => {
    const clipped = new Uint8Array(scene.widthPx * scene.heightPx);
    clipped.fill(1, 0, (scene.widthPx * scene.heightPx) / 2);
    const corrected = correctPlate(
      { raster: plate, clipped },
      {
        corners: [
          [0.1, 0.1],
          [0.9, 0.1],
          [0.9, 0.9],
          [0.1, 0.9],
        ],
      },
    );
    const blown = corrected.clipped?.filter((value) => value === 1).length ?? 0;
    expect(blown / (corrected.raster.widthPx * corrected.raster.heightPx)).toBeCloseTo(0.5, 1);
  });
});

describe('anti-aliased squaring', () => {
  it('averages what it shrinks, in linear light', () => {
    const stripes = Uint8Array.from({ length: 400 * 400 * 3 }, (_, at) =>
      Math.floor(at / 3) % 2 === 0 ? 255 : 0,
    );
    const working = encodedRaster(400, 400, stripes);
    const whole = planCorrection(working, {
      corners: [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
    });
    const { samples } = applyCorrection(working, { ...whole, widthPx: 100, heightPx: 100 });
    // Half black, half white is 0.5 in linear light: code 188 (IEC 61966-2-1).
    expect(samples.every((sample) => Math.abs(sample - 188) <= 1)).toBe(true);
  });
});

describe('the side ratio', () => {
  it.each([
    [1.5, 25, 20, 1.6],
    [0.75, -22, 18, 2.2],
    [1, 18, -28, 1.2],
  ])(
    'of a %d : 1 painting comes from its corners in an oblique view (Zhang & He 2007)',
    (ratio, turnDeg, tiltDeg, focal) => {
      const corners = seenByCamera({ ratio, turnDeg, tiltDeg, focal, widthPx: 3000, heightPx: 2000 });
      const found = sideRatioOf(corners, 3000, 2000, undefined);
      expect(found.from).toBe('perspective');
      expect(found.ratio).toBeCloseTo(ratio, 3);
    },
  );

  it('comes from opposite sides when the view is straight, and from the typed size before all', () => {
    const corners = seenByCamera({
      ratio: 1.4,
      turnDeg: 0,
      tiltDeg: 0,
      focal: 2,
      widthPx: 3000,
      heightPx: 2000,
    });
    expect(sideRatioOf(corners, 3000, 2000, undefined)).toEqual({
      ratio: expect.closeTo(1.4, 6),
      from: 'sides',
    });
    expect(sideRatioOf(corners, 3000, 2000, [16, 12])).toEqual({ ratio: 16 / 12, from: 'size' });
  });
});
