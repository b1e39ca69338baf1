/** The look stands in one place: its greys are what their comments say, its inks can be read, and no sheet adds to it. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { lab65, wcagContrast } from 'culori';
import { describe, expect, test } from 'vitest';
import { OVER_CASING, OVER_DARK, OVER_LIGHT, SURROUND } from '#app/_ui/greys.ts';

const PLACE = 'app/language.css';
const language = readFileSync(PLACE, 'utf8');

/** The declarations of one block of the place, by name. */
function block(opening: string): Map<string, string> {
  const from = language.indexOf(opening);
  expect(from, `no block ${opening}`).toBeGreaterThanOrEqual(0);
  const body = language.slice(from, language.indexOf('\n}', from));
  return new Map(
    [...body.matchAll(/(--[\w-]+): ([^;]+);/g)].map(([, name = '', value = '']) => [name, value]),
  );
}

const mid = block(':root {');
const surrounds = {
  mid,
  dark: new Map([...mid, ...block(':root[data-surround="dark"]')]),
  light: new Map([...mid, ...block(':root[data-surround="light"]')]),
};

function colourOf(of: Map<string, string>, name: string): string {
  const value = of.get(name);
  if (!value) throw new Error(`The look has no ${name}.`);
  return value;
}

describe('the greys', () => {
  const stated = [...language.matchAll(/(--[\w-]+): (#[0-9a-f]{6}); \/\* (\d+(?:\.\d+)?)/g)];

  test('have the lightness that stands beside them, by culori, and no hue', () => {
    expect(stated.length).toBeGreaterThan(25);
    for (const [, name, hex = '', lightness] of stated) {
      const lab = lab65(hex);
      expect(Math.abs((lab?.l ?? Number.NaN) - Number(lightness)), `${name} ${hex}`).toBeLessThan(0.6);
      expect(Math.hypot(lab?.a ?? Number.NaN, lab?.b ?? Number.NaN), `${name} ${hex}`).toBeLessThan(0.1);
    }
  });

  // The strip beside a ladder shows bands of ten L*, the middles at 5, 15 … 95 (server/core/ladder).
  test.each([
    ['mid', 55],
    ['dark', 25],
    ['light', 85],
  ] as const)(
    'the %s surround is L* %d, so that one band of the strip vanishes into it',
    (key, lightness) => {
      expect(Math.abs((lab65(colourOf(surrounds[key], '--surround'))?.l ?? 0) - lightness)).toBeLessThan(0.6);
    },
  );

  test('those that leave the page in a drawing are those of the page', () => {
    expect([SURROUND, OVER_LIGHT, OVER_DARK, OVER_CASING]).toEqual(
      ['--mid', '--over-light', '--over-dark', '--over-casing'].map((name) => mid.get(name)),
    );
    expect(mid.get('--surround')).toBe(SURROUND);
  });
});

/** Ink and ground, and the least contrast: WCAG 2.2, 1.4.3 for text (4.5) and 1.4.11 for what is no text (3). */
const PAIRS = [
  ['--ink', '--surround', 4.5],
  ['--ink', '--panel', 4.5],
  ['--ink', '--sheet', 4.5],
  ['--ink', '--field', 4.5],
  ['--ink', '--raised', 4.5],
  ['--ink', '--raised-panel', 4.5],
  ['--ink', '--raised-sheet', 4.5],
  ['--ink-quiet', '--surround', 4.5],
  ['--ink-panel', '--panel', 4.5],
  ['--ink-sheet', '--sheet', 4.5],
  ['--ink-sheet', '--field', 4.5],
  ['--on-held', '--held', 4.5],
  ['--on-accent', '--accent', 4.5],
  ['--on-accent', '--accent-over', 4.5],
  ['--over-light', '--over-dark', 4.5],
  ['--focus', '--surround', 3],
  ['--focus', '--panel', 3],
  ['--focus', '--sheet', 3],
  ['--accent', '--sheet', 3],
  ['--held', '--panel', 3],
] as const;

describe('what is read', () => {
  const cases = (['mid', 'dark', 'light'] as const).flatMap((key) =>
    PAIRS.map(([ink, ground, least]) => ({ key, ink, ground, least })),
  );
  test.each(cases)('$ink on $ground keeps $least : 1 on the $key surround', ({ key, ink, ground, least }) => {
    const of = surrounds[key];
    expect(wcagContrast(colourOf(of, ink), colourOf(of, ground))).toBeGreaterThanOrEqual(least);
  });

  // Black on white is 21 : 1, and #777777 on white 4.48 : 1, the well-known near miss; both by the formula of
  // WCAG 2.2, "relative luminance" and "contrast ratio", worked by hand.
  test('the formula asked is the one of WCAG 2.2', () => {
    expect(wcagContrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(wcagContrast('#777777', '#ffffff')).toBeCloseTo(4.478, 2);
  });
});

const tracked = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', 'app'], {
  encoding: 'utf8',
})
  .split('\n')
  .filter(Boolean);

/** What a sheet must take from the place: pattern of a declaration, and what it may not hold. */
const FROM_THE_PLACE: readonly { what: string; property: RegExp; raw: RegExp }[] = [
  {
    what: 'colours',
    property: /./,
    raw: /#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)\(/i,
  },
  { what: 'sizes of type', property: /^font(?:-size)?$/, raw: /\d(?:\.\d+)?(?:rem|px|em|pt|%)/ },
  { what: 'weights', property: /^font-weight$/, raw: /^(?:\d+|bold|bolder|lighter)$/ },
  { what: 'heights of line', property: /^line-height$/, raw: /^(?!0$)[\d.]+(?:rem|px|em|%)?$/ },
  // Up to one pixel is a line's width; below nothing a thing is put over its own middle: geometry, not space.
  {
    what: 'steps of space',
    property: /^(?:padding|margin|gap|row-gap|column-gap)(?:-[a-z-]+)?$/,
    raw: /(?<![\w.-])(?!(?:0|1|0?\.\d+)px)\d*\.?\d+(?:rem|px|em)\b/,
  },
  {
    what: 'rounding',
    property: /^border(?:-[a-z]+)*-radius$/,
    raw: /(?<![\w.-])(?!0(?![\d.]))\d*\.?\d+(?:rem|px|em|%)/,
  },
  { what: 'heights of what is pressed', property: /^min-height$/, raw: /^(?:1\.[5-9]\d*|2(?:\.\d+)?)rem$/ },
  { what: 'durations', property: /^(?:transition|animation)(?:-[a-z-]+)?$/, raw: /\d(?:ms|s)\b/ },
];

const WIDTHS = new Set(['520px', '640px', '641px', '999px', '1000px', '1419px']);

describe('no sheet adds to the look', () => {
  const sheets = tracked
    .filter((file) => file.endsWith('.css') && file !== PLACE)
    .map((file) => ({ file, text: readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '') }));
  const declarations = sheets.flatMap(({ file, text }) =>
    [...text.matchAll(/(?:^|[{;])\s*([\w-]+)\s*:\s*([^;{}]+)(?=[;}])/g)].map(
      ([, property = '', value = '']) => ({
        file,
        property,
        value: value.trim(),
      }),
    ),
  );

  test.each(FROM_THE_PLACE)('$what come from the place', ({ property, raw }) => {
    expect(declarations.length).toBeGreaterThan(1000);
    const own = declarations.filter((found) => property.test(found.property) && raw.test(found.value));
    expect(own.map((found) => `${found.file}: ${found.property}: ${found.value}`)).toEqual([]);
  });

  test('a page turns to another form at a few widths only', () => {
    const own = sheets.flatMap(({ file, text }) =>
      [...text.matchAll(/@media[^{]*?(?:min|max)-width:\s*([\w.]+)/g)]
        .map(([, width = '']) => width)
        .filter((width) => !WIDTHS.has(width))
        .map((width) => `${file}: ${width}`),
    );
    expect(own).toEqual([]);
  });

  test('every name a sheet asks for is one the look or the sheet’s own area has', () => {
    const given = new Set([...language.matchAll(/(--[\w-]+):/g)].map(([, name]) => name));
    const everything = tracked
      .filter((file) => /\.(?:css|tsx|ts)$/.test(file))
      .map((file) => readFileSync(file, 'utf8'));
    for (const text of everything) {
      for (const [, name] of text.matchAll(/['"\s](--[\w-]+)['"]?\s*[:\]]/g)) given.add(name);
      for (const [, name] of text.matchAll(/setProperty\(\s*['"](--[\w-]+)/g)) given.add(name);
    }
    const asked = sheets.flatMap(({ file, text }) =>
      [...text.matchAll(/var\((--[\w-]+)\)/g)].map(([, name = '']) => ({ file, name })),
    );
    expect(asked.filter(({ name }) => !given.has(name))).toEqual([]);
  });

  test('no page paints with a colour of its own', () => {
    const raw = /['"`](?:#[0-9a-f]{3,8}|rgba?\([\d\s.,/%]+\))['"`]/i;
    const own = tracked
      .filter((file) => /\.tsx?$/.test(file) && file !== 'app/_ui/greys.ts')
      .filter((file) => raw.test(readFileSync(file, 'utf8')));
    expect(own).toEqual([]);
  });
});
