/** The 90 % intervals: repeatable, as wide as the grade says, and honest about small and restless planes. */
import { describe, expect, it } from 'vitest';
import type { PhotoFacts } from '#server/core/capture/photo-facts.ts';
import { GAP_KEYS } from '#server/core/contract/measures.ts';
import { Setup } from '#server/core/contract/setup.ts';
import { changesBetween } from '#server/core/doubt/changed.ts';
import { randomBelow } from '#server/core/doubt/random.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { measurePair } from '#server/core/measure/measure-pair.ts';
import cases from '#tests/fixtures/camera/cases.json' with { type: 'json' };
import { measuredShot, type ShownCase, takenOf } from '#tests/fixtures/camera/shots.ts';

/** Half a 90 % interval, in deviations, and the grades' deviations (the measuring rules, sections 1 and 3). */
const HALF_90 = 1.645;
const WIDTH = 320;
const HEIGHT = 200;

/** The left half flat, the right half in coarse grain. */
function pictureOf(seed: number) {
  const below = randomBelow(seed);
  const patches = Array.from({ length: 40 * 25 }, () => below(60) - 30);
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  for (let pixel = 0; pixel < WIDTH * HEIGHT; pixel++) {
    const [x, y] = [pixel % WIDTH, Math.floor(pixel / WIDTH)];
    const grain = x < WIDTH / 2 ? 0 : (patches[Math.floor(y / 8) * 40 + Math.floor(x / 8)] as number);
    samples.set([110 + grain, 120 + grain, 90 + grain], pixel * 3);
  }
  return encodedRaster(WIDTH, HEIGHT, samples);
}

const setup = Setup.parse({
  planes: [
    {
      name: 'flat',
      reference: [
        [0, 0],
        [0.5, 0],
        [0.5, 1],
        [0, 1],
      ],
    },
    {
      name: 'restless',
      reference: [
        [0.5, 0],
        [1, 0],
        [1, 1],
        [0.5, 1],
      ],
    },
  ],
});
const facts = (cards: number): PhotoFacts => ({
  cards,
  clippedCards: 0,
  border: false,
  unevenness: null,
  cardsApart: null,
  crookedDeg: null,
  sideRatioError: null,
  shortSidePx: 2000,
  fillsPhoto: false,
  soft: null,
  glareShare: 0,
  wet: null,
  notes: [],
});
const raster = pictureOf(7);
const measured = (cards: number) =>
  measurePair({ reference: { raster }, painting: { raster, facts: facts(cards) }, setup });
const half = (interval: [number, number] | undefined) => ((interval?.[1] ?? 0) - (interval?.[0] ?? 0)) / 2;

describe('doubt', () => {
  it('is the same to the byte for the same input', () => {
    expect(JSON.stringify(measured(2))).toBe(JSON.stringify(measured(2)));
  });

  it.each([
    ['A', 2, 2, 3],
    ['B', 1, 4, 5],
    ['C', 0, 6, 10],
  ])('of a flat plane at grade %s is the grade alone', (grade, cards, L, ab) => {
    const document = measured(cards);
    expect(document.capture.grade).toBe(grade);
    const doubt = document.planes[0]?.painting.doubt;
    expect(half(doubt?.mid)).toBeCloseTo(HALF_90 * L, 1);
    expect(half(doubt?.a)).toBeCloseTo(HALF_90 * ab, 1);
    expect(half(doubt?.share)).toBe(0);
    const step = document.steps[0]?.doubt?.painting;
    // A relation inside one picture keeps 0.6 of the deviation.
    expect(half(step?.mid)).toBeGreaterThanOrEqual(HALF_90 * 0.6 * L - 0.05);
  });

  it('of the reference is the bootstrap alone, wider where the plane is restless', () => {
    const [flat, restless] = measured(2).planes.map(({ reference }) => reference?.doubt);
    expect(half(flat?.mid)).toBeLessThan(0.2);
    expect(half(restless?.mid)).toBeGreaterThan(0.4);
  });

  it('agrees with how much other draws of the same texture differ', () => {
    const mids = Array.from({ length: 40 }, (_, at) => {
      const other = pictureOf(100 + at);
      return measurePair({ reference: null, painting: { raster: other }, setup }, { doubt: false }).planes[1]
        ?.painting.mid as number;
    });
    const mean = mids.reduce((sum, mid) => sum + mid, 0) / mids.length;
    const deviation = Math.sqrt(mids.reduce((sum, mid) => sum + (mid - mean) ** 2, 0) / (mids.length - 1));
    const told = half(measured(2).planes[1]?.reference?.doubt.mid) / HALF_90;
    expect(told / deviation).toBeGreaterThan(0.5);
    expect(told / deviation).toBeLessThan(2);
  }, 120_000);

  it('holds every figure that was measured, and nothing that is no number', () => {
    for (const { painting, reference, gap, doubt } of measured(1).planes) {
      for (const side of [painting, reference]) {
        for (const key of GAP_KEYS) {
          const [value, interval] = [side?.[key] ?? null, side?.doubt[key]];
          expect(interval !== undefined, key).toBe(value !== null);
          if (value === null || !interval) continue;
          expect(Number.isFinite(interval[0]) && interval[0] <= value && interval[1] >= value, key).toBe(
            true,
          );
        }
      }
      expect(Object.keys(doubt?.gap ?? {})).toEqual(GAP_KEYS.filter((key) => gap?.[key] !== null));
    }
  });
});

describe('repeat shots of one painting', () => {
  it('show no change, though lamp, exposure and noise differ; a repainted plane does', async () => {
    const base = cases.cases[0] as ShownCase;
    const lamps = [2900, 3400, 4000, 4800, 5500, 6500, 7500, 9000];
    const documents = [];
    for (const [at, kelvin] of lamps.entries()) {
      const shot: ShownCase = {
        ...base,
        kelvin,
        stopsUnder: 0.4 + 0.1 * at,
        seed: 50 + at,
        cards: 1 + (at % 2),
      };
      documents.push(measuredShot(await takenOf(shot)).document);
    }
    for (const earlier of documents) {
      for (const later of documents) expect(changesBetween(earlier, later)).toEqual([]);
    }
    const [first] = documents;
    if (!first) throw new Error('No shot was measured.');
    const [plane] = first.planes;
    const painting = plane?.painting;
    if (!plane || !painting) throw new Error('No plane was measured.');
    const repainted = { ...painting, mid: (painting.mid ?? 0) + 20 };
    expect(changesBetween(first, { ...first, planes: [{ ...plane, painting: repainted }] })).toEqual([
      { plane: plane.name, key: 'mid', by: expect.closeTo(20, 6) },
    ]);
  }, 240_000);
});
