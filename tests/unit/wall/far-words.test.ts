/** How far is said in words: part by part, no more than the photo allows, never a figure. */

import { converter, parse } from 'culori';
import { describe, expect, test } from 'vitest';
import type {
  MeasureDocument,
  PlaneMeasures,
  PlaneResult,
  Recession,
} from '#server/core/contract/measures.ts';
import { colourWords } from '#server/core/wall/colour-words.ts';
import { farWords } from '#server/core/wall/far-words.ts';

const measured = (parts: Partial<PlaneMeasures>): PlaneMeasures => ({
  ...{ share: 0.25, dark: 30, mid: 50, light: 70, spread: 40, munsellValue: 5, chroma: 10, strong: 20 },
  ...{
    hue: 100,
    a: 1,
    b: 8,
    warmCool: 3,
    detail: 0.1,
    edge: 3,
    hueShares: null,
    airDistance: 20,
    airShare: 0.3,
  },
  ...{ doubt: {}, notes: [], colours: null },
  ...parts,
});

function plane(
  name: string,
  parts: Partial<PlaneMeasures> = {},
  recession: Partial<Recession> | null = null,
): PlaneResult {
  const all = recession && { darks: null, spread: null, chroma: null, air: null, ...recession };
  return { name, reference: null, gap: null, painting: measured(parts), recession: all };
}

function document(
  planes: PlaneResult[],
  grade: MeasureDocument['capture']['grade'],
  target: MeasureDocument['target'] = 'reference',
): MeasureDocument {
  return {
    ...{ version: 1, target, units: { lightness: 'CIE L*, D65', chroma: 'C*ab', hue: 'degrees' } },
    ...{ capture: { grade, reasons: [] }, air: { reference: null, painting: null }, planes, steps: [] },
    ...{ fit: { key: null, span: null }, readings: [], priorities: [], works: null },
  };
}

const SKIES = new Set(['Sky']);
const scene = (recession: Partial<Recession>) => [
  plane('Sky'),
  plane('Ridge', {}, recession),
  plane('Meadow', { dark: 10 }),
];

describe('how a painting says far', () => {
  test('each part in words of the reference, at the grade of the photo', () => {
    const far = farWords(document(scene({ darks: 0.5, chroma: 1, air: 1.7 }), 'A'), SKIES);
    expect(far).toEqual({
      plane: 'Ridge',
      sentences: [
        'Its darks lift about half of the reference’s way.',
        'Its colour greys as far as in the reference.',
        'It nears the colour of the air farther than in the reference.',
      ],
    });
  });

  test('held against the plan it speaks of the plan', () => {
    const far = farWords(document(scene({ darks: 0.25, air: -0.4 }), 'A', 'plan'), SKIES);
    expect(far?.sentences[0]).toBe('Its darks lift about a quarter of the planned way.');
    expect(far?.sentences[1]).toBe('It leaves the colour of the air instead of nearing it.');
  });

  test.each(['C', null] as const)('at grade %s the order of the darks alone is said', (grade) => {
    const said = (darks: number) =>
      farWords(document(scene({ darks, chroma: 0.2, air: 0.2 }), grade), SKIES)?.sentences;
    expect(said(0.5)).toEqual(['Its darks lift less far than in the reference.']);
    expect(said(1)).toEqual(['Its darks lift as far as in the reference.']);
    expect(said(2)).toEqual(['Its darks lift farther than in the reference.']);
  });

  test('painted from life, the far plane is held against the nearest of the same painting', () => {
    const planes = [
      plane('Sky'),
      plane('Ridge', { dark: 35, strong: 8 }),
      plane('Meadow', { dark: 10, strong: 30 }),
    ];
    expect(farWords(document(planes, 'A', 'none'), SKIES)).toEqual({
      plane: 'Ridge',
      sentences: [
        'Its darks are two steps and a half lighter than the nearest plane’s.',
        'Its colour is greyer than the nearest plane’s.',
      ],
    });
    expect(farWords(document(planes, 'C', 'none'), SKIES)?.sentences).toEqual([
      'Its darks are lighter than the nearest plane’s.',
    ]);
    const close = [plane('Ridge', { dark: 11 }), plane('Meadow', { dark: 10 })];
    expect(farWords(document(close, 'C', 'none'), SKIES)?.sentences).toEqual([
      'Its darks are about as dark as the nearest plane’s.',
    ]);
  });

  test('says nothing where nothing can be compared', () => {
    expect(farWords(document([], 'A'), SKIES)).toBeNull();
    expect(farWords(document([plane('Sky'), plane('Meadow')], 'A', 'none'), SKIES)).toBeNull();
    expect(farWords(document(scene({}), 'A'), SKIES)).toBeNull();
  });

  test('no word is a figure', () => {
    for (const grade of ['A', 'B', 'C'] as const) {
      for (const figure of [-0.5, 0, 0.3, 0.5, 0.8, 1, 1.5, 3]) {
        const far = farWords(document(scene({ darks: figure, chroma: figure, air: figure }), grade), SKIES);
        expect(far?.sentences.join(' ')).not.toMatch(/\d|%/);
      }
    }
  });
});

describe('a colour in a painter’s words', () => {
  const lab = converter('lab65');
  const said = (colour: string) => {
    const { l = 0, a = 0, b = 0 } = lab(parse(colour)) ?? {};
    return colourWords({ L: l, a, b });
  };

  // Colours by their names in CSS Color 4, section 6.1 (W3C), converted by culori.
  test.each([
    ['lightsteelblue', 'light', 'blue'],
    ['navy', 'very dark', 'blue-violet'],
    ['forestgreen', 'middle', 'green'],
    ['gold', 'very light', 'yellow'],
    ['darkorange', 'light', 'orange'],
    ['firebrick', 'dark', 'red'],
    ['darkcyan', 'middle', 'blue-green'],
    ['darkviolet', 'dark', 'violet'],
    ['yellowgreen', 'light', 'yellow-green'],
    ['mediumvioletred', 'middle', 'red-violet'],
  ])('%s is %s and %s', (name, light, hue) => {
    expect(said(name)).toMatch(new RegExp(`^${light},? .*${hue}$`));
  });

  test('a colour without chroma is a grey, a weak one greyed, a strong one strong', () => {
    expect(said('gray')).toBe('middle neutral grey');
    expect(said('slategray')).toMatch(/greyed blue/);
    expect(said('gold')).toBe('very light, strong yellow');
  });
});
