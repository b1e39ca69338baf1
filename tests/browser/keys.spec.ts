/**
 * The list of keys against the keys that work: every key it names does something on the board, no other letter or figure
 * does anything, and the list is found by the eye as well as by its key.
 */
import { randomUUID } from 'node:crypto';
import type { Page } from '@playwright/test';
import { putMark } from '#server/core/live/marks.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { setAllowsSketch } from '#server/core/live/remarks.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { RIDGES } from './scenes.ts';
import { aBoard } from './several.ts';
import { aGuest, expect, measuresWhenReady, stageOf, test } from './story.ts';

/** A board on which every key has something to do: planes and figures, a line of a sketch, a mark. */
async function aBusyBoard(server: Parameters<typeof aBoard>[0]) {
  const { id, owner } = await aBoard(server, 'Every key');
  const { pictures } = await server.json<{ pictures: { id: string; kind: string }[] }>(
    owner,
    `/api/boards/${id}`,
  );
  const [reference = '', painting = ''] = ['reference', 'painting'].map(
    (kind) => pictures.find((picture) => picture.kind === kind)?.id,
  );
  await writeInto(server.url, owner, id, 'setup', (doc) => {
    for (const [at, top] of [0, ...RIDGES].entries()) {
      const planeId = randomUUID();
      addPlane(doc, { id: planeId, name: `Plane ${at}`, kind: at === 0 ? 'sky' : 'land', tilt: null });
      putReferenceOutline(doc, reference, planeId, [
        [0, top],
        [1, top],
        [1, 1],
        [0, 1],
      ]);
    }
  });
  await writeInto(server.url, owner, id, `painting/${painting}`, (doc) => setAllowsSketch(doc, true));
  await writeInto(server.url, owner, id, 'marks', (doc) => {
    const said = {
      author: owner.id,
      pictureId: painting,
      text: '',
      planeId: null,
      parent: null,
      at: Date.now(),
    };
    putMark(doc, { ...said, id: 'pin', kind: 'pin', text: 'Here.', points: [[0.3, 0.4]] });
    putMark(doc, {
      ...{
        ...said,
        id: 'sketch',
        kind: 'sketch',
        points: [
          [0.5, 0.4],
          [0.7, 0.5],
        ],
      },
      paint: { hex: '#aeb6c2', width: 0.03, opacity: 0.6 },
    });
  });
  await measuresWhenReady(server, owner, id, painting);
  return { id, owner };
}

/**
 * What the page shows, as far as its own text tells: elements, words, states; not the scripts and style sheets that it
 * fetches once it is at rest. Read until it holds still.
 */
async function shown(page: Page): Promise<string> {
  let last = '';
  await expect(async () => {
    const now = await page.evaluate(() => {
      const copy = document.documentElement.cloneNode(true) as HTMLElement;
      for (const fetched of copy.querySelectorAll('script, link')) fetched.remove();
      return copy.outerHTML;
    });
    const still = now === last;
    last = now;
    expect(still).toBe(true);
  }).toPass({ timeout: 20_000, intervals: [150] });
  return last;
}

async function openAfresh(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(stageOf(page, 'Painting').or(stageOf(page, 'Reference')).locator('img').first()).toBeVisible();
  await expect(page.getByTitle(/on the pictures$/).first()).toBeAttached({ timeout: 45_000 });
}

async function does(page: Page, key: string): Promise<boolean> {
  const before = await shown(page);
  let sheet = false;
  page.once('filechooser', () => {
    sheet = true;
  });
  await page.locator('body').press(key);
  return expect
    .poll(async () => sheet || (await shown(page)) !== before, { timeout: 3_000 })
    .toBe(true)
    .then(
      () => true,
      () => false,
    );
}

async function keysListed(page: Page): Promise<string[]> {
  await page.getByText('More', { exact: true }).click();
  await page.getByRole('button', { name: 'Keys', exact: true }).click();
  const list = page.getByRole('dialog', { name: 'Keys' });
  const listed = await list.locator('dl').first().getByRole('term').allTextContents();
  await page.keyboard.press('Escape');
  return listed.filter((key) => key.length === 1);
}

test('every key of the list does something, and no other does', async ({ browser, server }) => {
  test.setTimeout(300_000);
  const { id } = await aBusyBoard(server);
  const address = `${server.url}/boards/${id}`;
  const wide = await aGuest(await browser.newContext({ reducedMotion: 'reduce' }), server, 'Ilse');
  await openAfresh(wide.page, address);
  const listed = await keysListed(wide.page);
  expect(listed.length).toBeGreaterThan(20);
  expect(new Set(listed).size).toBe(listed.length);

  const idle: string[] = [];
  for (const key of listed) {
    // Looking about is what the hand does at first, so it takes something else before.
    if (key === 'L') await wide.page.locator('body').press('M');
    if (!(await does(wide.page, key))) idle.push(key);
    // What a key opened may take the next one for itself.
    if (['?', 'F', 'C', 'U', 'W'].includes(key)) await openAfresh(wide.page, address);
  }
  // The other picture is one press away only where one picture is shown at a time.
  expect(idle.filter((key) => key !== 'X')).toEqual([]);
  const narrow = await browser.newContext({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  const phone = await aGuest(narrow, server, 'Oda');
  await openAfresh(phone.page, address);
  expect(await does(phone.page, 'X')).toBe(true);
  await narrow.close();

  await openAfresh(wide.page, address);
  const others = [...'abcdefghijklmnopqrstuvwxyz0123456789'].filter(
    (key) => !listed.includes(key.toUpperCase()),
  );
  const before = await shown(wide.page);
  for (const key of others) await wide.page.locator('body').press(key);
  expect(await shown(wide.page), `keys ${others.join(' ')}`).toBe(before);
  await wide.context.close();
});

test('keys of a picture that is gone to: nearer, farther, whole, and moved', async ({ browser, server }) => {
  const { id } = await aBusyBoard(server);
  const { page, context } = await aGuest(await browser.newContext(), server, 'Ilse');
  await openAfresh(page, `${server.url}/boards/${id}`);
  const stage = stageOf(page, 'Painting');
  await stage.focus();
  const box = async () => (await stage.locator('img').first().boundingBox()) ?? { x: 0, width: 0 };
  const whole = await box();
  await page.keyboard.press('+');
  await expect.poll(async () => (await box()).width).toBeGreaterThan(whole.width);
  const near = await box();
  await page.keyboard.press('ArrowRight');
  await expect.poll(async () => (await box()).x).not.toBe(near.x);
  await page.keyboard.press('-');
  await expect.poll(async () => (await box()).width).toBeLessThan(near.width);
  await page.keyboard.press('+');
  await page.keyboard.press('0');
  await expect.poll(async () => (await box()).width).toBeCloseTo(whole.width, 0);
  await context.close();
});
