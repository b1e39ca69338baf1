/** From pixels to a document with readings: what measuring and the facts hand over to the rules. */
import { describe, expect, test } from 'vitest';
import type { PhotoFacts } from '#server/core/capture/photo-facts.ts';
import { type FractionPoint, Setup, type SetupInput } from '#server/core/contract/setup.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { measurePrepared } from '#server/core/measure/measure-pair.ts';
import { type Prepared, prepareMeasurable } from '#server/core/measure/prepare.ts';
import { withReadings } from '#server/core/readings/with-readings.ts';
import { plainRgb } from '#tests/fixtures/scenes/plain-lab.ts';

const WIDTH = 400;
const HEIGHT = 320;
const NAMES = ['sky', 'far ridge', 'near field'] as const;
type Lab = [L: number, a: number, b: number];
/** Light and shade of each plane. */
type Colours = [light: Lab, shade: Lab][];

const REFERENCE: Colours = [
  [
    [84, -3, -10],
    [84, -3, -10],
  ],
  [
    [60, -3, -4],
    [56, -4, -3],
  ],
  [
    [64, -16, 38],
    [20, -6, 12],
  ],
];

/** Three bands; in each, a third lies in shade, in squares of 20 pixels. */
function pictureOf(colours: Colours): Prepared {
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  for (let y = 0, at = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++, at += 3) {
      const plane = Math.min(2, Math.floor((y * 3) / HEIGHT));
      const [light, shade] = colours[plane] ?? [
        [50, 0, 0],
        [50, 0, 0],
      ];
      const shaded = (Math.floor(x / 20) + Math.floor(y / 20)) % 3 === 0;
      plainRgb(...(shaded ? shade : light)).forEach((linear, channel) => {
        const value = Math.min(1, Math.max(0, linear));
        const code = value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055;
        samples[at + channel] = Math.round(255 * code);
      });
    }
  }
  return prepareMeasurable({ raster: encodedRaster(WIDTH, HEIGHT, samples) });
}

const FACTS: PhotoFacts = {
  ...{
    cards: 2,
    clippedCards: 0,
    border: true,
    unevenness: 0,
    cardsApart: 0,
    crookedDeg: 0,
    sideRatioError: 0,
  },
  ...{ shortSidePx: 1500, fillsPhoto: true, soft: false, glareShare: 0, wet: null, notes: [] },
};
const photographed = (prepared: Prepared, facts: Partial<PhotoFacts> = {}): Prepared => ({
  ...prepared,
  facts: { ...FACTS, ...facts },
});

function setupOf(more: Partial<SetupInput> = {}): Setup {
  const band = (from: number): FractionPoint[] => [
    [0, from],
    [1, from],
    [1, 1],
    [0, 1],
  ];
  const planes = NAMES.map((name, at) => ({
    name,
    kind: at === 0 ? 'sky' : 'land',
    reference: band(at / 3),
  }));
  return Setup.parse({ planes, ...more });
}

const reference = pictureOf(REFERENCE);
const faithful = photographed(reference);
/** The darks of the ridge as heavy as those in front. */
const heavy = photographed(
  pictureOf(REFERENCE.map((colours, at) => (at === 1 ? [colours[0], [26, -4, -2]] : colours)) as Colours),
);

