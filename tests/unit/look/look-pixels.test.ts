/**
 * What the worker of the looking tools answers: squints mix light, shares are those of the squared painting, cards
 * make patches neutral.
 */
import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { litRaster, lookPixels, squinted } from '#app/_look/look-pixels.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { patchAt } from '#server/core/look/patch.ts';
import { CODES_PER_L } from '#server/core/look/value-counts.ts';
import { valueGroups } from '#server/core/look/value-groups.ts';

const toLab = converter('lab65');

/** A raster whose pixel at (x, y), both 0..1, has the given codes. */
function drawn(
  widthPx: number,
  heightPx: number,
  colourAt: (x: number, y: number) => readonly [number, number, number],
): EncodedRaster {
  const samples = new Uint8Array(widthPx * heightPx * 3);
  for (let at = 0; at < widthPx * heightPx; at++) {
    const [x, y] = [((at % widthPx) + 0.5) / widthPx, (Math.floor(at / widthPx) + 0.5) / heightPx];
    samples.set(colourAt(x, y), at * 3);
  }
  return encodedRaster(widthPx, heightPx, samples);
}

describe('squinting', () => {
  it('mixes light: fine black and white give the grey of half the light', () => {
    let at = 0;
    const board = drawn(120, 80, () => (at++ % 2 === 0 ? [255, 255, 255] : [0, 0, 0]));
    const soft = squinted(board, 0.02);
    const middle = (40 * soft.widthPx) / 2 + soft.widthPx / 2;
    // sRGB code of half the light: 188 (IEC 61966-2-1); mixing codes would give 128.
    expect(Math.abs((soft.samples[Math.floor(middle) * 3] ?? 0) - 188)).toBeLessThanOrEqual(1);
    expect([soft.widthPx, soft.heightPx]).toEqual([60, 40]);
  });

  it('leaves a flat picture as it is, up to its border', () => {
    const soft = squinted(
      drawn(64, 48, () => [30, 90, 170]),
      0.03,
    );
    expect(
      new Set(
        Array.from({ length: soft.samples.length / 3 }, (_, at) =>
          soft.samples.slice(at * 3, at * 3 + 3).join(),
        ),
      ),
    ).toEqual(new Set(['30,90,170']));
  });
});

describe('values of a photo of a painting', () => {
  it('count the painting inside its corners and nothing round it', () => {
    // A painting, half dark and half light, on a wall of another value.
    const photo = drawn(300, 200, (x, y) => {
      const inside = x > 0.2 && x < 0.8 && y > 0.2 && y < 0.8;
      if (!inside) return [120, 120, 120];
      return x < 0.5 ? [40, 40, 40] : [220, 220, 220];
    });
    const corners: [[number, number], [number, number], [number, number], [number, number]] = [
      [0.2, 0.2],
      [0.8, 0.2],
      [0.8, 0.8],
      [0.2, 0.8],
    ];
    const whole = lookPixels(litRaster(photo, { photo: {}, squared: false }), 0);
    const squared = lookPixels(litRaster(photo, { photo: { corners }, squared: true }), 0);
    const cuts = [30, 70];
    expect(valueGroups(whole.counts, cuts)[1]?.share).toBeCloseTo(0.64, 1);
    const [dark, middle, light] = valueGroups(squared.counts, cuts).map(({ share }) => share);
    expect(dark).toBeCloseTo(0.5, 1);
    expect(middle).toBeLessThan(0.02);
    expect(light).toBeCloseTo(0.5, 1);
    expect(squared.codes).toHaveLength(180 * 120);
    // Seen as photographed, it keeps the frame of the photo.
    const framed = lookPixels(litRaster(photo, { photo: { corners }, squared: false }), 0);
    expect(framed.codes).toHaveLength(300 * 200);
  });

  it('are taken in the light of the card, in the frame of the photo', () => {
    // A grey card under a yellow lamp, at the left; the rest is the same grey.
    const photo = drawn(300, 200, () => [150, 125, 80]);
    const { lit, codes } = lookPixels(
      litRaster(photo, { photo: { cards: [{ box: [0.02, 0.3, 0.2, 0.7], Y: 0.18 }] }, squared: true }),
      0,
    );
    const patch = patchAt(lit, [0.7, 0.5]);
    const grey = toLab({ mode: 'xyz65', x: 0.18 * 0.95047, y: 0.18, z: 0.18 * 1.08883 });
    expect(patch?.lab.L).toBeCloseTo(grey.l, 0);
    expect(patch?.chroma).toBeLessThan(1);
    expect((codes[50_000] ?? 0) / CODES_PER_L).toBeCloseTo(grey.l, 0);
    expect([lit.widthPx, lit.heightPx]).toEqual([300, 200]);
  });

  it('are those of the photo as it is while its corners cannot be carried out', () => {
    const photo = drawn(60, 40, () => [99, 99, 99]);
    const crossed: [[number, number], [number, number], [number, number], [number, number]] = [
      [0.1, 0.1],
      [0.9, 0.9],
      [0.9, 0.1],
      [0.1, 0.9],
    ];
    expect(lookPixels(litRaster(photo, { photo: { corners: crossed }, squared: true }), 0).lit).toBe(photo);
  });
});
