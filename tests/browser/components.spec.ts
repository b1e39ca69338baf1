/** The page of shared parts: for the host alone, without barriers on each grey, calm and whole where the system asks. */
import type { Page } from '@playwright/test';
import type { InviteView } from '#server/core/contract/responses.ts';
import { barriersOf } from './barriers.ts';
import { expect, makeBoard, test } from './story.ts';

/** What sticks out of the window sideways, px; none = 0. */
function overhang(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

test('the host sees every shared part without a barrier on each grey, and at twice the size nothing sticks out', async ({
  guest,
  server,
}) => {
  const { page } = await guest('Sunniva');
  await page.goto(`${server.url}/components`);
  for (const surround of ['Dark grey', 'Light grey', 'Middle grey']) {
    await page.getByRole('button', { name: surround, exact: true }).click();
    await expect(page.getByRole('button', { name: surround, exact: true })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    expect(await barriersOf(page), surround).toEqual([]);
  }
  // 1,280 px wide at 200 % are 640 CSS pixels (WCAG 2.2, 1.4.4); 320 px is what 1.4.10 asks to reflow to.
  for (const width of [640, 320]) {
    await page.setViewportSize({ width, height: 800 });
    expect(await overhang(page), `${width} px`).toBe(0);
  }
});

test('leaves are turned by arrow keys, and a dialog gives the focus back', async ({ guest, server }) => {
  const { page } = await guest('Torleif');
  await page.goto(`${server.url}/components`);
  await page.getByRole('tab', { name: 'Talk' }).focus();
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('tab', { name: 'Photo' })).toBeFocused();
  await expect(page.getByRole('tabpanel')).toHaveText('What lies under “Photo”.');
  const opens = page.getByRole('button', { name: 'Open a sheet over the page' });
  await opens.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(opens).toBeFocused();
});

test('where motion is unwelcome nothing takes time, and forced colours keep what is chosen apart', async ({
  guest,
  server,
}) => {
  const { page } = await guest('Magnhild');
  await page.emulateMedia({ reducedMotion: 'reduce', forcedColors: 'active' });
  await page.goto(`${server.url}/components`);
  const moving = await page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((element) => {
        const { transitionDuration, animationName, animationDuration } = getComputedStyle(element);
        const lasts = (time: string) => time.split(',').some((each) => Number.parseFloat(each) > 0);
        return lasts(transitionDuration) || (animationName !== 'none' && lasts(animationDuration));
      }).length,
  );
  expect(moving).toBe(0);
  const paint = (name: string) =>
    page
      .getByRole('button', { name, exact: true })
      .evaluate((element) => getComputedStyle(element).backgroundColor);
  expect(await paint('Middle grey')).not.toBe(await paint('Dark grey'));
});

test('nobody but the host finds the page', async ({ guest, browser, server }) => {
  const { who } = await guest('Eilif');
  const board = await makeBoard(server, who, 'A ford in spring');
  const { token } = await server.json<InviteView>(who, `/api/boards/${board.id}/invites`, 'POST', {
    role: 'teacher',
    hours: 1,
  });
  const teacher = await guest('Jorid', token);
  expect((await teacher.page.goto(`${server.url}/components`))?.status()).toBe(404);
  const stranger = await (await browser.newContext()).newPage();
  expect((await stranger.goto(`${server.url}/components`))?.status()).toBe(404);
  await stranger.context().close();
});
