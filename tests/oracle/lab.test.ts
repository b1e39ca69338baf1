/** Two other libraries, and libvips, on the same pixels as the engine. */
import Color from 'colorjs.io';
import { converter, differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { difference2000 } from '#server/core/colour/difference.ts';
import { labFromRgb } from '#server/core/colour/lab.ts';
import { oklabFromRgb } from '#server/core/colour/oklab.ts';
import { LINEAR_OF_CODE } from '#server/core/colour/transfer.ts';
import type { LabColour } from '#server/core/contract/setup.ts';
import type { Triple } from '#server/core/geometry/matrix3.ts';
import { labPlanesFromLinear, lightnessOfPixels } from '#server/core/image/light-tables.ts';
import { encodedRaster } from '#server/core/image/raster.ts';

const code = fc.integer({ min: 0, max: 255 });
const colour = fc.tuple(code, code, code);
const linearOf = (rgb: readonly number[]): Triple =>
  rgb.map((at) => LINEAR_OF_CODE[at] as number) as unknown as Triple;

/** Tables in the engine's fast path: at most this from the exact formulas. */
const TABLE = 0.0006;
/** libvips uses rounded constants: at most 0.004 in L*, 0.02 in a* and b*, and its greys are off by 0.011. */
const VIPS_LIGHTNESS = 0.005;
const VIPS_COLOUR = 0.021;

/**
 * Where two hues lie 180° apart the standard itself jumps: the mean hue and the sign of the step turn on the
 * last bit of an angle (Sharma, Wu & Dalal 2005, on discontinuities), so no two programs agree there.
 */
function oppositeHues(p: LabColour, q: LabColour): boolean {
  const across = Math.abs(p.a * q.b - p.b * q.a);
  const along = p.a * q.a + p.b * q.b;
  return along <= 0 && across <= 1e-6 * Math.max(1, -along);
}

describe('one colour', () => {
  const culoriLab = converter('lab65');
  const culoriOklab = converter('oklab');

  it('has the CIELAB and OKLab of culori', () => {
    fc.assert(
      fc.property(colour, (rgb) => {
        const [r, g, b] = rgb.map((at) => at / 255) as [number, number, number];
        const theirs = culoriLab({ mode: 'rgb', r, g, b });
        const ours = labFromRgb(linearOf(rgb));
        expect(Math.hypot(ours.L - theirs.l, ours.a - theirs.a, ours.b - theirs.b)).toBeLessThan(1e-9);
        const ok = culoriOklab({ mode: 'rgb', r, g, b });
        const [L, a, bb] = oklabFromRgb(linearOf(rgb));
        expect(Math.hypot(L - ok.l, a - ok.a, bb - ok.b)).toBeLessThan(1e-6);
      }),
    );
  });

  it('has the CIELAB (D65) of colorjs.io', () => {
    fc.assert(
      fc.property(colour, (rgb) => {
        const theirs = new Color('srgb', rgb.map((at) => at / 255) as [number, number, number]).to(
          'lab-d65',
        ).coords;
        const ours = labFromRgb(linearOf(rgb));
        [ours.L, ours.a, ours.b].forEach((figure, at) => {
          expect(Math.abs(figure - (theirs[at] ?? 0))).toBeLessThan(1e-9);
        });
      }),
    );
  });

  it('differs from another by the CIEDE2000 of culori', () => {
    const theirs = differenceCiede2000();
    const lab = fc.record({
      L: fc.double({ min: 0, max: 100, noNaN: true }),
      a: fc.double({ min: -90, max: 90, noNaN: true }),
      b: fc.double({ min: -90, max: 90, noNaN: true }),
    });
    fc.assert(
      fc.property(lab, lab, (p, q) => {
        fc.pre(!oppositeHues(p, q));
        const expected = theirs(
          { mode: 'lab65', l: p.L, a: p.a, b: p.b },
          { mode: 'lab65', l: q.L, a: q.a, b: q.b },
        );
        // culori rounds hue in another order of steps; the two part by rounding only.
        expect(Math.abs(difference2000(p, q) - expected)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('many pixels', () => {
  const pixels = Uint8Array.from(
    { length: 4096 * 3 },
    (_, at) => (Math.imul(at + 1, 2654435761) >>> 13) % 256,
  );
  const linear = Float32Array.from(pixels, (at) => LINEAR_OF_CODE[at] as number);

  it('have, through the tables, the CIELAB of culori', () => {
    const toLab = converter('lab65');
    const { lightness, a, b } = labPlanesFromLinear(linear);
    const alone = lightnessOfPixels(encodedRaster(4096, 1, pixels));
    for (let pixel = 0; pixel < 4096; pixel++) {
      const [red, green, blue] = pixels.subarray(pixel * 3, pixel * 3 + 3);
      const theirs = toLab({ mode: 'rgb', r: (red ?? 0) / 255, g: (green ?? 0) / 255, b: (blue ?? 0) / 255 });
      expect(Math.abs((lightness[pixel] ?? 0) - theirs.l)).toBeLessThan(TABLE);
      expect(Math.abs((alone[pixel] ?? 0) - theirs.l)).toBeLessThan(TABLE);
      expect(Math.abs((a[pixel] ?? 0) - theirs.a)).toBeLessThan(2 * TABLE);
      expect(Math.abs((b[pixel] ?? 0) - theirs.b)).toBeLessThan(2 * TABLE);
    }
  });

  it('have the CIELAB of libvips within its rounded constants', async () => {
    const raw = await sharp(pixels, { raw: { width: 64, height: 64, channels: 3 } })
      .toColourspace('lab')
      .raw({ depth: 'float' })
      .toBuffer();
    const theirs = new Float32Array(raw.buffer, raw.byteOffset, raw.length / 4);
    const { lightness, a, b } = labPlanesFromLinear(linear);
    for (let pixel = 0; pixel < 4096; pixel++) {
      expect(Math.abs((lightness[pixel] ?? 0) - (theirs[pixel * 3] ?? 0))).toBeLessThan(VIPS_LIGHTNESS);
      expect(Math.abs((a[pixel] ?? 0) - (theirs[pixel * 3 + 1] ?? 0))).toBeLessThan(VIPS_COLOUR);
      expect(Math.abs((b[pixel] ?? 0) - (theirs[pixel * 3 + 2] ?? 0))).toBeLessThan(VIPS_COLOUR);
    }
  });
});
