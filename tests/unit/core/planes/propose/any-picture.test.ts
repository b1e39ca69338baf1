/** Whatever the picture: outlines that can be filled, no hole, far above near, no more planes than asked; and mirrored. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { drawLabelMap, NO_PLANE } from '#server/core/planes/label-map.ts';
import { type Proposal, proposePlanes } from '#server/core/planes/propose/propose.ts';
import { meanOverlap } from '#tests/fixtures/proposals/overlap.ts';
import { proposalScenes } from '#tests/fixtures/proposals/scenes.ts';
import { encodeScene, renderScene } from '#tests/fixtures/scenes/render-scene.ts';

const PATIENT_MS = 300_000;
const MOST_POINTS = 120;
/** Superpixels are numbered from the left, so a mirrored picture may differ by strays along its ridges. */
const MIRRORED_OVERLAP = 0.95;

const colour = fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255));
/** A line from side to side, a colour below it, and how grainy it is. */
const band = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  lean: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  swell: fc.double({ min: 0, max: 0.2, noNaN: true }),
  colour,
  grain: fc.nat(60),
});
const pictures = fc
  .record({
    widthPx: fc.integer({ min: 1, max: 120 }),
    heightPx: fc.integer({ min: 1, max: 120 }),
    sky: colour,
    bands: fc.array(band, { maxLength: 6 }),
    seed: fc.integer({ min: 1, max: 1e6 }),
  })
  .map(({ widthPx, heightPx, sky, bands, seed }): EncodedRaster => {
    const samples = new Uint8ClampedArray(widthPx * heightPx * 3);
    let state = seed;
    for (let y = 0, at = 0; y < heightPx; y++) {
      for (let x = 0; x < widthPx; x++, at += 3) {
        const across = x / widthPx - 0.5;
        const inside = bands.filter(
          ({ at: height, lean, swell }) =>
            y / heightPx > height + lean * across + swell * Math.sin(20 * across),
        );
        const { colour: own, grain } = inside.at(-1) ?? { colour: sky, grain: 2 };
        // Park & Miller (1988), minimal standard generator.
        state = (state * 48271) % 2147483647;
        const noise = grain * (state / 2147483647 - 0.5);
        samples.set(
          own.map((channel) => channel + noise),
          at,
        );
      }
    }
    return encodedRaster(widthPx, heightPx, samples);
  });

function labelsOf({ widthPx, heightPx }: EncodedRaster, { planes }: Proposal): Uint8Array {
  return drawLabelMap(
    widthPx,
    heightPx,
    planes.map(({ outline }) => outline),
  );
}

function expectSound(raster: EncodedRaster, proposal: Proposal): void {
  const { asked, planes, note } = proposal;
  expect(planes.length).toBeGreaterThanOrEqual(1);
  expect(planes.length).toBeLessThanOrEqual(asked);
  expect(note === null).toBe(planes.length === asked);
  expect(new Set(planes.map(({ name }) => name)).size).toBe(planes.length);
  for (const { name, outline } of planes) {
    checkOutline(name, outline);
    expect(outline.length).toBeLessThanOrEqual(MOST_POINTS);
  }
  const labels = labelsOf(raster, proposal);
  expect(labels.includes(NO_PLANE)).toBe(false);
  const { widthPx } = raster;
  const upsideDown = labels.findIndex((label, at) => at >= widthPx && label < (labels[at - widthPx] ?? 0));
  expect(upsideDown).toBe(-1);
}

function mirrored({ widthPx, heightPx, samples }: EncodedRaster): EncodedRaster {
  const turned = samples.slice();
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const from = 3 * (y * widthPx + x);
      turned.set(samples.subarray(from, from + 3), 3 * (y * widthPx + widthPx - 1 - x));
    }
  }
  return encodedRaster(widthPx, heightPx, turned);
}

describe('planes proposed for any picture', () => {
  it(
    'can be filled, leave no hole, lie far above near, and are no more than asked',
    () => {
      fc.assert(
        fc.property(pictures, (raster) => {
          const { alternatives, chosen } = proposePlanes(raster);
          for (const proposal of [...alternatives, chosen]) expectSound(raster, proposal);
        }),
        { numRuns: 40 },
      );
    },
    PATIENT_MS,
  );

  it.each(proposalScenes.slice(0, 4))(
    'are mirrored with it: $name',
    (parameters) => {
      const scene = renderScene(parameters);
      const raster = encodedRaster(scene.widthPx, scene.heightPx, encodeScene(scene));
      const turned = mirrored(raster);
      const [there, here] = [proposePlanes(turned).chosen, proposePlanes(raster).chosen];
      expect(there.planes.length).toBe(here.planes.length);
      const labels = labelsOf(turned, there);
      const { widthPx } = scene;
      const back = labels.map((_, at) => {
        const x = at % widthPx;
        return labels[at - x + widthPx - 1 - x] ?? NO_PLANE;
      });
      const count = here.planes.length;
      const overlap = meanOverlap(back, count, labelsOf(raster, here), count);
      expect(overlap).toBeGreaterThanOrEqual(MIRRORED_OVERLAP);
    },
    PATIENT_MS,
  );
});
