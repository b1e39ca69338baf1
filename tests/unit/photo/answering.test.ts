/** The photo put right in the browser: every kind of bad input comes back as one sentence, beside or instead of it. */
import { describe, expect, test } from 'vitest';
import { putRight } from '#app/_photo/answering.ts';
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';

const SIDE = 400;
/** A grey photo with one patch of a colour in its upper left and one in its lower right tenth. */
function photoWith(upper: readonly number[], lower: readonly number[]): EncodedRaster {
  const samples = new Uint8Array(SIDE * SIDE * 3);
  for (let pixel = 0; pixel < SIDE * SIDE; pixel++) {
    const [x, y] = [(pixel % SIDE) / SIDE, Math.floor(pixel / SIDE) / SIDE];
    const code = x < 0.1 && y < 0.1 ? upper : x > 0.9 && y > 0.9 ? lower : [120, 118, 116];
    samples.set(code, pixel * 3);
  }
  return encodedRaster(SIDE, SIDE, samples);
}
const UPPER: [number, number, number, number] = [0.02, 0.02, 0.08, 0.08];
const LOWER: [number, number, number, number] = [0.92, 0.92, 0.98, 0.98];

/** What is said of a photo of 1,200 pixels. */
function saidOf(raster: EncodedRaster, photo: PhotoCorrection, fullSidePx = 1200): readonly string[] {
  const righted = putRight(raster, { photo, lightAsCame: false, fullSidePx });
  return typeof righted === 'string' ? [righted] : righted.notes;
}

const GREY = [118, 118, 118];
const corners: NonNullable<PhotoCorrection['corners']> = [
  [0.2, 0.2],
  [0.8, 0.2],
  [0.8, 0.8],
  [0.2, 0.8],
];
const [a, b, c, d] = corners;

describe('a photo put right in the browser', () => {
  test('says nothing of a good card and good corners', () => {
    const photo = { corners, cards: [{ box: UPPER, Y: 0.18 }] };
    expect(saidOf(photoWith(GREY, GREY), photo)).toEqual([]);
  });

  test('is refused with one sentence when its corners cross or make a sliver', () => {
    const raster = photoWith(GREY, GREY);
    expect(saidOf(raster, { corners: [a, b, d, c] })).toEqual([
      expect.stringMatching(/^The 4 corners cross/),
    ]);
    const sliver: typeof corners = [a, [0.5, 0.2001], [0.8, 0.2], [0.5, 0.8]];
    expect(saidOf(raster, { corners: sliver })).toEqual([expect.stringMatching(/sliver|dent/)]);
  });

  test('names the share of a card that is clipped, and a card that is not neutral', () => {
    const raster = photoWith([255, 255, 255], [40, 160, 50]);
    const cards = [
      { box: UPPER, Y: 0.9 },
      { box: LOWER, Y: 0.18 },
    ];
    expect(saidOf(raster, { cards })).toEqual([
      expect.stringContaining('Card 1 is left out: 100 % of it is clipped'),
      expect.stringMatching(/^Card 2 is left out: .*no neutral card/),
    ]);
  });

  test('says by how much two cards disagree', () => {
    const cards = [
      { box: UPPER, Y: 0.18 },
      { box: LOWER, Y: 0.9 },
    ];
    expect(saidOf(photoWith(GREY, GREY), { cards })).toEqual([
      expect.stringMatching(/^Cards 1 and 2 disagree: one would stand in 5\.0 times the light/),
    ]);
  });

  test('says how many pixels the painting has when they are too few', () => {
    const raster = photoWith(GREY, GREY);
    expect(saidOf(raster, { corners }, 400)).toEqual([expect.stringContaining('only 240 pixels')]);
  });

  test('keeps the light as it came when that is asked for', () => {
    const wish = { photo: { cards: [{ box: UPPER, Y: 0.5 }] }, fullSidePx: 1200 };
    const raster = photoWith(GREY, GREY);
    const middleOf = (lightAsCame: boolean) => {
      const righted = putRight(raster, { ...wish, lightAsCame });
      if (typeof righted === 'string') throw new Error(righted);
      expect(righted.lit).toBe(true);
      return righted.raster.samples[(SIDE / 2) * SIDE * 3 + (SIDE / 2) * 3];
    };
    expect(middleOf(true)).toBe(120);
    expect(middleOf(false)).toBeGreaterThan(150);
  });
});
