/** A photograph cut to a frame measures as if it had been taken so: outlines, pixels and figures go along. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FractionPoint, Setup } from '#server/core/contract/setup.ts';
import { findSelfCrossing } from '#server/core/geometry/outline.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { outlineInto, plateInto, pointInto, setupInto } from '#server/core/plan/crops/into-frame.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';

const FRAME = [0.25, 0.5, 0.75, 1] as const;
const WIDE = 400;
const HIGH = 300;

/** Sky over land over a near field; the near field is left of the middle only. */
const SETUP = Setup.parse({
  planes: [
    {
      name: 'sky',
      kind: 'sky',
      reference: [
        [0, 0],
        [1, 0],
        [1, 0.4],
        [0, 0.4],
      ],
    },
    {
      name: 'hill',
      reference: [
        [0, 0.4],
        [1, 0.4],
        [1, 1],
        [0, 1],
      ],
    },
    {
      name: 'field',
      reference: [
        [0, 0.75],
        [0.5, 0.75],
        [0.5, 1],
        [0, 1],
      ],
    },
  ],
});

function pictureOf(greys: (x: number, y: number) => number) {
  const samples = new Uint8Array(WIDE * HIGH * 3);
  for (let at = 0; at < samples.length; at++) {
    const pixel = Math.floor(at / 3);
    samples[at] = greys((pixel % WIDE) / WIDE, Math.floor(pixel / WIDE) / HIGH);
  }
  return encodedRaster(WIDE, HIGH, samples);
}

describe('into a frame', () => {
  it('points and outlines go to their place in it', () => {
    expect(pointInto(FRAME, [0.5, 0.75])).toEqual([0.5, 0.5]);
    expect(pointInto(FRAME, [0.25, 1])).toEqual([0, 1]);
    expect(
      outlineInto(FRAME, [
        [0.3, 0.6],
        [0.5, 0.6],
        [0.5, 0.9],
      ]),
    ).toEqual([
      [expect.closeTo(0.1), expect.closeTo(0.2)],
      [0.5, expect.closeTo(0.2)],
      [0.5, expect.closeTo(0.8)],
    ]);
  });

  it('planes of which nothing shows are left out', () => {
    expect(setupInto(FRAME, SETUP).planes.map(({ name }) => name)).toEqual(['hill', 'field']);
    expect(setupInto([0, 0, 1, 0.3], SETUP).planes.map(({ name }) => name)).toEqual(['sky']);
    expect(setupInto([0.6, 0.8, 0.9, 0.95], SETUP).planes.map(({ name }) => name)).toEqual(['hill']);
  });

  it('what an outline covers in the frame stays the same however far it runs outside', () => {
    const coordinate = fc.double({ min: 0, max: 1, noNaN: true });
    const angles = fc.array(coordinate, { minLength: 5, maxLength: 14 });
    fc.assert(
      fc.property(angles, fc.tuple(coordinate, coordinate), (radii, [cx, cy]) => {
        // A star about its middle never crosses itself.
        const star = radii.map((radius, at): FractionPoint => {
          const angle = (2 * Math.PI * at) / radii.length;
          const far = 0.1 + 0.6 * radius;
          return [cx + far * Math.cos(angle), cy + far * Math.sin(angle)];
        });
        const small = [0.45, 0.45, 0.5, 0.5] as const;
        const carried = outlineInto(small, star);
        const size = 40;
        const here = drawLabelMap(size, size, [carried]);
        const plain = drawLabelMap(size, size, [star.map((point) => pointInto(small, point))]);
        const other = here.reduce((sum, label, at) => sum + (label === plain[at] ? 0 : 1), 0);
        expect(other).toBeLessThanOrEqual(2);
        for (const point of carried)
          for (const place of point) expect(Math.abs(place)).toBeLessThanOrEqual(2);
        if (carried.length >= 3) expect(findSelfCrossing(carried)).toBeNull();
      }),
    );
  });

  it('the pixels are those of the frame, and so are the figures', () => {
    const raster = pictureOf((x, y) => (y < 0.4 ? 220 : y >= 0.75 && x < 0.5 ? 60 : 120));
    const clipped = new Uint8Array(WIDE * HIGH);
    clipped[(HIGH / 2) * WIDE + WIDE / 4] = 1;
    const cut = plateInto(FRAME, { raster, clipped });
    expect([cut.raster.widthPx, cut.raster.heightPx]).toEqual([WIDE / 2, HIGH / 2]);
    expect(cut.raster.samples[0]).toBe(120);
    expect(cut.raster.samples.at(-1)).toBe(120);
    expect(cut.clipped?.[0]).toBe(1);
    const { planes } = setupInto(FRAME, SETUP);
    const measured = measurePlanes(
      prepareMeasurable({ raster: cut.raster }),
      planes.map(({ name, kind, reference }) => ({ name, kind, outline: reference })),
      null,
    );
    const [hill, field] = measured.planes;
    expect(hill?.share).toBeCloseTo(0.75, 2);
    expect(field?.share).toBeCloseTo(0.25, 2);
    expect(hill?.mid).toBeGreaterThan(field?.mid ?? 100);
  });
});
