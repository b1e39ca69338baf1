/** The generator behind the calibration: painted pixels carry what was drawn, and the same seed paints the same pair. */
import { describe, expect, test } from 'vitest';
import { type Layout, layoutOf } from '#tests/fixtures/painted/layout.ts';
import { type Painted, paint } from '#tests/fixtures/painted/paint.ts';
import { paintedPair } from '#tests/fixtures/painted/painted-pair.ts';
import { PAINTED } from '#tests/fixtures/painted/parameters.ts';
import { drawFrom } from '#tests/fixtures/pairs/draw.ts';
import { paintFaithfully } from '#tests/fixtures/pairs/painting.ts';
import { percentile, type SampledPicture } from '#tests/fixtures/pairs/sampled.ts';
import { renderReference } from '#tests/fixtures/pairs/scene.ts';
import { plainLab } from '#tests/fixtures/scenes/plain-lab.ts';

/** L* of every pixel of a plane that lies more than three pixels within it, up and down. */
function lightnessOf({ linear, widthPx }: Painted, { labels }: Layout, plane: number): number[] {
  const found: number[] = [];
  for (let at = 3 * widthPx; at < labels.length - 3 * widthPx; at++) {
    if ([-3, 0, 3].some((rows) => labels[at + rows * widthPx] !== plane)) continue;
    const [r, g, b] = [linear[at * 3] ?? 0, linear[at * 3 + 1] ?? 0, linear[at * 3 + 2] ?? 0];
    found.push(plainLab(r, g, b)[0]);
  }
  return found;
}

function pictures(seed: number): { picture: SampledPicture; layout: Layout }[] {
  const draw = drawFrom(PAINTED.seed + seed);
  const reference = renderReference(draw);
  const { widthPx, heightPx } = PAINTED.size;
  const layout = layoutOf(seed, reference.planes.length - 1, widthPx, heightPx);
  return [reference, paintFaithfully(reference, draw)].map((picture) => ({ picture, layout }));
}

describe('painted pixels', () => {
  test.each([1, 2, 3, 4])('of scene %i have the values of the samples they were painted from', (seed) => {
    for (const { picture, layout } of pictures(seed)) {
      const painted = paint(picture, layout, { fine: false, seed });
      picture.planes.forEach((plane, index) => {
        if (index === 0) return;
        const lightness = lightnessOf(painted, layout, index);
        // The rim is cut off unevenly, so light and shade are not met in quite the drawn shares.
        for (const [share, within] of [
          [0.05, 1.5],
          [0.95, 1.5],
        ] as const) {
          const away = percentile(lightness, share) - percentile(plane.L, share);
          expect(Math.abs(away), `${plane.name} at ${share}`).toBeLessThanOrEqual(within);
        }
      });
    }
  });
});

test('the same seed paints, photographs and measures the same pair', async () => {
  const wish = { seed: 3, fault: 'V4', grade: 'B' } as const;
  expect(await paintedPair(wish)).toEqual(await paintedPair(wish));
}, 60_000);
