/** The planning sheet, read back by pdf.js: one page with frames, values, planned ladder, or what is missing. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PlanSheet, SheetPicture } from '#server/core/sheet/content.ts';
import { plannedLadder, plannedSteps } from '#server/core/sheet/plan-on-sheet.ts';
import { makeSheet } from '#server/sheet/make-sheet.ts';
import { aPlate } from './a-sheet.ts';
import { greyPage, readPdf } from './read-pdf.ts';

let folder: string;
let photograph: SheetPicture;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'plan-sheet-'));
  photograph = await aPlate(folder, 'photograph', { width: 1500, height: 1000 });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const RUNGS = ['Sky', 'Far ridge', 'Wood', 'Meadow'].map((name, at) => ({
  ...{ name, dark: 70 - at * 18, mid: 78 - at * 18, light: 86 - at * 18, chroma: 5 + at * 4 },
  ...{ strong: 10 + at * 5, warmCool: -6 + at * 5, airDistance: 5 + at * 9 },
}));

const frame = (
  name: string,
  box: SheetPicture['box'],
  count: 2 | 3 | 4 | 5 = 3,
): PlanSheet['frames'][number] => ({
  ...{ name, words: '3:2, canvas 30 × 20, three values', picture: { ...photograph, box } },
  values: { count, cuts: null },
});

function aPlan(): PlanSheet {
  return {
    ...{
      about: 'plan',
      title: 'Plan for “The valley”',
      byline: 'As it stood on 29 November 2026',
      board: 'The valley',
    },
    frames: [
      frame('The massif alone', [0.1, 0.1, 0.9, 0.9]),
      frame('Upright with the tree', [0.4, 0, 0.85, 1], 2),
      frame('Wide', [0, 0.2, 1, 0.95], 5),
    ],
    framesNote: '2 more frames stand on the plan page.',
    ...{ ladder: plannedLadder(RUNGS, null), noLadder: '', air: 'Light, greyed blue-violet.' },
    ...{ steps: plannedSteps(RUNGS), foot: 'From the board “The valley”. Sheet of 29 November 2026.' },
  };
}

const bare = (): PlanSheet => ({
  ...aPlan(),
  ...{ frames: [], framesNote: 'The photograph stays on the board.', ladder: null, steps: [] },
  noLadder: 'No ladder was planned yet. Plan one on the plan page, from the planes of the photograph.',
});

test.each([
  ['three frames and a ladder', aPlan],
  ['nothing yet', bare],
])('with %s it is one page on either paper, within two megabytes, its typeface embedded', async (_, plan) => {
  for (const paper of ['a4', 'letter'] as const) {
    const pdf = await makeSheet({ content: plan(), paper, as: 'pdf' });
    const page = await readPdf(pdf);
    expect(page.pages).toBe(1);
    expect(pdf.byteLength).toBeLessThan(2_000_000);
    for (const { name, embedded } of page.fonts) expect(embedded, name).toBe(true);
    for (const { size, text } of page.texts) expect(size, text).toBeGreaterThanOrEqual(10.99);
  }
});

test('names frames, formats, values, planes, air and steps', async () => {
  const sheet = aPlan();
  const page = await readPdf(await makeSheet({ content: sheet, paper: 'a4', as: 'pdf' }));
  const whole = [
    ...[sheet.title, sheet.byline, sheet.framesNote, sheet.air, sheet.foot],
    ...sheet.frames.flatMap(({ name, words }) => [name, words]),
    ...sheet.steps,
    ...['1 Sky', '2 Far ridge', '3 Wood', '4 Meadow'],
  ];
  for (const words of whole) expect(page.text).toContain(words);
});

test('shows each frame in its own shape, beside its values in as many greys', async () => {
  const pdf = await makeSheet({ content: aPlan(), paper: 'a4', as: 'pdf' });
  const { pictures } = await readPdf(pdf);
  expect(pictures).toHaveLength(6);
  // Boxes of 0.8 × 0.8, 0.45 × 1 and 1 × 0.75 of a photograph of 3:2.
  const aspects = [1.5, (0.45 * 1500) / 1000, 1500 / 750];
  const grey = await greyPage(pdf, 150);
  [3, 2, 5].forEach((count, at) => {
    const [shown, values] = [pictures[at * 2], pictures[at * 2 + 1]];
    if (!shown || !values) throw new Error('A frame has no picture.');
    expect(shown.width / shown.height).toBeCloseTo(aspects[at] ?? 0, 1);
    expect(values.width).toBeCloseTo(shown.width, 1);
    // A line down the middle crosses every value; edges and JPEG leave a few codes between them.
    const codes = Array.from({ length: 200 }, (_, step) => {
      return grey.at(values.x + values.width / 2, values.y + 1 + (step / 200) * (values.height - 2));
    });
    const often = new Map<number, number>();
    for (const code of codes) often.set(Math.round(code / 6), (often.get(Math.round(code / 6)) ?? 0) + 1);
    const greys = [...often.values()].filter((times) => times >= 8).length;
    expect(greys).toBeGreaterThanOrEqual(Math.min(count, 4));
    expect(greys).toBeLessThanOrEqual(count);
  });
});
