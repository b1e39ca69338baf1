import { chromium } from '@playwright/test';
import sharp from 'sharp';
import { longestTask } from '../bench/longest-task.ts';
import { barriersOf } from './barriers.ts';
import {
  aPhotographed,
  apart,
  drag,
  every,
  litPicture,
  middleOf,
  openPart,
  PAINTED,
  PHOTOGRAPH,
  pixelsOf,
  share,
  until,
} from './planned-picture.ts';
import { aGuest, expect, test } from './story.ts';

test.describe.configure({ timeout: 300_000 });

test('the photograph is seen in its planned light while handles move, beside itself, and alone by one key', async ({
  guest,
  server,
  browser,
}) => {
  const { page, who, troubles } = await guest('Ragna');
  const { boardId, photographId, address } = await aPhotographed(server, who, 'In its light');
  await openPart(page, address, 'Ladder');
  await expect(litPicture(page)).toHaveAttribute('data-by', /webgl|plain/, PAINTED);
  const size = await sharp(PHOTOGRAPH).metadata();
  const original = await sharp(PHOTOGRAPH).removeAlpha().raw().toBuffer();
  const photograph = every(original, size.width * size.height);
  // The usual air moves the distance; the nearest plane keeps its light.
  const first = await until(page, (codes) => {
    const off = apart(codes, photograph);
    expect(share(off, 0.9)).toBeGreaterThan(5);
    expect(share(off, 0.1)).toBeLessThan(2);
  });

  const handle = page.getByRole('slider', { name: /^Middle of firs/ });
  const { longestMs } = await longestTask(browser, page, async () => {
    await handle.scrollIntoViewIfNeeded();
    const box = await handle.boundingBox();
    if (!box) throw new Error('The handle is not on the screen.');
    await drag(page, { x: box.x + box.width / 2, y: box.y + box.height / 2 }, [0, -40]);
  });
  process.stdout.write(`  longest task of the page while a handle is dragged: ${longestMs.toFixed(0)} ms\n`);
  await until(page, (codes) => expect(share(apart(codes, first), 0.8)).toBeGreaterThan(3));

  const edge = page.getByRole('slider', { name: 'Edge between photograph and plan' });
  await drag(page, await middleOf(page, 'Edge between photograph and plan', 'slider'), [-200, 0]);
  const pulled = Number(await edge.getAttribute('aria-valuenow'));
  expect(pulled).toBeLessThan(40);
  await edge.focus();
  await page.keyboard.press('ArrowRight');
  await expect(edge).toHaveAttribute('aria-valuenow', String(pulled + 2));
  await page.keyboard.press('Home');
  await expect(edge).toHaveAttribute('aria-valuenow', '0');

  await page.keyboard.press('o');
  await expect(litPicture(page)).toBeHidden();
  await page.keyboard.press('o');
  await expect(litPicture(page)).toBeVisible();
  expect(await barriersOf(page)).toEqual([]);

  // The server makes the same picture at the size of its plate; this one is no larger than the page's own copy.
  await expect(async () => {
    const shown = await pixelsOf(page);
    const response = await server.call(who, `/api/boards/${boardId}/plan/${photographId}/preview`);
    expect(response.status).toBe(200);
    const made = await sharp(Buffer.from(await response.arrayBuffer()))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([made.info.width, made.info.height]).toEqual([shown.width, shown.height]);
    const codes = every(made.data, made.info.width * made.info.height);
    expect(share(apart(shown.codes, codes), 0.5)).toBeLessThan(2);
  }).toPass(PAINTED);
  expect(troubles).toEqual([]);
});

test('with WebGL and without it the picture is the same within 1 dE00', async ({ server }) => {
  const who = await server.enter('Tove');
  const { address } = await aPhotographed(server, who, 'Twice the same');
  const painted: Record<string, number[]> = {};
  for (const args of [
    ['--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
    ['--disable-gpu', '--disable-software-rasterizer'],
  ]) {
    const { executablePath } = test.info().project.use.launchOptions ?? {};
    const own = await chromium.launch({
      ...(executablePath ? { executablePath } : {}),
      args: ['--no-sandbox', ...args],
    });
    const { page } = await aGuest(
      await own.newContext({ viewport: { width: 1440, height: 900 } }),
      server,
      'Tove',
    );
    await openPart(page, address, 'Ladder');
    await expect(litPicture(page)).toHaveAttribute('data-by', /webgl|plain/, PAINTED);
    const by = (await litPicture(page).getAttribute('data-by')) ?? '';
    await until(page, (codes) => expect(Math.max(...codes)).toBeGreaterThan(0));
    painted[by] = (await pixelsOf(page, 31)).codes;
    await own.close();
  }
  expect(Object.keys(painted).sort()).toEqual(['plain', 'webgl']);
  const off = apart(painted.plain ?? [], painted.webgl ?? []);
  process.stdout.write(`  WebGL against the plain code: at most ${off.at(-1)?.toFixed(2)} dE00\n`);
  expect(off.at(-1)).toBeLessThanOrEqual(1);
});
