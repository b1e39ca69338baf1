/** Glare is found where it is, left alone where there is none, and never measured. */
import { describe, expect, it } from 'vitest';
import { findGlare } from '#server/core/capture/glare.ts';
import { photographed } from '#server/core/capture/photographed.ts';
import { proposeCorners } from '#server/core/capture/propose-corners.ts';
import { isSoft } from '#server/core/capture/softness.ts';
import { Setup } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { measurePair } from '#server/core/measure/measure-pair.ts';

type Colour = readonly [number, number, number];
const WIDTH = 300;
const HEIGHT = 200;

function drawn(
  colourAt: (x: number, y: number) => Colour,
  widthPx = WIDTH,
  heightPx = HEIGHT,
): EncodedRaster {
  const samples = new Uint8Array(widthPx * heightPx * 3);
  for (let pixel = 0; pixel < widthPx * heightPx; pixel++) {
    samples.set(colourAt(pixel % widthPx, Math.floor(pixel / widthPx)), pixel * 3);
  }
  return encodedRaster(widthPx, heightPx, samples);
}

const PAINT: Colour = [80, 95, 60];
const near = (raster: EncodedRaster) =>
  Uint8Array.from({ length: raster.widthPx * raster.heightPx }, (_, at) =>
    Math.max(...raster.samples.subarray(at * 3, at * 3 + 3)) >= 250 ? 1 : 0,
  );
const disc = (cx: number, cy: number, radius: number, inside: Colour) =>
  drawn((x, y) => (Math.hypot(x - cx, y - cy) < radius ? inside : PAINT));

describe('glare', () => {
  it('is a white blob on darker paint, with a rim', () => {
    const raster = disc(100, 90, 12, [255, 255, 252]);
    const { mask, share } = findGlare(raster, near(raster), false);
    expect(mask[90 * WIDTH + 100]).toBe(1);
    expect(mask[90 * WIDTH + 112]).toBe(1);
    expect(mask[90 * WIDTH + 140]).toBe(0);
    expect(share).toBeGreaterThan((Math.PI * 12 ** 2) / (WIDTH * HEIGHT));
    expect(share).toBeLessThan((Math.PI * 22 ** 2) / (WIDTH * HEIGHT));
  });

  it.each([
    ['strong yellow paint', disc(100, 90, 12, [255, 220, 40])],
    ['light paint that is not clipped', disc(100, 90, 12, [236, 238, 236])],
    ['a single pixel', disc(100, 90, 1, [255, 255, 255])],
    ['a blown sky', drawn((_, y) => (y < 30 ? [255, 255, 255] : PAINT))],
    [
      'a white that its surroundings come near to',
      drawn((x) => (x > 60 && x < 90 ? [252, 252, 252] : [225, 226, 228])),
    ],
    ['an overexposed photo', drawn(() => [255, 255, 255])],
  ])('is not %s', (_name, raster) => {
    expect(findGlare(raster, near(raster), false).share).toBe(0);
  });

  const halves = {
    planes: [
      {
        name: 'far',
        kind: 'land',
        reference: [
          [0, 0],
          [1, 0],
          [1, 0.5],
          [0, 0.5],
        ],
      },
      {
        name: 'near',
        kind: 'land',
        reference: [
          [0, 0.5],
          [1, 0.5],
          [1, 1],
          [0, 1],
        ],
      },
    ],
  };

  it('is left out of every figure', () => {
    const raster = disc(150, 60, 14, [255, 255, 255]);
    const document = measurePair({
      reference: null,
      painting: photographed({ raster }, undefined),
      setup: Setup.parse(halves),
    });
    const [far, near] = document.planes.map(({ painting }) => painting);
    expect(far?.light).toBeCloseTo(near?.light ?? Number.NaN, 3);
    expect(far?.notes.join(' ')).toMatch(/Glare covers \d/);
    expect(document.capture).toMatchObject({
      grade: 'C',
      reasons: ['no neutral', 'glare', 'too small or soft'],
    });
    const { overlay } = document.capture;
    const cells = (overlay?.runs ?? [])
      .filter((_, at) => at % 2 === 1)
      .reduce((sum, length) => sum + length, 0);
    expect(cells).toBe((overlay?.columns ?? 0) * (overlay?.rows ?? 0));
  });

  it('over more than 30 % of a plane leaves it unmeasured, with the reason', () => {
    const raster = drawn((x, y) => (y > 20 && y < 80 && x > 100 && x < 200 ? [255, 255, 255] : PAINT));
    const document = measurePair({
      reference: null,
      painting: photographed({ raster }, undefined),
      setup: Setup.parse({
        planes: [
          {
            name: 'shed',
            kind: 'built',
            reference: [
              [0.3, 0.05],
              [0.7, 0.05],
              [0.7, 0.45],
              [0.3, 0.45],
            ],
          },
          halves.planes[1],
        ],
      }),
    });
    expect(document.planes[0]?.painting.mid).toBeNull();
    expect(document.planes[0]?.painting.notes[0]).toMatch(/^Not measured: glare covers \d+ % of it/);
    expect(JSON.stringify(document)).not.toContain('NaN');
  });
});

describe('a proposal of corners', () => {
  it.each([
    ['a photo of nothing but wall', drawn(() => [120, 118, 110])],
    [
      'a painting that fills the photo',
      drawn((x, y) => [(x * 7 + y * 3) % 256, (x * 5) % 256, (y * 11) % 256]),
    ],
    ['a round thing', disc(150, 100, 70, [200, 40, 30])],
    ['a picture of 8 × 6 pixels', drawn((x, y) => [x * 20, y * 30, 90], 8, 6)],
  ])('is not made for %s', (_name, raster) => {
    expect(proposeCorners(raster)).toBeNull();
  });
});

describe('softness', () => {
  const stripes = (width: number) =>
    drawn(
      (x) => {
        const place = (x % 60) / width;
        const code = Math.round(60 + 120 * Math.min(1, place < 30 / width ? place : (60 - (x % 60)) / width));
        return [code, code, code];
      },
      900,
      600,
    );

  it('is wide edges, not narrow ones; unknown without edges', () => {
    expect(isSoft(stripes(2))).toBe(false);
    expect(isSoft(stripes(20))).toBe(true);
    expect(isSoft(drawn(() => PAINT, 900, 600))).toBeNull();
  });
});
