/** Koschmieder's law, visual range, and the dark channel of He, Sun & Tang (2009). */
import { describe, expect, it } from 'vitest';
import {
  extinctionFromVisualRange,
  OPTICAL_RANGE_CONSTANT,
  seenThroughAir,
  transmission,
  VISUAL_RANGE_CONSTANT,
} from '#server/core/colour/air-law.ts';
import { labFromRgb, lightnessFromLuminance } from '#server/core/colour/lab.ts';
import { codeOfLinear } from '#server/core/colour/transfer.ts';
import { slidingMinimum } from '#server/core/image/sliding-minimum.ts';
import { airChange, changeAir, LEAST_THROUGH } from '#server/core/plan/air/through-air.ts';
import table from './aerial-perspective.json' with { type: 'json' };

const { data } = table;

describe('Koschmieder (1924), with visual range at 2 % (AMS) and optical range at 5 % (WMO-No. 8)', () => {
  it('has the constants 3.912 and 2.996', () => {
    expect(VISUAL_RANGE_CONSTANT).toBeCloseTo(table.constants.k_2pct, 6);
    expect(OPTICAL_RANGE_CONSTANT).toBeCloseTo(table.constants.k_5pct, 6);
    expect(VISUAL_RANGE_CONSTANT / OPTICAL_RANGE_CONSTANT).toBeCloseTo(table.constants.ratio_V_to_MOR, 6);
  });

  it.each(data.visual_range_table)(
    'gives extinction at a visual range of $visual_range_km_2pct km',
    (row) => {
      const beta = extinctionFromVisualRange(row.visual_range_km_2pct);
      expect(beta).toBeCloseTo(row.beta_per_km, 6);
      expect(Math.abs(OPTICAL_RANGE_CONSTANT / beta - row.mor_km_5pct)).toBeLessThanOrEqual(0.0000501);
      expect(transmission(beta, 1)).toBeCloseTo(row.t_1km, 5);
      expect(transmission(beta, row.visual_range_km_2pct / 2)).toBeCloseTo(row.t_half_range, 5);
    },
  );

  it.each(data.contrast_decay_V20km)(
    'lets a black object fade at $d_km km',
    ({ d_km, t, contrast_of_black }) => {
      const through = transmission(extinctionFromVisualRange(20), d_km);
      expect(through).toBeCloseTo(t, 5);
      expect(seenThroughAir(0, 1, through) - 1).toBeCloseTo(contrast_of_black, 5);
    },
  );

  it.each(data.dark_ridge_V20km.rows)('lifts a dark ridge at $d_km km', ({ d_km, Y, L, srgb_grey }) => {
    const { J, A } = data.dark_ridge_V20km;
    const seen = seenThroughAir(J, A, transmission(extinctionFromVisualRange(20), d_km));
    expect(seen).toBeCloseTo(Y, 5);
    expect(Math.abs(lightnessFromLuminance(seen) - L)).toBeLessThanOrEqual(0.000501);
    expect(codeOfLinear(seen)).toBe(srgb_grey);
  });

  it.each(data.bright_object_V20km.rows)(
    'darkens a thing brighter than the horizon at $d_km km',
    ({ d_km, Y, L }) => {
      const { J, A } = data.bright_object_V20km;
      const seen = seenThroughAir(J, A, transmission(extinctionFromVisualRange(20), d_km));
      expect(seen).toBeCloseTo(Y, 5);
      expect(Math.abs(lightnessFromLuminance(seen) - L)).toBeLessThanOrEqual(0.000501);
    },
  );

  it.each(data.coloured_hill.rows)('tints a hill at $d_km km', ({ d_km, linear_rgb, srgb_8bit }) => {
    const { J_linear, A_linear, beta_rgb_per_km } = data.coloured_hill;
    const seen = J_linear.map((thing, at) =>
      seenThroughAir(thing, A_linear[at] as number, transmission(beta_rgb_per_km[at] as number, d_km)),
    );
    seen.forEach((channel, at) => {
      expect(channel).toBeCloseTo(linear_rgb[at] as number, 5);
    });
    expect(seen.map(codeOfLinear)).toEqual(srgb_8bit);
  });
});

