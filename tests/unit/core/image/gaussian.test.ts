/** The blur against a plain slow Gaussian in double precision. */
import { describe, expect, it } from 'vitest';
import { linearBlocks } from '#server/core/image/blocks.ts';
import { blockVariance, gaussianBlur, gaussianKernel, sigmaLeft } from '#server/core/image/gaussian.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { plainLab } from '#tests/fixtures/scenes/plain-lab.ts';
import { percentileOf, slowGaussian } from '#tests/fixtures/scenes/truth.ts';

/** A repeatable rough texture in 0..255. */
function rough(widthPx: number, heightPx: number): Uint8Array {
  let state = 12345;
  return Uint8Array.from({ length: widthPx * heightPx * 3 }, (_, at) => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    const wave = 40 * Math.sin(at / 97) + 30 * Math.sin(at / 1511);
    return Math.min(255, Math.max(0, 120 + wave + ((state >>> 16) % 100) - 50));
  });
}

describe('the Gaussian', () => {
  it('sums to 1', () => {
    const [middle, ...aside] = gaussianKernel(1.7);
    expect((middle as number) + 2 * aside.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  it.each([
    [31, 17, 1.3],
    [40, 3, 2.6],
    [1, 12, 0.5],
  ])('blurs a %d × %d grid as a plain one does, border mirrored', (columns, rows, sigma) => {
    const samples = Float32Array.from({ length: columns * rows }, (_, at) => Math.sin(at * 7.7) + 1);
    const found = gaussianBlur({ columns, rows, channels: 1, samples }, sigma);
    const plain = slowGaussian(Float64Array.from(samples), columns, rows, sigma);
    found.forEach((value, at) => {
      expect(Math.abs(value - (plain[at] as number))).toBeLessThan(0.002);
    });
  });

  it('keeps three channels apart', () => {
    const samples = Float32Array.from({ length: 20 * 10 * 3 }, (_, at) => (at % 3 === 1 ? 1 : 0));
    const found = gaussianBlur({ columns: 20, rows: 10, channels: 3, samples }, 1);
    expect(found.every((value, at) => Math.abs(value - (at % 3 === 1 ? 1 : 0)) < 1e-6)).toBe(true);
  });

  it.each([
    [700, 500],
    [1501, 401],
    [2048, 300],
  ])(
    'gives percentiles of L* within 0.1 of a true Gaussian on rough %d × %d pixels',
    (widthPx, heightPx) => {
      const raster = encodedRaster(widthPx, heightPx, rough(widthPx, heightPx));
      const pixels = linearBlocks(raster, 1).samples;
      const sigma = 0.0015 * Math.max(widthPx, heightPx);
      const [red, green, blue] = [0, 1, 2].map((channel) =>
        slowGaussian(
          Float64Array.from(
            { length: widthPx * heightPx },
            (_, pixel) => pixels[pixel * 3 + channel] as number,
          ),
          widthPx,
          heightPx,
          sigma,
        ),
      ) as [Float64Array, Float64Array, Float64Array];
      const plain = Array.from(red, (value, at) => plainLab(value, green[at] as number, blue[at] as number));
      const { lab } = prepareMeasurable({ raster });
      for (const fraction of [0.05, 0.5, 0.95]) {
        for (const [channel, found] of [lab.lightness, lab.a, lab.b].entries()) {
          const truth = percentileOf(
            plain.map((colour) => colour[channel] as number),
            fraction,
          );
          expect(Math.abs(percentileOf(found, fraction) - truth)).toBeLessThan(0.1);
        }
      }
    },
    60_000,
  );

  it('blurs a smaller copy by what making it smaller has not blurred yet', () => {
    expect(sigmaLeft(3, 0, 1)).toBe(3);
    expect(sigmaLeft(3, blockVariance(4), 4)).toBeCloseTo(Math.sqrt(9 - 1.25) / 4, 12);
  });
});
