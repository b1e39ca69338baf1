/** Pixels to values: L* against culori, light mixed as light, shares that add up, cuts that never cross. */
import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { CODE_COUNT, CODES_PER_L, countCodes, valueCodes } from '#server/core/look/value-counts.ts';
import { groupOfCodes, valueGroups, withMovedCut } from '#server/core/look/value-groups.ts';

const toLab = converter('lab65');

describe('value codes', () => {
  it('are the L* of every colour, to half an L*', () => {
    const colours = Array.from({ length: 64 }, (_, at) => [
      (at * 37) % 256,
      (at * 91) % 256,
      (at * 151) % 256,
    ]);
    const codes = valueCodes(encodedRaster(64, 1, Uint8Array.from(colours.flat())), 0);
    colours.forEach(([r = 0, g = 0, b = 0], at) => {
      const { l } = toLab({ mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 });
      expect(Math.abs((codes[at] ?? 0) / CODES_PER_L - l)).toBeLessThanOrEqual(0.5 / CODES_PER_L + 0.01);
    });
  });

  it('mix light when squinting: black and white in equal parts give half the light, not half the code', () => {
    const side = 64;
    const board = Uint8Array.from({ length: side * side * 3 }, (_, at) => {
      const pixel = Math.floor(at / 3);
      return ((pixel % side) + Math.floor(pixel / side)) % 2 === 0 ? 255 : 0;
    });
    const codes = valueCodes(encodedRaster(side, side, board), 0.05);
    // Y = 0.5 is L* 76.07 (ISO/CIE 11664-4); half the code would be L* 53.6.
    expect((codes[(side / 2) * side + side / 2] ?? 0) / CODES_PER_L).toBeCloseTo(76, 0);
  });
});

describe('value groups', () => {
  const counts = new Uint32Array(CODE_COUNT);
  counts[10 * CODES_PER_L] = 1;
  counts[20 * CODES_PER_L] = 3;
  counts[50 * CODES_PER_L] = 4;
  counts[90 * CODES_PER_L] = 2;

  it('have shares of the picture and a value of their own', () => {
    const groups = valueGroups(counts, [33, 67]);
    expect(groups.map(({ share }) => share)).toEqual([0.4, 0.4, 0.2]);
    expect(groups.map(({ lightness }) => lightness)).toEqual([17.5, 50, 90]);
  });

  it('count what lies at a cut with the lighter group', () => {
    expect(valueGroups(counts, [50]).map(({ share }) => share)).toEqual([0.4, 0.6]);
    expect(groupOfCodes([50])[50 * CODES_PER_L]).toBe(1);
    expect(groupOfCodes([50])[50 * CODES_PER_L - 1]).toBe(0);
  });

  it('keep a value in the middle of its part of the scale while nothing is in it', () => {
    expect(valueGroups(counts, [60, 80])[1]).toEqual({ share: 0, lightness: 70 });
    expect(valueGroups(new Uint32Array(CODE_COUNT), [50]).map(({ share }) => share)).toEqual([0, 0]);
  });

  it('never let a cut pass another or leave the scale', () => {
    expect(withMovedCut([30, 60], 0, 80)).toEqual([59, 60]);
    expect(withMovedCut([30, 60], 1, 10)).toEqual([30, 31]);
    expect(withMovedCut([30, 60], 1, 400)).toEqual([30, 99]);
    expect(withMovedCut([30, 60], 0, 41.26)).toEqual([41.5, 60]);
  });

  it('count pixels', () => {
    expect(countCodes(Uint8Array.of(0, 4, 4, 200)).filter((count) => count > 0)).toEqual(
      Uint32Array.of(1, 2, 1),
    );
  });
});
