/** Gaps, steps, fit and recession by their definitions, on figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import type { PlaneMeasures } from '#server/core/contract/measures.ts';
import { Setup, type SetupInput } from '#server/core/contract/setup.ts';
import { comparePictures } from '#server/core/gaps/compare.ts';
import { fitKeyAndSpan } from '#server/core/gaps/fit.ts';
import { notMeasured } from '#server/core/measure/plane-figures.ts';

type Known = Partial<PlaneMeasures>;

function plane(known: Known): PlaneMeasures {
  return { ...notMeasured(0.2, ''), notes: [], ...known };
}

const outline: [number, number][] = [
  [0, 0],
  [1, 0],
  [1, 1],
];

function setup(names: string[], extra: Partial<SetupInput> = {}) {
  const planes = names.map((name) => ({
    name,
    kind: name === 'sky' ? ('sky' as const) : ('land' as const),
    reference: outline,
  }));
  return Setup.parse({ planes, ...extra });
}

const NAMES = ['sky', 'ridge', 'wood', 'bank'];
const reference = {
  air: { L: 80, a: 0, b: -8 },
  planes: [
    plane({
      mid: 80,
      dark: 75,
      light: 84,
      spread: 9,
      strong: 12,
      chroma: 9,
      warmCool: -9,
      hue: 260,
      airDistance: 2,
    }),
    plane({
      mid: 60,
      dark: 50,
      light: 66,
      spread: 16,
      strong: 10,
      chroma: 8,
      warmCool: -4,
      hue: 350,
      airDistance: 20,
    }),
    plane({
      mid: 40,
      dark: 25,
      light: 55,
      spread: 30,
      strong: 24,
      chroma: 18,
      warmCool: 5,
      hue: 120,
      airDistance: 42,
    }),
    plane({
      mid: 42,
      dark: 20,
      light: 60,
      spread: 40,
      strong: 40,
      chroma: 28,
      warmCool: 12,
      hue: 110,
      airDistance: 50,
    }),
  ],
};
const painting = {
  air: { L: 78, a: 1, b: -6 },
  planes: [
    plane({
      mid: 82,
      dark: 78,
      light: 86,
      spread: 8,
      strong: 11,
      chroma: 9,
      warmCool: -8,
      hue: 250,
      airDistance: 3,
    }),
    plane({
      mid: 50,
      dark: 35,
      light: 60,
      spread: 25,
      strong: 20,
      chroma: 15,
      warmCool: 3,
      hue: 10,
      airDistance: 30,
    }),
    plane({
      mid: 46,
      dark: 27,
      light: 58,
      spread: 31,
      strong: 25,
      chroma: 19,
      warmCool: 6,
      hue: 118,
      airDistance: 38,
    }),
    plane({
      mid: 40,
      dark: 20,
      light: 61,
      spread: 41,
      strong: 40,
      chroma: 28,
      warmCool: 12,
      hue: 111,
      airDistance: 48,
    }),
  ],
};
const document = comparePictures(reference, painting, setup(NAMES));

describe('gaps', () => {
  it('are painting minus reference, hue wrapped to half a turn', () => {
    expect(document.target).toBe('reference');
    expect(document.planes[1]?.gap).toMatchObject({
      mid: -10,
      dark: -15,
      spread: 9,
      strong: 10,
      warmCool: 7,
      hue: 20,
      airDistance: 10,
    });
    expect(document.planes[1]?.gap?.detail).toBeNull();
  });

  it('of steps compare near minus far in both pictures', () => {
    expect(document.steps).toHaveLength(3);
    expect(document.steps[1]).toMatchObject({
      far: 'ridge',
      near: 'wood',
      reference: { mid: -20, dark: -25, warmCool: 9 },
      painting: { mid: -4, dark: -8, warmCool: 3 },
      gap: { mid: 16, dark: 17, warmCool: -6 },
    });
  });
});

describe('recession', () => {
  it('is null for the sky and the nearest plane', () => {
    expect([document.planes[0]?.recession, document.planes[3]?.recession]).toEqual([null, null]);
  });

  it('says how much of the step back was taken', () => {
    const ridge = document.planes[1]?.recession;
    expect(ridge?.darks).toBeCloseTo((35 - 20) / (50 - 20), 12);
    expect(ridge?.air).toBeCloseTo((48 - 30) / (50 - 20), 12);
    expect(ridge?.spread).toBeCloseTo(Math.log(25 / 41) / Math.log(16 / 40), 12);
    expect(ridge?.chroma).toBeCloseTo(Math.log(20 / 40) / Math.log(10 / 40), 12);
  });

  it('is null where the reference itself hardly steps back', () => {
    // darks 25 − 20 = 5 < 10; air 50 − 42 = 8 < 15; spread 30/40 = 0.75 > 0.7; chroma 24/40 = 0.6.
    const wood = document.planes[2]?.recession;
    expect([wood?.darks, wood?.air, wood?.spread]).toEqual([null, null, null]);
    expect(wood?.chroma).toBeCloseTo(Math.log(25 / 40) / Math.log(24 / 40), 12);
  });

  it('keeps negatives, and floors spread and chroma at 2', () => {
    const turned = comparePictures(
      {
        air: null,
        planes: [
          plane({ mid: 1, dark: 40, spread: 1, strong: 1 }),
          plane({ mid: 1, dark: 20, spread: 20, strong: 20 }),
        ],
      },
      {
        air: null,
        planes: [
          plane({ mid: 1, dark: 10, spread: 1, strong: 30 }),
          plane({ mid: 1, dark: 20, spread: 20, strong: 20 }),
        ],
      },
      setup(['ridge', 'bank']),
    ).planes[0]?.recession;
    expect(turned?.darks).toBeCloseTo(-0.5, 12);
    expect(turned?.spread).toBeCloseTo(1, 12);
    expect(turned?.chroma).toBeCloseTo(Math.log(30 / 20) / Math.log(2 / 20), 12);
  });
});

describe('key and span', () => {
  it('are those of the line the middles follow, one outlier aside (Theil–Sen)', () => {
    const line = [10, 30, 50, 70, 90].map((r): [number, number] => [r, 5 + 0.8 * r]);
    expect(fitKeyAndSpan(line).span).toBeCloseTo(0.8, 12);
    expect(fitKeyAndSpan(line).key).toBeCloseTo(5, 12);
    line[2] = [50, 80];
    expect(fitKeyAndSpan(line).span).toBeCloseTo(0.8, 1);
  });

  it('are null under three planes, and where all middles are alike', () => {
    expect(
      fitKeyAndSpan([
        [10, 20],
        [30, 40],
      ]),
    ).toEqual({ key: null, span: null });
    expect(
      fitKeyAndSpan([
        [50, 20],
        [51, 40],
        [50.5, 30],
      ]),
    ).toEqual({ key: null, span: null });
  });
});

describe('the target', () => {
  const plan = [
    { name: 'ridge', dark: 48, mid: 58, light: 64, chroma: 8, strong: 11, warmCool: -3, airDistance: 22 },
  ];

  it('is the planned ladder where there is one', () => {
    const planned = comparePictures(reference, painting, setup(NAMES, { plan }));
    expect(planned.target).toBe('plan');
    expect(planned.planes[1]?.gap).toMatchObject({ mid: -8, spread: 9, strong: 9, hue: null, share: null });
    expect(planned.planes[2]?.gap).toBeNull();
    expect(planned.planes[2]?.reference?.mid).toBe(40);
    expect(planned.planes[1]?.planned).toMatchObject({ dark: 48, spread: 16, hue: null, colours: null });
    expect(planned.planes[2]?.planned).toBeNull();
    expect(document.planes[1]).not.toHaveProperty('planned');
  });

  it('is nothing for a painting from life', () => {
    const life = comparePictures(null, painting, setup(NAMES));
    expect(life.target).toBe('none');
    expect(life.planes.map(({ gap, reference: shown }) => [gap, shown])).toEqual(
      NAMES.map(() => [null, null]),
    );
    expect(life.fit).toEqual({ key: null, span: null });
    expect(life.steps[0]?.painting.mid).toBe(-32);
  });

  it('leaves out planes whose reference is declared unreliable', () => {
    const planes = NAMES.map((name) => ({ name, reference: outline, unreliable: name === 'ridge' }));
    const checked = comparePictures(reference, painting, Setup.parse({ planes }));
    expect(checked.planes[1]?.gap).toBeNull();
    expect(checked.planes[1]?.reference?.notes.at(-1)).toContain('unreliable');
    expect(checked.steps[0]?.gap).toBeNull();
  });

  it('keeps honest about what is not worked out yet', () => {
    expect(document.capture).toEqual({ grade: null, reasons: [] });
    expect([document.readings, document.priorities, document.works]).toEqual([[], [], null]);
  });
});
