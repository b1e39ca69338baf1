/**
 * The sheet of a critique, read back by pdf.js and looked at through PDFium: one page, its words, its typeface, its
 * numbers where they belong, and everything still there without colour.
 *
 * Published sources: ISO 216:2007 (A4 is 210 × 297 mm); US Letter is 8.5 × 11 in (ANSI/ASME Y14.1-1995, size A); contrast
 * after WCAG 2.2, success criteria 1.4.3 and 1.4.11, with its relative luminance.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Color from 'colorjs.io';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CritiqueSheet, Paper, SheetPicture } from '#server/core/sheet/content.ts';
import { makeSheet } from '#server/sheet/make-sheet.ts';
import { aCard, aCritique, aLadder, aPlate, aRemark } from './a-sheet.ts';
import { greyPage, type ReadPage, readPdf } from './read-pdf.ts';

const MOST_BYTES = 2_000_000;
const MILLIMETRE = 72 / 25.4;
const SIZES: Record<Paper, [number, number]> = {
  a4: [210 * MILLIMETRE, 297 * MILLIMETRE],
  letter: [8.5 * 72, 11 * 72],
};
const LONG = 'Donaudampfschifffahrtsgesellschaftskapitän '.repeat(8).trim();

let folder: string;
let painting: SheetPicture;
let tall: SheetPicture;
let reference: SheetPicture;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sheet-'));
  painting = await aPlate(folder, 'painting');
  tall = await aPlate(folder, 'tall', { width: 700, height: 1400 });
  reference = await aPlate(folder, 'reference', { width: 1500, height: 1000 });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const usual = () => aCritique(painting, reference);

/** Nine long remarks on one spot, twelve planes, three cards of long words with answers. */
function crowded(): CritiqueSheet {
  const words = (at: number) =>
    at % 2 ? LONG : 'A word about the far ridge and its darks that goes on for a while.';
  return {
    ...aCritique(tall, reference),
    ...{ title: LONG, byline: LONG, intention: LONG.repeat(3), works: LONG, conditions: LONG, foot: LONG },
    capture: { headline: 'Photo of the painting: C', sentence: LONG },
    remarks: Array.from({ length: 9 }, (_, at) => aRemark(at + 1, words(at), [0.5, 0.5])),
    moreRemarks: '31 more remarks stand on the board.',
    cards: ['A', 'B', 'C'].map((letter) => ({
      ...aCard(letter, `Far ridge, darks: lift about half a step; lights: ${LONG}`, [0.5, 0.5]),
      ...{ how: LONG, check: LONG, healthLine: true, answer: `done another way: “${LONG}”` },
    })),
    ladder: aLadder(Array.from({ length: 12 }, (_, at) => `plane with a long name ${at + 1}`)),
  };
}

/** Nothing but the painting. */
function bare(): CritiqueSheet {
  return {
    ...aCritique(painting, null),
    ...{ remarks: [], moreRemarks: 'Nobody has marked the painting.' },
    ...{
      cards: [],
      noCards: 'No adjustments yet. Waiting for planes: outline at least one on the painting.',
    },
    ...{ ladder: null, noLadder: 'No ladder yet. Waiting for planes: outline at least one on the painting.' },
  };
}

async function pdfOf(
  content: CritiqueSheet,
  paper: Paper = 'a4',
): Promise<{ pdf: Uint8Array; page: ReadPage }> {
  const pdf = await makeSheet({ content, paper, as: 'pdf' });
  return { pdf, page: await readPdf(pdf) };
}

const CASES = { usual, crowded, bare };
const PAPERS: Paper[] = ['a4', 'letter'];
const EVERY = Object.entries(CASES).flatMap(([name, content]) =>
  PAPERS.map((paper) => ({ name, paper, content })),
);

describe.each(EVERY)('$name, $paper', ({ paper, content }) => {
  test('is one page of that paper, with everything inside its margins and nothing over anything else', async () => {
    const { pdf, page } = await pdfOf(content(), paper);
    const [width, height] = SIZES[paper];
    expect(page.pages).toBe(1);
    expect(page.width).toBeCloseTo(width, 1);
    expect(page.height).toBeCloseTo(height, 1);
    expect(pdf.byteLength).toBeLessThan(MOST_BYTES);
    for (const { x, y, width: wide, text } of page.texts) {
      expect(x, text).toBeGreaterThan(24);
      expect(x + wide, text).toBeLessThan(width - 24);
      expect(y, text).toBeLessThan(height - 24);
    }
    expect(overlapping(page)).toEqual([]);
  });

  test('has its typeface embedded and no letter smaller than 11 points', async () => {
    const { page } = await pdfOf(content(), paper);
    expect(page.fonts.length).toBeGreaterThan(0);
    for (const { name, embedded } of page.fonts) {
      expect(embedded, name).toBe(true);
      expect(name).toMatch(/SourceSans3/);
    }
    for (const { size, text } of page.texts) expect(size, text).toBeGreaterThanOrEqual(10.99);
  });

  test('every text stands out from its ground without colour', async () => {
    const { pdf, page } = await pdfOf(content(), paper);
    const grey = await greyPage(pdf, 200);
    for (const { text, x, y, width, size } of page.texts) {
      const box = { x, y: y - size * 0.7, width, height: size * 0.7 };
      const [dark, light] = [grey.darkest(box), lightest(grey, box)];
      expect(contrast(dark, light), text).toBeGreaterThan(4.5);
    }
  });
});