describe('a measured document', () => {
  test('has nothing to say of a painting that is as its reference, and still praises a plane', () => {
    const { readings, priorities, cards, works, capture } = measurePrepared(reference, faithful, setupOf());
    expect(capture.grade).toBe('A');
    expect(readings).toEqual([]);
    expect(priorities).toEqual([]);
    expect(cards).toEqual([]);
    expect(NAMES).toContain(works?.plane);
  });

  test('speaks of a fault in the pixels, with a card, a priority and its observations', () => {
    const document = measurePrepared(reference, heavy, setupOf());
    const found = document.readings.find(({ id }) => id === 'V4');
    expect(found).toMatchObject({ planes: ['far ridge'], muted: null });
    const card = document.cards?.find(({ plane }) => plane === 'far ridge');
    expect(card?.readings).toContain('V4');
    expect(card?.open).toBe(true);
    expect(document.priorities.some((id) => card?.readings.some((reading) => reading === id))).toBe(true);
    expect(document.works?.plane).not.toBe('far ridge');
    expect(Array.isArray(document.observations)).toBe(true);
  });

  test('mutes by the setup’s conditions and by what was meant on a plane', () => {
    const mutedBy = (more: Partial<SetupInput>) =>
      measurePrepared(reference, heavy, setupOf(more)).readings.find(({ id }) => id === 'V4')?.muted;
    expect(mutedBy({ conditions: ['valley-mist'] })).toMatch(/^Mist/);
    expect(mutedBy({ meant: ['V4/far ridge'] })).toMatch(/meant/);
    expect(mutedBy({ meant: ['V4/near field'] })).toBeNull();
  });

  test('tells of the photograph what its facts hold', () => {
    const idsWith = (facts: Partial<PhotoFacts>) =>
      measurePrepared(reference, photographed(reference, facts), setupOf()).readings.map(({ id }) => id);
    expect(idsWith({})).toEqual([]);
    expect(idsWith({ cards: 0 })).toContain('G1');
    expect(idsWith({ unevenness: 0.2 })).toContain('G4');
    expect(idsWith({ wet: true })).toContain('G8');
    expect(idsWith({ soft: true })).toContain('G6');
  });

  test('withholds colour where the photograph has no neutral', () => {
    const blue = photographed(
      pictureOf(
        REFERENCE.map((colours, at) =>
          at === 1
            ? [
                [66, 2, -40],
                [58, 2, -38],
              ]
            : colours,
        ) as Colours,
      ),
    );
    const idsAt = (cards: number) => {
      const facts = { ...FACTS, cards };
      return measurePrepared(reference, { ...blue, facts }, setupOf()).readings.map(({ id }) => id);
    };
    expect(idsAt(2).some((id) => id.startsWith('C'))).toBe(true);
    expect(idsAt(0).some((id) => id.startsWith('C'))).toBe(false);
  });

  test('from life only checks, and nothing that needs a reference', () => {
    const { readings, target } = measurePrepared(null, heavy, setupOf());
    expect(target).toBe('none');
    for (const { id, sentence } of readings) if (!id.startsWith('G')) expect(sentence).toMatch(/^Check:/);
  });

  test('has no readings where doubt was left out, or where a reference is looked at alone', () => {
    expect(measurePrepared(reference, heavy, setupOf(), { doubt: false }).readings).toEqual([]);
    expect(measurePrepared(null, reference, setupOf(), { exact: true }).readings).toEqual([]);
  });

  test('comes out the same again, and what came in is left as it was', () => {
    const setup = setupOf({ focus: [0.5, 0.6] });
    const before = structuredClone(setup);
    expect(measurePrepared(reference, heavy, setup)).toEqual(measurePrepared(reference, heavy, setup));
    expect(setup).toEqual(before);
  });
});

test('a document keeps its figures when readings are added', () => {
  const setup = setupOf();
  const bare = measurePrepared(reference, heavy, setup, { doubt: false });
  const labels = new Uint8Array(WIDTH * HEIGHT);
  const kept = labels.map((_, at) => Math.min(2, Math.floor((Math.floor(at / WIDTH) * 3) / HEIGHT)));
  const measures = {
    ...{ planes: [], air: null, sampling: [], boundaries: [], labels: kept, kept },
    capture: { glare: [0, 0, 0], clippedSky: null, clippedDarks: 0 },
  };
  const read = withReadings(bare, setup, { reference: null, painting: { prepared: heavy, measures } });
  expect(read.planes).toBe(bare.planes);
  expect(read.steps).toBe(bare.steps);
  expect(read.capture).toBe(bare.capture);
  expect(read.readings.length).toBeGreaterThan(0);
});
