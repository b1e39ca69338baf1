/** A painting in a few values: as many greys as asked for, each the mean lightness of what it stands for. */
import { converter } from 'culori';
import { describe, expect, test } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { valueMap } from '#server/core/wall/value-map.ts';

const WIDTH = 120;
const ROWS = 30;

/** Level bands of neutral greys. */
function bands(codes: readonly number[]) {
  const samples = new Uint8Array(WIDTH * ROWS * codes.length * 3);
  for (const [at, code] of codes.entries()) {
    samples.fill(code, at * WIDTH * ROWS * 3, (at + 1) * WIDTH * ROWS * 3);
  }
  return encodedRaster(WIDTH, ROWS * codes.length, samples);
}

const lightness = converter('lab65');
const lightnessOf = (code: number) =>
  lightness({ mode: 'rgb', r: code / 255, g: code / 255, b: code / 255 }).l;

describe('a painting in a few values', () => {
  test.each([2, 3, 4, 5] as const)('in %s values has so many neutral greys', (count) => {
    const { samples } = valueMap(bands([10, 40, 60, 90, 120, 150, 180, 210, 240]), count);
    const isGrey = (_: number, at: number) => samples[at] === samples[at - (at % 3)];
    expect(samples.every(isGrey)).toBe(true);
    expect(new Set(samples).size).toBe(count);
  });

  test('two near values become one, at their mean lightness by culori', () => {
    const { samples } = valueMap(bands([40, 60, 200]), 2);
    const dark = lightnessOf(samples[0] as number);
    // Edges are softened a little, so the mean may lie a little lighter.
    expect(Math.abs(dark - (lightnessOf(40) + lightnessOf(60)) / 2)).toBeLessThan(2);
    expect(Math.abs(lightnessOf(samples.at(-1) as number) - lightnessOf(200))).toBeLessThan(2);
  });
});
