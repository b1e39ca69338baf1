/** A frame in a few values: its own pixels alone count, cuts part them, greys are those of the values. */
import Color from 'colorjs.io';
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { VALUE_NUMBERS } from '#server/core/look/value-numbers.ts';
import { drawnValues, plannedValues, valuePicture } from '#server/core/look/value-plan.ts';

const WIDE = 80;
const HIGH = 60;
/** Upright bands of these greys, left to right. */
const GREYS = [20, 70, 120, 170, 230] as const;

function bands() {
  const samples = new Uint8Array(WIDE * HIGH * 3);
  for (let at = 0; at < samples.length; at++) {
    const x = Math.floor(at / 3) % WIDE;
    samples[at] = GREYS[Math.floor((x * GREYS.length) / WIDE)] as number;
  }
  return encodedRaster(WIDE, HIGH, samples);
}
/** L* by a general-purpose colour library. */
const lightness = (grey: number) => new Color(`rgb(${grey} ${grey} ${grey})`).to('lab-d65').l as number;

describe('a value plan', () => {
  it('of the whole gives each band its share and its own lightness', () => {
    const picture = valuePicture(bands(), [0, 0, 1, 1], 0);
    const { groups } = plannedValues(picture, 5, null);
    expect(groups.map(({ share }) => share)).toEqual(GREYS.map(() => expect.closeTo(0.2, 6)));
    groups.forEach((group, at) => {
      // Half an L* is what a code stands for.
      expect(Math.abs(group.lightness - lightness(GREYS[at] as number))).toBeLessThanOrEqual(0.5);
    });
  });

  it('of a frame counts the frame alone', () => {
    const picture = valuePicture(bands(), [0.6, 0.25, 1, 0.75], 0);
    expect([picture.widthPx, picture.heightPx]).toEqual([32, 30]);
    const { groups, cuts } = plannedValues(picture, 2, null);
    expect(groups.map(({ share }) => share)).toEqual([0.5, 0.5]);
    expect(cuts[0]).toBeGreaterThan(lightness(170));
    expect(cuts[0]).toBeLessThan(lightness(230));
  });

  it('follows cuts that were moved, and is drawn in as many greys as it has values', () => {
    const picture = valuePicture(bands(), [0, 0, 1, 1], 0);
    const moved = plannedValues(picture, 2, [lightness(70) - 3]);
    expect(moved.groups.map(({ share }) => share)).toEqual([expect.closeTo(0.2, 6), expect.closeTo(0.8, 6)]);
    for (const count of VALUE_NUMBERS) {
      const drawn = drawnValues(picture, plannedValues(picture, count, null));
      const greys = new Set<number>();
      for (let at = 0; at < drawn.length; at += 4) {
        greys.add(drawn[at] as number);
        expect([drawn[at + 1], drawn[at + 2], drawn[at + 3]]).toEqual([drawn[at], drawn[at], 255]);
      }
      expect(greys.size).toBe(count);
    }
  });

  it('joins small shapes when the eyes are closed further', () => {
    const samples = new Uint8Array(WIDE * HIGH * 3).fill(200);
    for (let y = 30; y < 32; y++)
      for (let x = 40; x < 42; x++) samples.fill(10, (y * WIDE + x) * 3, (y * WIDE + x) * 3 + 3);
    const raster = encodedRaster(WIDE, HIGH, samples);
    const dark = (squint: number) =>
      plannedValues(valuePicture(raster, [0, 0, 1, 1], squint), 2, [40]).groups[0]?.share ?? 0;
    expect(dark(0)).toBeGreaterThan(0);
    expect(dark(0.05)).toBe(0);
  });
});