type Box = Parameters<Awaited<ReturnType<typeof greyPage>>['darkest']>[0];

function lightest({ at }: Awaited<ReturnType<typeof greyPage>>, box: Box): number {
  let found = 0;
  for (let y = box.y; y <= box.y + box.height; y += 0.36)
    for (let x = box.x; x <= box.x + box.width; x += 0.36) found = Math.max(found, at(x, y));
  return found;
}

/** WCAG 2.2: (L1 + 0.05) / (L2 + 0.05), with the luminance of sRGB. */
function contrast(one: number, two: number): number {
  const luminance = (code: number) =>
    new Color('srgb', [code / 255, code / 255, code / 255]).get('xyz-d65.y') + 0.05;
  const [a, b] = [luminance(one), luminance(two)];
  return Math.max(a, b) / Math.min(a, b);
}

/** Texts that lie over one another by more than a rounding, but for signs on the painting that moved aside. */
function overlapping({ texts }: ReadPage): string[] {
  const boxes = texts.map(({ text, x, y, width, size }) => ({
    text,
    ...{ left: x + 0.5, right: x + width - 0.5, top: y - size * 0.68, bottom: y },
  }));
  return boxes.flatMap((one, at) =>
    boxes.slice(at + 1).flatMap((two) => {
      const across = Math.min(one.right, two.right) - Math.max(one.left, two.left);
      const down = Math.min(one.bottom, two.bottom) - Math.max(one.top, two.top);
      return across > 0.5 && down > 0.5 ? [`${one.text} | ${two.text}`] : [];
    }),
  );
}

test('all its words can be read out: title, intention, conditions, grade, what works, cards, checks, remarks, planes', async () => {
  const sheet = usual();
  const { page } = await pdfOf(sheet);
  const whole = [
    ...[sheet.title, sheet.byline, sheet.intention, sheet.conditions, sheet.works, sheet.foot],
    ...[sheet.capture.headline, sheet.capture.sentence, 'Reference: R. Halden, CC BY 4.0'],
    ...sheet.cards.flatMap(({ headline, how, check }) => [headline, how, `To check: ${check}`]),
    ...sheet.remarks.map(({ who, words }) => `${who}: ${words}`),
    ...['1 Sky', '2 Far ridge', '3 Massif', '4 Wood', '5 Meadow', 'reference', 'painting'],
  ];
  for (const words of whole) expect(page.text).toContain(words);
});

test('the health line stands once where a card hints at a mixture, and nowhere else', async () => {
  const line = 'Follow the product label, its safety data sheet and local rules.';
  const hinting = await pdfOf(usual());
  expect(hinting.page.text.split(line)).toHaveLength(2);
  const plain = usual();
  const { page } = await pdfOf({
    ...plain,
    cards: plain.cards.map((card) => ({ ...card, healthLine: false })),
  });
  expect(page.text).not.toContain(line);
});

test('numbers and letters stand on the painting beside what they are about, none over another', async () => {
  const sheet = usual();
  const { page } = await pdfOf(sheet);
  const [picture] = [...page.pictures].sort((one, two) => two.width - one.width);
  if (!picture) throw new Error('There is no picture on the page.');
  const inside = page.texts.filter(({ x, y }) => {
    return x > picture.x && x < picture.x + picture.width && y > picture.y && y < picture.y + picture.height;
  });
  const wanted = new Map([
    ...sheet.remarks.map(({ number, at }) => [String(number), at] as const),
    ...sheet.cards.flatMap(({ letter, at }) => (at ? [[letter, at] as const] : [])),
  ]);
  expect(inside.map(({ text }) => text).sort()).toEqual([...wanted.keys()].sort());
  const middles = inside.map(({ text, x, y, width, size }) => ({
    text,
    x: x + width / 2,
    y: y - size * 0.33,
  }));
  for (const { text, x, y } of middles) {
    const [u, v] = wanted.get(text) ?? [0, 0];
    // Within 30 points, about 1 cm, of what it is about.
    expect(Math.hypot(picture.x + u * picture.width - x, picture.y + v * picture.height - y)).toBeLessThan(
      30,
    );
  }
  middles.forEach((one, at) => {
    for (const two of middles.slice(at + 1))
      expect(Math.hypot(one.x - two.x, one.y - two.y)).toBeGreaterThanOrEqual(18);
  });
});

