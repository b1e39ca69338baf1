/** Rasters and clip maps. */
import { describe, expect, it } from 'vitest';
import { clipMap, encodedFromRgba, encodedRaster } from '#server/core/image/raster.ts';

describe('a raster', () => {
  it('refuses samples that do not fit its size', () => {
    expect(() => encodedRaster(2, 2, new Uint8Array(11))).toThrow('needs 12 samples, not 11');
  });

  it('drops the fourth sample of canvas pixels', () => {
    expect([...encodedFromRgba(2, 1, [1, 2, 3, 255, 4, 5, 6, 255]).samples]).toEqual([1, 2, 3, 4, 5, 6]);
  });
});

describe('a clip map', () => {
  it('tells blown (any channel 254 or more) from crushed (all 1 or less)', () => {
    const samples = Uint8Array.of(254, 0, 0, 253, 253, 253, 1, 1, 1, 1, 2, 0);
    expect([...clipMap(encodedRaster(4, 1, samples))]).toEqual([1, 0, 2, 0]);
  });
});
