/** Carrying what cannot be carried: whole sentences, planes left out, never an outline that cannot be filled. */
import { describe, expect, it } from 'vitest';
import type { Outline } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { Carrying } from '#server/core/planes/carry/carry-planes.ts';
import type { Carried } from '#server/core/planes/carry/lay-planes.ts';
import { checkPlacement, type Placement, SAME_PART } from '#server/core/planes/carry/placement.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';

const WHOLE: Outline = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];
const below = (y: number): Outline => [
  [0, y],
  [0.5, y - 0.05],
  [1, y],
  [1, 1],
  [0, 1],
];
const PLANES = [
  { id: 'a', name: 'sky', outline: WHOLE },
  { id: 'b', name: 'hills', outline: below(0.4) },
  { id: 'c', name: 'meadow', outline: below(0.8) },
];

/** A picture by a formula for its grey. */
function picture(grey: (x: number, y: number) => number, widthPx = 160, heightPx = 120): EncodedRaster {
  const samples = new Uint8Array(widthPx * heightPx * 3);
  for (let pixel = 0; pixel < widthPx * heightPx; pixel++) {
    const value = grey((pixel % widthPx) / widthPx, Math.floor(pixel / widthPx) / heightPx);
    samples.fill(Math.round(value), pixel * 3, pixel * 3 + 3);
  }
  return encodedRaster(widthPx, heightPx, samples);
}

const bands = picture((_x, y) => (y < 0.4 ? 210 : y < 0.8 ? 120 : 70));
const flat = picture(() => 128);
let state = 7;
const noise = picture(() => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state >>> 24;
});

function sound(carried: Carried): void {
  for (const { id, outline, unsure } of carried.planes) {
    checkOutline(id, [...outline]);
    expect(unsure).toHaveLength(outline.length);
    for (const [x, y] of outline) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
      expect(Math.max(x, y)).toBeLessThanOrEqual(1);
    }
  }
  for (const note of carried.notes) expect(note).toMatch(/^[A-Z'‘].*\.$/);
}

function carriedWhole(first: EncodedRaster, painting: EncodedRaster) {
  const carrying = new Carrying(first, painting, PLANES);
  const found = carrying.whole();
  return { found, carried: carrying.fitted(found.placement, carrying.moves(found.placement)) };
}

describe('pictures in which nothing can be found', () => {
  it('a flat painting is said to be one even tone, and the planes lie as they lay', () => {
    const { found, carried } = carriedWhole(bands, flat);
    expect(found).toMatchObject({ placement: SAME_PART });
    expect(found.trouble).toMatch(/one even tone .* 0\.0 L\*/);
    sound(carried);
    expect(carried.planes).toHaveLength(3);
  });

  it.each([
    ['a painting of noise', bands, noise],
    ['a reference of noise', noise, bands],
    ['a flat reference', flat, bands],
    ['two flat pictures', flat, flat],
    ['a painting of 4 by 3 pixels', bands, picture((_x, y) => y * 200, 4, 3)],
    ['one row of pixels', bands, picture((x) => x * 200, 160, 1)],
  ])('%s still gives outlines that can be filled', (_name, first, painting) => {
    sound(carriedWhole(first, painting).carried);
  });

  it('ridges that find no edge are unsure', () => {
    const { carried } = carriedWhole(bands, noise);
    const hills = carried.planes.find(({ id }) => id === 'b');
    expect(hills === undefined || hills.unsure.some(Boolean)).toBe(true);
    expect(carried.planes.length < 3 || carried.notes.some((note) => /Hardly any ridge/.test(note))).toBe(
      true,
    );
  });
});

describe('places that cannot be', () => {
  const carrying = new Carrying(bands, bands, PLANES);

  it('planes outside the painting are left out, each with a sentence that names it', () => {
    // The painting shows the upper third only.
    const upper: Placement = { scaleX: 1, scaleY: 3, shiftX: 0, shiftY: 0 };
    for (const carried of [carrying.laid(upper, new Map()), carrying.fitted(upper, new Map())]) {
      expect(carried.planes.map(({ id }) => id)).toEqual(['a']);
      expect(carried.notes).toEqual([
        "'hills' lies outside what the painting shows, so it is left out.",
        "'meadow' lies outside what the painting shows, so it is left out.",
      ]);
    }
  });

  it.each([
    ['wholly beside the painting', { ...SAME_PART, shiftX: 1.5 }, /outside the painting/],
    ['far too large', { ...SAME_PART, scaleX: 40 }, /40\.00 times as wide/],
    ['without size', { ...SAME_PART, scaleY: 0 }, /0\.00 times as high/],
    ['turned over', { ...SAME_PART, scaleX: -1 }, /-1\.00 times as wide/],
    ['nowhere', { ...SAME_PART, shiftY: Number.NaN }, /times as wide/],
  ])('%s is refused', (_name, placement, sentence) => {
    expect(() => checkPlacement(placement)).toThrow(sentence);
    expect(() => carrying.fitted(placement, new Map())).toThrow(sentence);
    expect(() => carrying.laid(placement, new Map())).toThrow(sentence);
  });

  it('an outline that encloses nothing is refused by the name of its plane', () => {
    const line: Outline = [
      [0, 0.5],
      [0.5, 0.5],
      [1, 0.5],
    ];
    expect(() => new Carrying(bands, bands, [{ id: 'a', name: 'far ridge', outline: line }])).toThrow(
      /'far ridge' .* no area/,
    );
  });

  it('a plane moved off the painting by itself is left out', () => {
    const away = new Map([
      ['c', { about: [0.5, 0.9] as [number, number], scale: 1, shiftX: 0, shiftY: 0.5 }],
    ]);
    const carried = carrying.fitted(SAME_PART, away);
    expect(carried.planes.map(({ id }) => id)).toEqual(['a', 'b']);
    sound(carried);
  });
});

describe('pictures that are the same', () => {
  it('get the planes where they lie', () => {
    const { found, carried } = carriedWhole(bands, bands);
    expect(found.trouble).toBeNull();
    expect(carried.notes).toEqual([]);
    const ridge = carried.planes.find(({ id }) => id === 'c')?.outline ?? [];
    const inner = ridge.filter(([x, y]) => x > 0.02 && x < 0.98 && y < 0.99);
    expect(inner.length).toBeGreaterThan(0);
    for (const [x, y] of inner) expect(Math.abs(y - 0.8 + 0.1 * Math.min(x, 1 - x))).toBeLessThan(0.03);
  });
});
