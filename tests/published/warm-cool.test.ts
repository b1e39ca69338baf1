/** Warm–cool and heavy–light against Ou, Luo, Woodcock & Wright (2004), coefficients from public reproductions. */
import { describe, expect, it } from 'vitest';
import { heaviness, warmCoolKernel, warmCoolScale } from '#server/core/colour/temperature.ts';
import table from './warm-cool-and-weight.json' with { type: 'json' };

/** Printed to 4 decimals, from Lab printed to 4. */
const PRINTED = 0.000061;

describe('Ou, Luo, Woodcock & Wright (2004)', () => {
  it.each(table.data)('gives warm–cool and heavy–light of $name', ({ lab, warm_cool, heavy_light }) => {
    const [L, a, b] = lab as [number, number, number];
    expect(Math.abs(warmCoolScale(a, b) - warm_cool)).toBeLessThanOrEqual(PRINTED);
    expect(Math.abs(heaviness(L) - heavy_light)).toBeLessThanOrEqual(PRINTED);
  });

  it.each(table.synthetic)('gives warm–cool at L $L, C $C, h $h', ({ L, C, h, warm_cool, heavy_light }) => {
    const angle = (h * Math.PI) / 180;
    expect(Math.abs(warmCoolScale(C * Math.cos(angle), C * Math.sin(angle)) - warm_cool)).toBeLessThanOrEqual(
      PRINTED,
    );
    expect(Math.abs(heaviness(L) - heavy_light)).toBeLessThanOrEqual(PRINTED);
  });

  it('has a kernel that is 0 for a neutral, + for orange and − for blue', () => {
    expect(warmCoolKernel(0, 0)).toBe(0);
    expect(warmCoolKernel(20, 30)).toBeGreaterThan(30);
    expect(warmCoolKernel(-5, -30)).toBeLessThan(-25);
  });
});