test('the painting is whole, undistorted and larger than the reference', async () => {
  const { page } = await pdfOf(usual());
  const [large, small] = [...page.pictures].sort((one, two) => two.width - one.width);
  expect((large?.width ?? 0) / (large?.height ?? 1)).toBeCloseTo(4 / 3, 2);
  expect((small?.width ?? 0) / (small?.height ?? 1)).toBeCloseTo(3 / 2, 2);
  expect(large?.width).toBeGreaterThan(2 * (small?.width ?? 0));
});

test('the ladder keeps its values on a printer without colours: ten greys that climb, bars as light as their planes', async () => {
  const { pdf, page } = await pdfOf(usual());
  const grey = await greyPage(pdf, 200);
  const ten = page.texts.find(({ text }) => text === '10');
  const zero = page.texts.find(({ text, x }) => text === '0' && ten && x < ten.x + 20);
  if (!ten || !zero) throw new Error('The axis has no numerals.');
  // The greys stand right of the numerals; a numeral stands 4 points below its line.
  const [top, bottom] = [ten.y - 4, zero.y - 4];
  const greys = Array.from({ length: 10 }, (_, step) => {
    return grey.at(ten.x + ten.width + 8, bottom - ((step + 0.5) * (bottom - top)) / 10);
  });
  greys.forEach((code, step) => {
    if (step > 0) expect(code - (greys[step - 1] ?? 0)).toBeGreaterThan(10);
  });
  // The middle of the nearest plane's bar: painted at L* 12 (20 − 8), in its own grey.
  const meadow = page.texts.find(({ text }) => text === '5 Meadow');
  const sky = page.texts.find(({ text }) => text === '1 Sky');
  if (!meadow || !sky) throw new Error('The planes have no names.');
  const middle = (text: typeof meadow) => text.x + text.width / 2;
  const column = (middle(meadow) - middle(sky)) / 4;
  const y = bottom - 0.12 * (bottom - top);
  const seen = grey.at(middle(meadow) + 0.15 * column, y);
  expect(new Color('srgb', [seen / 255, seen / 255, seen / 255]).get('lab-d65.l')).toBeGreaterThan(5);
  expect(new Color('srgb', [seen / 255, seen / 255, seen / 255]).get('lab-d65.l')).toBeLessThan(20);
});

test('letters of other scripts are set where the typeface has them, and what it lacks is said', async () => {
  const title = 'Über Łódź, Ještěd, Αθήνα, Москва, Đà Nẵng';
  const known = await pdfOf({ ...usual(), title });
  expect(known.page.text).toContain(title);
  expect(known.page.text).not.toContain('[…]');
  const other = await pdfOf({ ...usual(), title: '山水 in the morning' });
  expect(other.page.text).toContain('[…] in the morning');
  expect(other.page.text).toContain('letters are not in the typeface');
});

test('as a picture it is the same page at 200 dots an inch, on white, in greys where nothing is coloured', async () => {
  const png = await makeSheet({ content: usual(), paper: 'a4', as: 'png' });
  const { width, height, density, format } = await sharp(png).metadata();
  expect(format).toBe('png');
  expect(density).toBe(200);
  // PDFium draws whole points, so up to one point (three dots) may be missing at the edge.
  expect(Math.abs((width ?? 0) - (210 / 25.4) * 200)).toBeLessThan(3);
  expect(Math.abs((height ?? 0) - (297 / 25.4) * 200)).toBeLessThan(3);
  expect(png.byteLength).toBeLessThan(MOST_BYTES);
  // The lower right of the page: remarks, in black on white.
  const { data } = await sharp(png)
    .extract({ left: 900, top: 1650, width: 700, height: 400 })
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  let coloured = 0;
  let dark = 0;
  for (let at = 0; at < data.length; at += 3) {
    const [red = 0, green = 0, blue = 0] = data.subarray(at, at + 3);
    if (Math.max(red, green, blue) - Math.min(red, green, blue) > 2) coloured++;
    if (red < 100) dark++;
  }
  expect(coloured).toBe(0);
  expect(dark).toBeGreaterThan(1000);
});

test('a painting full of grain stays within two megabytes, as PDF and as PNG', async () => {
  const grainy = await aPlate(folder, 'grainy', { width: 2048, height: 1536, grain: 90 });
  for (const as of ['pdf', 'png'] as const) {
    const bytes = await makeSheet({ content: aCritique(grainy, grainy), paper: 'a4', as });
    expect(bytes.byteLength, as).toBeLessThan(MOST_BYTES);
  }
});
