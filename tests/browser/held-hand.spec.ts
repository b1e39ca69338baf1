/** What is dragged and pressed before a tool's script has come moves no picture, and is done once the script is there. */
import type { Page } from '@playwright/test';
import { REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

/** Begins a line on the reference; the button stays pressed. */
async function beginLine(page: Page, y: number): Promise<void> {
  const stage = stageOf(page, 'Reference');
  const [from, to] = [await placeOn(stage, 0.3, y), await placeOn(stage, 0.5, y)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 5 });
}

/** Which place of the picture stands in the middle of its window, in shares; the window itself changes with the bar below. */
async function inTheMiddle(page: Page): Promise<{ x: number; y: number }> {
  const stage = stageOf(page, 'Reference');
  const [window, picture] = [await stage.boundingBox(), await stage.locator('img').first().boundingBox()];
  if (!window || !picture) throw new Error('The picture is not on the screen.');
  const share = (from: number, length: number, start: number, size: number) =>
    Math.round((100 * (from + length / 2 - start)) / size) / 100;
  return {
    x: share(window.x, window.width, picture.x, picture.width),
    y: share(window.y, window.height, picture.y, picture.height),
  };
}

test('a drag begun before its tool is there moves no picture, and its mark is made', async ({
  guest,
  server,
}) => {
  const { page, who, troubles } = await guest('Dorte');
  const board = await makeBoard(server, who, 'Hands that are held');
  const wide = await sceneFile({ name: 'wide', bands: REFERENCE_BANDS, widthPx: 1000, heightPx: 500 });
  await postPicture(server, who, board.id, wide, { kind: 'reference', rights: 'mine' });
  // A browser that is never idle fetches nothing beforehand.
  await page.addInitScript(() => {
    window.requestIdleCallback = () => 0;
  });
  await page.goto(`${server.url}/boards/${board.id}`);
  const stage = stageOf(page, 'Reference');
  const picture = stage.locator('img').first();
  await expect(picture).toBeVisible();
  // Closer, so that a drag would move it.
  await stage.focus();
  await expect(async () => {
    const before = await picture.boundingBox();
    await page.keyboard.press('+');
    expect((await picture.boundingBox())?.width).toBeGreaterThan(before?.width ?? 0);
  }).toPass();
  const stands = await inTheMiddle(page);

  let letCome = () => {};
  const come = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  let asked = 0;
  await page.route(/\/_next\/.*\.js/, async (route) => {
    asked += 1;
    await come;
    await route.continue();
  });
  await page.keyboard.press('d');
  await expect.poll(() => asked).toBeGreaterThan(0);
  await beginLine(page, 0.45);
  await page.mouse.up();
  await beginLine(page, 0.55);
  expect(await inTheMiddle(page)).toEqual(stands);
  const lines = stage.locator('g[data-line]');
  await expect(lines).toHaveCount(0);

  letCome();
  await expect(lines).toHaveCount(1);
  await page.mouse.up();
  await expect(lines).toHaveCount(2);
  expect(await inTheMiddle(page)).toEqual(stands);
  expect(troubles).toEqual([]);
});
