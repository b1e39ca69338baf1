/** The quick look at four pixels at a time finds what looking at each one does. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CLIP } from '#server/core/image/raster.ts';
import { clipOnGrid } from '#server/imaging/clip-map.ts';

/** Codes near both ends, where the quick look must not err, and some between. */
const code = fc.oneof(
  fc.constantFrom(0, 1, 2, 3, 127, 128, 252, 253, 254, 255),
  fc.integer({ min: 0, max: 255 }),
);

function plainly(samples: Uint8Array): number[] {
  return Array.from({ length: samples.length / 3 }, (_, pixel) => {
    const [red = 0, green = 0, blue = 0] = samples.subarray(pixel * 3, pixel * 3 + 3);
    if (Math.max(red, green, blue) >= 254) return CLIP.blown;
    return Math.max(red, green, blue) <= 1 ? CLIP.crushed : CLIP.none;
  });
}

test('every pixel of any picture is told as by looking at it alone, wherever its bytes begin', () => {
  const pictures = fc.record({
    width: fc.integer({ min: 1, max: 9 }),
    height: fc.integer({ min: 1, max: 9 }),
    offset: fc.integer({ min: 0, max: 3 }),
    codes: fc.array(code, { minLength: 243, maxLength: 243 }),
  });
  fc.assert(
    fc.property(pictures, ({ width, height, offset, codes }) => {
      const length = width * height * 3;
      const samples = new Uint8Array(new ArrayBuffer(length + offset), offset, length);
      samples.set(codes.slice(0, length));
      const { map, shares } = clipOnGrid({ width, height, samples }, width, height);
      const wanted = plainly(samples);
      expect([...map]).toEqual(wanted);
      const shareOf = (kind: number) => wanted.filter((value) => value === kind).length / wanted.length;
      expect(shares.high).toBeCloseTo(shareOf(CLIP.blown), 12);
      expect(shares.low).toBeCloseTo(shareOf(CLIP.crushed), 12);
    }),
    { numRuns: 400 },
  );
});

test('a plate pixel is clipped when at least half of what it covers is', () => {
  const samples = new Uint8Array(4 * 4 * 3).fill(128);
  // Two of the four pixels under the first plate pixel, one of those under the second.
  for (const pixel of [0, 5, 2]) samples.fill(255, pixel * 3, pixel * 3 + 3);
  const { map } = clipOnGrid({ width: 4, height: 4, samples }, 2, 2);
  expect([...map]).toEqual([CLIP.blown, CLIP.none, CLIP.none, CLIP.none]);
});
