/** Munsell value against ASTM D1535, and Bradford adaptation against the 1943 renotation sample. */
import { describe, expect, it } from 'vitest';
import { adaptBradford } from '#server/core/colour/adaptation.ts';
import { labFromXyz, lightnessFromLuminance, luminanceFromLightness } from '#server/core/colour/lab.ts';
import {
  luminancePercentFromMunsell,
  munsellFromLuminancePercent,
} from '#server/core/colour/munsell-value.ts';
import { WHITE_D65, whiteFromChromaticity } from '#server/core/colour/spaces.ts';
import type { Triple } from '#server/core/geometry/matrix3.ts';
import renotation from './munsell-renotation-sample.json' with { type: 'json' };
import table from './munsell-value.json' with { type: 'json' };

const Y_PRINTED = 0.0000051;
const L_PRINTED = 0.0000501;
/** Values are printed to 4 decimals. */
const V_PRINTED = 0.0000501;
/** Chips are printed to 3 decimals of Lab, from Y printed to 4. */
const CHIP_PRINTED = 0.0011;
const ILLUMINANT_C = whiteFromChromaticity(0.31006, 0.31616);

describe('Munsell value, ASTM D1535', () => {
  it.each(table.data)('gives Y and L* of value $V', ({ V, Y, L }) => {
    const luminance = luminancePercentFromMunsell(V);
    expect(Math.abs(luminance - Y)).toBeLessThanOrEqual(Y_PRINTED);
    expect(Math.abs(lightnessFromLuminance(luminance / 100) - L)).toBeLessThanOrEqual(L_PRINTED);
    expect(Math.abs(munsellFromLuminancePercent(luminance) - V)).toBeLessThanOrEqual(1e-9);
  });

  it.each(table.inverse_from_L.rows)('gives the value of L* %d', (L, Y, V) => {
    const luminance = luminanceFromLightness(L as number) * 100;
    expect(Math.abs(luminance - (Y as number))).toBeLessThanOrEqual(Y_PRINTED);
    expect(Math.abs(munsellFromLuminancePercent(luminance) - (V as number))).toBeLessThanOrEqual(V_PRINTED);
  });

  it.each(table.inverse_from_srgb_grey.rows)('gives the value of the 8-bit grey %d', (_grey, Y, _L, V) => {
    // Y is printed to 5 decimals and the curve is steep near black, so a digit more is allowed.
    expect(Math.abs(munsellFromLuminancePercent(Y as number) - (V as number))).toBeLessThanOrEqual(
      2 * V_PRINTED,
    );
  });

  it('holds at the ends', () => {
    expect([munsellFromLuminancePercent(-1), munsellFromLuminancePercent(101)]).toEqual([0, 10]);
  });
});

describe('Munsell renotation (Newhall, Nickerson & Judd 1943), illuminant C to D65 by Bradford', () => {
  it.each(renotation.data)('gives CIELAB of chip $chip', ({ x, y, Y_astm, lab_C, lab_d65_bradford }) => {
    const [X, , Z] = whiteFromChromaticity(x, y);
    const xyz = [X, 1, Z].map((figure) => (figure * Y_astm) / 100) as unknown as Triple;
    const underC = labFromXyz(xyz, ILLUMINANT_C);
    const underD65 = labFromXyz(adaptBradford(xyz, ILLUMINANT_C, WHITE_D65));
    [underC.L, underC.a, underC.b].forEach((figure, at) => {
      expect(Math.abs(figure - (lab_C[at] as number))).toBeLessThanOrEqual(CHIP_PRINTED);
    });
    [underD65.L, underD65.a, underD65.b].forEach((figure, at) => {
      expect(Math.abs(figure - (lab_d65_bradford[at] as number))).toBeLessThanOrEqual(CHIP_PRINTED);
    });
  });
});
