/** Frames: a known good one is found, what is stated of each can be counted, none is too small or nearly another. */
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { cropTrouble } from '#server/core/plan/crops/check-crop.ts';
import { type Crop, proposeCrops } from '#server/core/plan/crops/propose-crops.ts';
import { shapeScene } from '#server/core/plan/shapes/shape-scene.ts';
import { weighPicture } from '#server/core/plan/weight/balance.ts';
import { framedScene, REPORTING_SEEDS } from '#tests/fixtures/plan/framed-scenes.ts';
import { decodeTraced, type TracedPicture, tracedPictures } from '#tests/fixtures/traced/traced.ts';

const PATIENT_MS = 600_000;
const LEAST_FOUND = 0.9;
const PLAIN = {
  square: 1,
  '3:2': 1.5,
  '4:3': 4 / 3,
  '5:4': 1.25,
  '2:1': 2,
  '2:3': 2 / 3,
  '3:4': 0.75,
  '1:2': 0.5,
};
type Four = readonly [number, number, number, number];

function overlap(one: Four, two: Four): number {
  const across = Math.max(0, Math.min(one[2], two[2]) - Math.max(one[0], two[0]));
  const down = Math.max(0, Math.min(one[3], two[3]) - Math.max(one[1], two[1]));
  const area = ([x0, y0, x1, y1]: Four) => (x1 - x0) * (y1 - y0);
  return (across * down) / (area(one) + area(two) - across * down);
}

/** Whether a point lies in an outline: even-odd, by a ray to the right. */
function holds(outline: readonly (readonly [number, number])[], x: number, y: number): boolean {
  let inside = false;
  outline.forEach(([x1, y1], at) => {
    const [x0, y0] = outline.at(at - 1) as readonly [number, number];
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) inside = !inside;
  });
  return inside;
}

/** Shares of a frame by asking the outlines themselves at 160 x 160 points: no label map is drawn. */
function asked(
  { planes }: Pick<TracedPicture, 'planes'>,
  [x0, y0, x1, y1]: Four,
): { sky: number; foreground: number } {
  const points = 160;
  let [sky, foreground] = [0, 0];
  for (let row = 0; row < points; row++) {
    const y = y0 + ((row + 0.5) / points) * (y1 - y0);
    for (let column = 0; column < points; column++) {
      const x = x0 + ((column + 0.5) / points) * (x1 - x0);
      const label = planes.findLastIndex(({ outline }) => holds(outline, x, y));
      if (planes[label]?.kind === 'sky') sky++;
      if (label === planes.length - 1 && planes[label]?.kind !== 'sky') foreground++;
    }
  }
  return { sky: sky / points ** 2, foreground: foreground / points ** 2 };
}

async function framesOf(
  traced: TracedPicture,
): Promise<{ crops: readonly Crop[]; widthPx: number; heightPx: number }> {
  const raster = await decodeTraced(traced);
  const { crops } = proposeCrops(shapeScene(raster, traced.planes, weighPicture(raster), null));
  return { crops, widthPx: raster.widthPx, heightPx: raster.heightPx };
}

describe('frames', () => {
  it('of rendered scenes: the first three of all formats hold the known good one in nine of ten', {
    timeout: PATIENT_MS,
  }, () => {
    const found = REPORTING_SEEDS.filter((seed) => {
      const { widthPx, heightPx, samples, planes, frame } = framedScene(seed);
      const raster = encodedRaster(widthPx, heightPx, samples);
      const { crops } = proposeCrops(shapeScene(raster, planes, weighPicture(raster), null));
      return crops.slice(0, 3).some(({ box }) => overlap(box, frame) >= 0.8);
    });
    expect(found.length / REPORTING_SEEDS.length).toBeGreaterThanOrEqual(LEAST_FOUND);
  });

  it.each(tracedPictures().filter((_, at) => at % 3 === 0))(
    'of $picture keep what they state',
    { timeout: PATIENT_MS },
    async (traced) => {
      const { crops, widthPx, heightPx } = await framesOf(traced);
      expect(crops.length).toBeGreaterThan(10);
      for (const { format, box, sky, foreground, reasons } of crops) {
        const counted = asked(traced, box);
        expect(Math.abs(counted.sky - sky)).toBeLessThanOrEqual(0.01);
        expect(Math.abs(counted.foreground - foreground)).toBeLessThanOrEqual(0.01);
        expect(cropTrouble(box, widthPx, heightPx)).toBeNull();
        const ratio = ((box[2] - box[0]) * widthPx) / ((box[3] - box[1]) * heightPx);
        const wanted = PLAIN[format as keyof typeof PLAIN];
        if (wanted) expect(Math.abs(ratio / wanted - 1)).toBeLessThan(0.006);
        expect(reasons.join(' ')).toContain(`Sky ${Math.round(100 * sky)} %`);
        for (const reason of reasons) expect(reason.split(/\s+/).length).toBeLessThanOrEqual(30);
      }
      for (const format of Object.keys(PLAIN)) {
        const own = crops.filter((crop) => crop.format === format);
        expect(own.length).toBeLessThanOrEqual(4);
        own.forEach(({ box }, at) => {
          for (const other of own.slice(at + 1)) expect(overlap(box, other.box)).toBeLessThanOrEqual(0.7);
        });
      }
    },
  );

  it('are in real canvas proportions too, lying and standing', async () => {
    const [traced] = tracedPictures();
    const { crops } = await framesOf(traced as TracedPicture);
    const formats = new Set(crops.map(({ format }) => format));
    expect(formats).toContain('7 x 5 in');
    expect(formats).toContain('5 x 7 in');
  });
});

describe('a frame', () => {
  it('outside of the picture, or with less than 300 pixels on its shorter side, is refused in one sentence', () => {
    expect(cropTrouble([0, 0, 1, 1], 400, 300)).toBeNull();
    expect(cropTrouble([0, 0, 1, 1], 400, 299)).toMatch(
      /^The frame has 299 pixels on its shorter side; 300 are needed/,
    );
    expect(cropTrouble([0.5, 0.5, 0.6, 0.6], 2000, 2000)).toMatch(/200 pixels/);
    for (const box of [
      [-0.1, 0, 1, 1],
      [0, 0, 1.2, 1],
      [0.6, 0, 0.4, 1],
      [0, Number.NaN, 1, 1],
    ] as const) {
      expect(cropTrouble(box, 4000, 4000)).toMatch(/does not lie inside the picture/);
    }
  });

  it('is not proposed of a tiny or an empty picture, and a sentence says why', () => {
    const flat = (widthPx: number, heightPx: number) => {
      const raster = encodedRaster(widthPx, heightPx, new Uint8Array(widthPx * heightPx * 3).fill(128));
      return proposeCrops(shapeScene(raster, [], weighPicture(raster), null));
    };
    expect(flat(280, 200)).toMatchObject({ crops: [], notes: [expect.stringMatching(/280 by 200 pixels/)] });
    expect(flat(640, 480)).toMatchObject({
      crops: [],
      notes: [expect.stringMatching(/Nothing in the picture stands out/)],
    });
  });
});
