/** A painting of fewer than 300 pixels is measured, and one sentence says so. */
import { describe, expect, it } from 'vitest';
import { photographed } from '#server/core/capture/photographed.ts';
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import { encodedRaster } from '#server/core/image/raster.ts';

function notesOf(widthPx: number, heightPx: number, photo: PhotoCorrection, fullSidePx?: number) {
  const raster = encodedRaster(widthPx, heightPx, new Uint8Array(widthPx * heightPx * 3).fill(120));
  return photographed({ raster }, photo, fullSidePx).facts?.notes ?? [];
}

const HALF: NonNullable<PhotoCorrection['corners']> = [
  [0.25, 0.25],
  [0.75, 0.25],
  [0.75, 0.75],
  [0.25, 0.75],
];

describe('a painting small in its photo', () => {
  it('is named with its pixels under 300, and not from 300 on', () => {
    expect(notesOf(400, 299, {})).toEqual([expect.stringMatching(/^The painting is only 299 pixels/)]);
    expect(notesOf(400, 300, {})).toEqual([]);
  });

  it('is asked for from nearer only where it does not fill the photo already', () => {
    expect(notesOf(400, 299, {})).toEqual([expect.stringMatching(/Post a larger photo of it\.$/)]);
    expect(notesOf(500, 400, { corners: HALF })).toEqual([expect.stringMatching(/Step closer/)]);
  });

  it('counts inside its corners and in the photo as it was taken', () => {
    expect(notesOf(500, 400, { corners: HALF })).toEqual([expect.stringContaining('only 200 pixels')]);
    expect(notesOf(500, 400, { corners: HALF }, 1000)).toEqual([]);
  });
});
