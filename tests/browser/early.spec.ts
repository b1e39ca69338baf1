/** What is pressed, typed or sent before the page's own script has come is done once it has. */
import type { Page } from '@playwright/test';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, postPicture, test } from './story.ts';

/** Keeps the page's scripts back; the returned function lets them come. */
async function withoutScripts(page: Page): Promise<() => Promise<void>> {
  let letCome = () => {};
  const come = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  await page.route(/\/_next\/.*\.js/, async (route) => {
    await come;
    await route.continue();
  });
  return async () => {
    letCome();
    await page.waitForLoadState('load');
  };
}

test('a button pressed before the page is alive does its work once, when it is', async ({
  guest,
  server,
}) => {
  const { page, troubles } = await guest('Runa');
  const scriptsCome = await withoutScripts(page);
  await page.goto(server.url, { waitUntil: 'commit' });
  const opens = page.getByRole('button', { name: 'New board' }).first();
  // An impatient hand presses more than once.
  await opens.click();
  await opens.click();
  await expect(page.getByLabel('What is the scene?')).toHaveCount(0);
  await scriptsCome();
  await expect(page.getByLabel('What is the scene?')).toBeVisible();
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await opens.click();
  await expect(page.getByRole('dialog')).toHaveCount(1);
  expect(troubles).toEqual([]);
});

test('a name typed and sent before the page is alive enters under that name', async ({ browser, server }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const scriptsCome = await withoutScripts(page);
  const link = `${server.url}/enter?key=${server.hostKey}`;
  await page.goto(link, { waitUntil: 'commit' });
  await page.getByLabel('Your name').fill('Ilse the early');
  await page.getByRole('button', { name: 'Enter' }).click();
  // Nothing was sent as an address, where the key would be lost.
  expect(page.url()).toBe(link);
  await scriptsCome();
  await expect(page.getByRole('heading', { name: 'Boards', level: 1 })).toBeVisible();
  await expect(page.getByText('Ilse the early').first()).toBeVisible();
  await context.close();
});

test('keys pressed before a board is alive do their work in their order', async ({ guest, server }) => {
  const { page, who, troubles } = await guest('Asta');
  const board = await makeBoard(server, who, 'Early at the keys');
  const wide = await sceneFile({ name: 'wide', bands: REFERENCE_BANDS, widthPx: 1000, heightPx: 500 });
  await postPicture(server, who, board.id, wide, { kind: 'reference', rights: 'mine' });
  const scriptsCome = await withoutScripts(page);
  await page.goto(`${server.url}/boards/${board.id}`, { waitUntil: 'commit' });
  await expect(page.getByRole('application').locator('img').first()).toBeVisible();
  // Squint twice is no squint.
  for (const key of 'ogssm') await page.keyboard.press(key);
  await scriptsCome();
  for (const [name, pressed] of [
    [/^Mark/, 'true'],
    [/^Grey/, 'true'],
    [/^Squint/, 'false'],
    [/^Outline( O)?$/, 'false'],
  ] as const)
    await expect(page.getByRole('button', { name }).first()).toHaveAttribute('aria-pressed', pressed);
  expect(troubles).toEqual([]);
});

test('a picture stands on the easel before the page is alive, where it stays', async ({ guest, server }) => {
  const { page, who } = await guest('Odo');
  const board = await makeBoard(server, who, 'Early on the marsh');
  const upright = await sceneFile({ name: 'upright', bands: PAINTING_BANDS, widthPx: 700, heightPx: 900 });
  const wide = await sceneFile({ name: 'wide', bands: REFERENCE_BANDS, widthPx: 1000, heightPx: 500 });
  await postPicture(server, who, board.id, wide, { kind: 'reference', rights: 'mine' });
  await postPicture(server, who, board.id, upright, { kind: 'painting' });
  const scriptsCome = await withoutScripts(page);
  await page.goto(`${server.url}/boards/${board.id}`, { waitUntil: 'commit' });
  const pictures = page.getByRole('application').locator('img');
  await expect(pictures).toHaveCount(2);
  await wholeInItsWindow(page, 0, 2);
  await wholeInItsWindow(page, 1, 700 / 900);
  await scriptsCome();
  // The script lays each sheet by its own figures.
  for (const at of [0, 1])
    await expect(pictures.nth(at).locator('xpath=ancestor::*[contains(@style,"translate")]')).toHaveCount(1);
  await wholeInItsWindow(page, 0, 2);
  await wholeInItsWindow(page, 1, 700 / 900);
});

/** The picture stands as large as its window lets it, in the middle. @param ratio Its width to its height. */
async function wholeInItsWindow(page: Page, at: number, ratio: number): Promise<void> {
  const window = page.getByRole('application').nth(at);
  await expect(async () => {
    const [box, picture] = [await window.boundingBox(), await window.locator('img').first().boundingBox()];
    if (!box || !picture) throw new Error('The picture is not on the screen.');
    const width = Math.min(box.width, box.height * ratio);
    expect(width).toBeGreaterThan(200);
    const off = [
      picture.width - width,
      picture.height - width / ratio,
      picture.x + picture.width / 2 - box.x - box.width / 2,
      picture.y + picture.height / 2 - box.y - box.height / 2,
    ];
    expect(off.map((px) => Math.round(px) + 0)).toEqual([0, 0, 0, 0]);
  }).toPass({ timeout: 15_000 });
}
