/**
 * Patches: the mean in linear light against culori, differences against CIEDE2000 of culori, and words that say no
 * more than the photo can tell.
 */
import { converter, differenceCiede2000, formatHex } from 'culori';
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { type Patch, patchAt } from '#server/core/look/patch.ts';
import { patchDifference, strengthWords, temperatureWords } from '#server/core/look/patch-words.ts';
import { jointTrust, type Trust } from '#server/core/look/trust.ts';

const toLab = converter('lab65');
const toLinear = converter('lrgb');

const hexOf = (l: number, a: number, b: number): string => formatHex({ mode: 'lab65', l, a, b });

/** Two colours in stripes of one pixel. */
function stripes(one: readonly number[], other: readonly number[], side = 200) {
  const samples = Uint8Array.from({ length: side * side * 3 }, (_, at) => {
    const column = Math.floor(at / 3) % side;
    return (column % 2 === 0 ? one : other)[at % 3] ?? 0;
  });
  return encodedRaster(side, side, samples);
}

function flat(hex: string): Patch {
  const colour = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const patch = patchAt(stripes(colour, colour, 40), [0.5, 0.5]);
  if (!patch) throw new Error('There is no patch.');
  return patch;
}

describe('a patch', () => {
  it('is the mean of its disc in linear light', () => {
    const patch = patchAt(stripes([250, 20, 40], [10, 200, 90]), [0.5, 0.5], 0.2);
    const [one, other] = [
      toLinear({ mode: 'rgb', r: 250 / 255, g: 20 / 255, b: 40 / 255 }),
      toLinear({ mode: 'rgb', r: 10 / 255, g: 200 / 255, b: 90 / 255 }),
    ];
    const mean = {
      mode: 'lrgb',
      r: (one.r + other.r) / 2,
      g: (one.g + other.g) / 2,
      b: (one.b + other.b) / 2,
    };
    const lab = toLab(mean as { mode: 'lrgb'; r: number; g: number; b: number });
    expect(patch?.lab.L).toBeCloseTo(lab.l, 0);
    expect(patch?.lab.a).toBeCloseTo(lab.a, 0);
    expect(patch?.lab.b).toBeCloseTo(lab.b, 0);
    expect(patch?.clipped).toBe(0);
  });

  it('takes what there is of it at the border, and nothing outside', () => {
    expect(patchAt(stripes([90, 90, 90], [90, 90, 90]), [0, 1])?.hex).toBe('#5a5a5a');
    expect(patchAt(stripes([90, 90, 90], [90, 90, 90]), [1.01, 0.5])).toBeNull();
  });

  it('says how much of it is blown', () => {
    expect(patchAt(stripes([255, 255, 255], [200, 200, 200]), [0.5, 0.5], 0.3)?.clipped).toBeCloseTo(0.5, 1);
  });

  it('has its strength and temperature in words', () => {
    expect([2, 10, 25, 60].map(strengthWords)).toEqual([
      'neutral',
      'greyed',
      'of middling strength',
      'strong',
    ]);
    expect([-12, 0, 12].map(temperatureWords)).toEqual(['cool', 'neither warm nor cool', 'warm']);
  });
});

describe('two patches', () => {
  const source = (hex: string, trust: Trust, pictureId = 'one') => ({ patch: flat(hex), trust, pictureId });

  it('differ in words first, figures after', () => {
    const [one, other] = [hexOf(60, 2, 14), hexOf(50, -2, -14)];
    const { words, figures } = patchDifference(source(one, 'exact'), source(other, 'exact'));
    expect(words).toEqual(['a step darker', 'cooler', 'about as strong']);
    expect(figures?.dE00).toBeCloseTo(differenceCiede2000()(one, other), 2);
    expect(figures?.lightness).toBeCloseTo((toLab(other)?.l ?? 0) - (toLab(one)?.l ?? 0), 2);
  });

  it('are alike inside the least difference that is named', () => {
    expect(patchDifference(source('#808080', 'exact'), source('#828282', 'exact')).words).toEqual([
      'about the same value',
      'about as warm or cool',
      'about as strong',
    ]);
  });

  it('say only which is darker at grade C, and give no figure', () => {
    const { words, figures } = patchDifference(source('#b0b0b0', 'exact'), source('#504030', 'C', 'two'));
    expect(words).toEqual(['darker']);
    expect(figures).toBeNull();
    expect(patchDifference(source('#808080', 'C'), source('#868686', 'C')).words).toEqual([
      'too near in value for this photo to tell',
    ]);
  });

  it('are told apart more finely inside one photo than between two', () => {
    const [one, other] = ['#808080', '#8e8e8e'];
    expect(patchDifference(source(one, 'B'), source(other, 'B')).words[0]).toBe('half a step lighter');
    expect(patchDifference(source(one, 'B'), source(other, 'B', 'two')).words[0]).toBe(
      'about the same value',
    );
  });

  it('are trusted as little as the lesser of the two', () => {
    expect(jointTrust('exact', 'B')).toBe('B');
    expect(jointTrust('C', 'A')).toBe('C');
    expect(jointTrust('exact', 'exact')).toBe('exact');
  });
});
