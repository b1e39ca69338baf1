/** Balance: mirrored, symmetric and composed pictures whose moments are known from how they were drawn. */
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { heavierSide, leverOf, weighPicture } from '#server/core/plan/weight/balance.ts';
import {
  box,
  type Canvas,
  canvasOf,
  disc,
  encoded,
  type Lab,
  lay,
  mirrored,
} from '#tests/fixtures/plan/draw.ts';
import { numbers } from '#tests/fixtures/plan/numbers.ts';
import { decodeTraced, tracedPictures } from '#tests/fixtures/traced/traced.ts';

const weighed = ({ widthPx, heightPx }: Canvas, samples: Uint8Array) =>
  weighPicture(encodedRaster(widthPx, heightPx, samples));

/** Frozen before the patches were sought; seeds 6100 to 6123. */
const COMPOSED = Array.from({ length: 24 }, (_, at) => 6100 + at);
const SIZES = [
  [640, 480],
  [601, 403],
  [300, 420],
  [900, 450],
] as const;

/** Two to five patches, apart from one another, on a plain ground; the lever by their definition. */
function composed(seed: number): { canvas: Canvas; lever: number } {
  const { between, whole, pick, chance } = numbers(seed);
  const [widthPx, heightPx] = pick(SIZES);
  const ground: Lab = [between(55, 75), between(-6, 6), between(-6, 10)];
  const canvas = canvasOf(widthPx, heightPx, ground);
  const count = whole(2, 5);
  let [moments, weights] = [0, 0];
  for (let at = 0; at < count; at++) {
    // Each has its own column of the picture, so that none lies within another's band.
    const wide = widthPx / count;
    const [rx, ry] = [wide * between(0.12, 0.38), heightPx * between(0.06, 0.3)];
    const [cx, cy] = [wide * (at + 0.5), heightPx * between(0.35, 0.65)];
    const colour: Lab = [between(15, 45), between(-20, 25), between(-20, 30)];
    const inside = chance(0.5) ? disc(cx, cy, rx, ry) : box(cx - rx, cy - ry, cx + rx, cy + ry);
    const { pixels, sumX } = lay(canvas, inside, colour);
    const weight = pixels * Math.abs(colour[0] - ground[0]) * (1 + Math.hypot(colour[1], colour[2]) / 30);
    weights += weight;
    moments += weight * ((2 * sumX) / pixels / widthPx - 1);
  }
  return { canvas, lever: moments / weights };
}

describe('the lever', () => {
  it.each(COMPOSED)('of patches with known moments is theirs within 2 % (seed %i)', (seed) => {
    const { canvas, lever } = composed(seed);
    const found = weighed(canvas, encoded(canvas)).balance.lever;
    // 2 % of the arm from the middle to the side.
    expect(Math.abs(found - lever)).toBeLessThanOrEqual(0.02);
  });

  it('of a plain ground is 0, and neither side is the heavier', () => {
    const canvas = canvasOf(400, 300, [60, 5, 5]);
    const { balance } = weighed(canvas, encoded(canvas));
    expect(balance).toMatchObject({ lever: 0, heavier: 'even' });
    expect(leverOf([])).toBe(0);
  });

  it('of the ground does not count: one patch stands for itself alone', () => {
    const canvas = canvasOf(500, 300, [70, 0, 0]);
    lay(canvas, disc(400, 150, 40, 40), [30, 0, 0]);
    const { balance, patches } = weighed(canvas, encoded(canvas));
    expect(balance.lever).toBeCloseTo(0.6, 2);
    expect(balance.heavier).toBe('right');
    expect(patches.toSorted((p, q) => q.size - p.size)[0]?.weight).toBe(0);
  });

  it('of mirrored photographs and paintings is the opposite', { timeout: 120_000 }, async () => {
    for (const traced of tracedPictures('tune')) {
      const raster = await decodeTraced(traced);
      const turned = mirrored(Uint8Array.from(raster.samples), raster.widthPx);
      const own = weighPicture(raster).balance;
      const other = weighPicture(encodedRaster(raster.widthPx, raster.heightPx, turned)).balance;
      expect(Math.abs(own.lever + other.lever), traced.picture).toBeLessThanOrEqual(0.02);
      expect(other.heaviness.left).toBeCloseTo(own.heaviness.right, 4);
    }
  });

  it('of symmetric pictures is 0 within 0.02', { timeout: 120_000 }, async () => {
    for (const traced of tracedPictures('tune').slice(0, 8)) {
      const { widthPx, heightPx, samples } = await decodeTraced(traced);
      const both = Uint8Array.from(samples);
      const turned = mirrored(both, widthPx);
      for (let at = 0; at < both.length; at++) {
        if ((at % (widthPx * 3)) / 3 >= widthPx / 2) both[at] = turned[at] as number;
      }
      const { lever } = weighPicture(encodedRaster(widthPx, heightPx, both)).balance;
      expect(Math.abs(lever), traced.picture).toBeLessThanOrEqual(0.02);
    }
  });

  it('says which side is heavier outside of a dead band', () => {
    expect([-0.3, -0.05, 0, 0.05, 0.051].map(heavierSide)).toEqual(['left', 'even', 'even', 'even', 'right']);
  });
});

/** −2.1 + 0.05 (100 − L*): Ou, Luo, Woodcock & Wright (2004), from public reproductions. */
it('shows the published heaviness of both halves beside the lever', () => {
  const canvas = canvasOf(400, 300, [80, 0, 0]);
  lay(canvas, box(0, 0, 200, 300), [30, 0, 0]);
  const { heaviness } = weighed(canvas, encoded(canvas)).balance;
  expect(heaviness.left).toBeCloseTo(1.4, 1);
  expect(heaviness.right).toBeCloseTo(-1.1, 1);
});
