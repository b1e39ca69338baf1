/** One tap on a card gives a box inside it, on photographs by the rendered camera and on plain pixels. */
import { describe, expect, it } from 'vitest';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { proposeCard } from '#server/core/rectify/propose-card.ts';
import cases from '#tests/fixtures/camera/cases.json' with { type: 'json' };
import { type ShownCase, takenOf } from '#tests/fixtures/camera/shots.ts';

const shown = cases.cases.filter(({ name }) => name === 'fall-off, two cards') as ShownCase[];

describe('a tapped card', () => {
  it.each(shown)('is found in the photo with $name', async (one) => {
    const { shot, photo } = await takenOf(one);
    expect(shot.cards.length).toBeGreaterThan(0);
    for (const { box } of shot.cards) {
      const tapped: FractionPoint = [box[0] + 0.3 * (box[2] - box[0]), box[1] + 0.7 * (box[3] - box[1])];
      const found = proposeCard(photo, tapped);
      if (!found) throw new Error('No card was found.');
      // Inside the true card, but for the pixel on its edge, and most of it.
      expect(found[0]).toBeGreaterThan(box[0] - 0.002);
      expect(found[1]).toBeGreaterThan(box[1] - 0.002);
      expect(found[2]).toBeLessThan(box[2] + 0.002);
      expect(found[3]).toBeLessThan(box[3] + 0.002);
      const share = ((found[2] - found[0]) * (found[3] - found[1])) / ((box[2] - box[0]) * (box[3] - box[1]));
      expect(share).toBeGreaterThan(0.6);
    }
  });

  it('is not found in a pattern, and a wall gives no box larger than a third of the photo', () => {
    const chequered = encodedRaster(
      60,
      60,
      Uint8Array.from({ length: 60 * 60 * 3 }, (_, at) => {
        const pixel = Math.floor(at / 3);
        return ((pixel % 60) + Math.floor(pixel / 60)) % 4 < 2 ? 40 : 200;
      }),
    );
    expect(proposeCard(chequered, [0.5, 0.5])).toBeNull();
    const wall = encodedRaster(200, 100, new Uint8Array(200 * 100 * 3).fill(150));
    const box = proposeCard(wall, [0.02, 0.98]);
    if (!box) throw new Error('Nothing was found.');
    expect(box[2] - box[0]).toBeLessThanOrEqual(0.3);
    expect(box[3] - box[1]).toBeLessThanOrEqual(0.3);
    expect(box[0]).toBeGreaterThanOrEqual(0);
    expect(box[3]).toBeLessThanOrEqual(1);
  });
});