describe('visibility and extinction, AMS Glossary and the international visibility code (ITU-R P.1817-1)', () => {
  it.each(table.visibility_code.rows)('bounds $name', ({ from_km, to_km, beta_from, beta_to }) => {
    // Printed to four decimals, the last of them at 50 km from 3.912 rather than from ln 50.
    const bounds: [number | null, number | null][] = [
      [from_km, beta_from],
      [to_km, beta_to],
    ];
    for (const [rangeKm, beta] of bounds) {
      if (rangeKm === null || beta === null) continue;
      const found = extinctionFromVisualRange(rangeKm);
      expect(Math.abs(found - beta) / beta).toBeLessThanOrEqual(0.0006);
    }
  });

  it('loses 17.0 dB a km at a visual range of 1 km, and 13.0 at an optical range of 1 km', () => {
    const lossDb = (extinctionPerKm: number): number => -10 * Math.log10(transmission(extinctionPerKm, 1));
    expect(lossDb(extinctionFromVisualRange(1))).toBeCloseTo(table.constants.db_per_km_at_V_1km_2pct, 4);
    expect(lossDb(OPTICAL_RANGE_CONSTANT)).toBeCloseTo(table.constants.db_per_km_at_MOR_1km, 4);
  });

  it('sees 337 km through pure air at 550 nm', () => {
    const green = table.rayleigh.rows.find(({ nm }) => nm === 550)?.beta_per_km ?? Number.NaN;
    expect(VISUAL_RANGE_CONSTANT / green).toBeCloseTo(337, 0);
  });
});

describe('taking the air out again', () => {
  it.each(data.coloured_hill.rows.slice(0, 5))(
    'gives the hill back from $d_km km',
    ({ d_km, linear_rgb }) => {
      // A grey air law in each channel: beta of green stands for all, and the veil is mixed anew.
      const { J_linear, A_linear, beta_rgb_per_km } = data.coloured_hill;
      const through = transmission(beta_rgb_per_km[1] as number, d_km);
      const air = labFromRgb(A_linear as [number, number, number]);
      const seen = J_linear.map((thing, at) => seenThroughAir(thing, A_linear[at] as number, through));
      expect(seen[1]).toBeCloseTo(linear_rgb[1] as number, 5);
      const found = changeAir(Float32Array.from(seen), airChange({ air, through }, { air, through: 1 }));
      J_linear.forEach((thing, at) => {
        expect(found.linear[at]).toBeCloseTo(thing, 5);
      });
    },
  );

  it('follows J = (I − A) / max(t, 0.1) + A of He, Sun & Tang on the worked example', () => {
    const { image, A, t } = data.dark_channel_example;
    expect(LEAST_THROUGH).toBe(table.dark_channel_prior.t0);
    const air = labFromRgb(A as [number, number, number]);
    image.flat().forEach((text, pixel) => {
      const through = t.flat()[pixel] as number;
      const seen = text.split(' ').map(Number);
      const found = changeAir(Float32Array.from(seen), airChange({ air, through }, { air, through: 1 }));
      seen.forEach((channel, at) => {
        const veil = A[at] as number;
        const thing = (channel - veil) / Math.max(through, table.dark_channel_prior.t0) + veil;
        expect(found.linear[at]).toBeCloseTo(Math.min(1, Math.max(0, thing)), 5);
      });
    });
  });

  it('takes no transmission for smaller than 0.1', () => {
    const air = { L: 80, a: 0, b: 0 };
    const out = (through: number) => airChange({ air, through }, { air, through: 1 });
    expect(out(0.001)).toEqual(out(0.1));
  });
});

describe('dark channel, He, Sun & Tang (2009), worked 8 × 8 example with a 3 × 3 window', () => {
  it('finds the darkest I in every window, clipped at the border', () => {
    const { image, dark, A, t } = data.dark_channel_example;
    const pixels = image.flat().map((text) => text.split(' ').map(Number));
    const minimumOf = (ofPixel: (pixel: number[]) => number): number[] =>
      Array.from(slidingMinimum(Float32Array.from(pixels, ofPixel), 8, 8, 1));
    const plain = minimumOf((pixel) => Math.min(...pixel));
    dark.flat().forEach((figure, at) => {
      expect(plain[at]).toBeCloseTo(figure, 6);
    });
    const overAir = minimumOf((pixel) =>
      Math.min(...pixel.map((channel, at) => channel / (A[at] as number))),
    );
    t.flat().forEach((figure, at) => {
      expect(Math.abs(1 - 0.95 * (overAir[at] as number) - figure)).toBeLessThanOrEqual(0.000051);
    });
  });
});
