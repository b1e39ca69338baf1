/** sRGB to XYZ, CIELAB, LCh and OKLab against a table computed from IEC 61966-2-1 and ISO/CIE 11664-4. */
import { describe, expect, it } from 'vitest';
import { adaptBradford } from '#server/core/colour/adaptation.ts';
import { chromaOf, hueDegOf, labFromRgb, labFromXyz, rgbFromLab } from '#server/core/colour/lab.ts';
import { oklabFromRgb, rgbFromOklab } from '#server/core/colour/oklab.ts';
import { WHITE_D65, xyzFromRgb } from '#server/core/colour/spaces.ts';
import { codeOfLinear, decodeSrgb, encodeSrgb } from '#server/core/colour/transfer.ts';
import type { Triple } from '#server/core/geometry/matrix3.ts';
import table from './srgb-lab.json' with { type: 'json' };

/** Half a unit of the last printed digit: XYZ 5 decimals, Lab 4, OKLab 6. */
const XYZ_PRINTED = 0.0000051;
const LAB_PRINTED = 0.0000501;
const OKLAB_PRINTED = 0.00000055;
const PCS_D50: Triple = [0.9642, 1, 0.8249];

const linearOf = (rgb: number[]): Triple => rgb.map((code) => decodeSrgb(code / 255)) as unknown as Triple;

function expectNear(actual: readonly number[], printed: readonly number[], tolerance: number): void {
  actual.forEach((figure, at) => {
    expect(Math.abs(figure - (printed[at] as number))).toBeLessThanOrEqual(tolerance);
  });
}

describe('sRGB (IEC 61966-2-1) to CIE spaces, table of 25 colours', () => {
  it.each(table.data)('gives XYZ of $name', ({ rgb, xyz_d65 }) => {
    expectNear(
      xyzFromRgb(linearOf(rgb)).map((figure) => figure * 100),
      xyz_d65,
      XYZ_PRINTED,
    );
  });

  it.each(table.data)('gives CIELAB (D65) of $name and comes back', ({ rgb, lab_d65 }) => {
    const { L, a, b } = labFromRgb(linearOf(rgb));
    expectNear([L, a, b], lab_d65, LAB_PRINTED);
    expectNear(rgbFromLab({ L, a, b }), linearOf(rgb), 1e-12);
  });

  it.each(table.data.filter(({ lch_d65 }) => lch_d65[2] !== null))(
    'gives chroma and hue of $name',
    ({ rgb, lch_d65 }) => {
      const { a, b } = labFromRgb(linearOf(rgb));
      expect(Math.abs(chromaOf(a, b) - (lch_d65[1] as number))).toBeLessThanOrEqual(LAB_PRINTED);
      expect(Math.abs(hueDegOf(a, b) - (lch_d65[2] as number))).toBeLessThanOrEqual(0.000501);
    },
  );

  it.each(table.data)('gives OKLab (Ottosson 2020) of $name and comes back', ({ rgb, oklab }) => {
    const found = oklabFromRgb(linearOf(rgb));
    expectNear(found, oklab, OKLAB_PRINTED);
    expectNear(rgbFromOklab(found), linearOf(rgb), 1e-7);
  });

  it.each(table.data)('gives CIELAB (D50, ICC.1:2022 with Bradford) of $name', ({ rgb, lab_d50 }) => {
    const { L, a, b } = labFromXyz(adaptBradford(xyzFromRgb(linearOf(rgb)), WHITE_D65, PCS_D50), PCS_D50);
    expectNear([L, a, b], lab_d50, LAB_PRINTED);
  });
});

describe('the sRGB transfer function', () => {
  it('comes back from every 8-bit code', () => {
    for (let code = 0; code < 256; code++) {
      expect(codeOfLinear(decodeSrgb(code / 255))).toBe(code);
      expect(encodeSrgb(decodeSrgb(code / 255)) * 255).toBeCloseTo(code, 9);
    }
  });

  it('clips what lies outside when it makes codes', () => {
    expect([codeOfLinear(-0.2), codeOfLinear(1.7), codeOfLinear(Number.NaN)]).toEqual([0, 255, 0]);
  });
});
