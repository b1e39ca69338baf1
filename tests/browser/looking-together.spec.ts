/** Looking together in real browsers: whoever looks with somebody sees the same spot on a screen of any size. */
import type { Browser, Page } from '@playwright/test';
import type { AServer } from '#tests/helpers/a-server.ts';
import { barriersOf } from './barriers.ts';
import { aBoard, aWindow, openBoard, sayAt } from './several.ts';
import { expect, placeOn, stageOf, test } from './story.ts';

// Three browsers.
test.describe.configure({ timeout: 240_000 });

/** Where the picture is seen in part: in the middle of its window. */
async function sayMidWindow(page: Page, text: string) {
  const stage = stageOf(page, 'Painting');
  await sayAt(
    page,
    async () => {
      const box = await stage.boundingBox();
      if (!box) throw new Error('The painting is not on the screen.');
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    },
    text,
  );
}

/** Which point of the painting stands mid-window, and how much of its width is seen; 0..1. */
async function seenOn(page: Page) {
  const stage = stageOf(page, 'Painting');
  const [window, picture] = [await stage.boundingBox(), await stage.locator('img').first().boundingBox()];
  if (!window || !picture) throw new Error('The painting is not on the screen.');
  return {
    x: (window.x + window.width / 2 - picture.x) / picture.width,
    y: (window.y + window.height / 2 - picture.y) / picture.height,
    share: window.width / picture.width,
  };
}

/** The same once the sheet is laid out anew, a moment after the hand rests: until then it is only drawn larger. */
async function seenAtRest(page: Page) {
  let last = await seenOn(page);
  await expect(async () => {
    const before = last;
    await page.waitForTimeout(300);
    last = await seenOn(page);
    expect(last).toEqual(before);
  }).toPass({ timeout: 15_000 });
  return last;
}

async function zoomIn(page: Page, x: number, y: number, turns = 4) {
  const at = await placeOn(stageOf(page, 'Painting'), x, y);
  await page.mouse.move(at.x, at.y);
  for (let turn = 0; turn < turns; turn++) await page.mouse.wheel(0, -240);
}

/** Waits until both see the same spot of the painting. */
async function sameSpot(one: Page, two: Page) {
  await expect(async () => {
    const [a, b] = [await seenOn(one), await seenOn(two)];
    expect(Math.abs(a.x - b.x)).toBeLessThan(0.02);
    expect(Math.abs(a.y - b.y)).toBeLessThan(0.02);
    expect(a.share).toBeLessThan(0.9);
  }).toPass({ timeout: 15_000 });
}

async function threeScreens(browser: Browser, server: AServer, title: string) {
  const { id, owner, invite } = await aBoard(server, title);
  const token = await invite('peer');
  const host = await aWindow(browser, owner, server.url);
  const peer = await aWindow(browser, await server.enter('Pia', token), server.url, {
    width: 1100,
    height: 760,
  });
  const phone = await aWindow(browser, await server.enter('Nils', token), server.url, {
    width: 390,
    height: 844,
  });
  for (const { page } of [host, peer, phone]) await openBoard(page, server.url, id);
  const end = async () => {
    for (const { context } of [host, peer, phone]) await context.close().catch(() => {});
  };
  return { host: host.page, peer: peer.page, phone: phone.page, end };
}

test('who looks with somebody sees the same spot in the same way, until their own hand moves', async ({
  browser,
  server,
}) => {
  const { host, peer, end } = await threeScreens(browser, server, 'Four eyes');
  await peer.getByRole('button', { name: 'Look with Hedda' }).click();
  await expect(peer.getByText('You look with Hedda.')).toBeVisible();
  await expect(host.getByText('Pia looks with you.')).toBeVisible();
  await zoomIn(host, 0.45, 0.5);
  await sameSpot(host, peer);
  await host.keyboard.press('s');
  await expect(peer.getByRole('button', { name: /^Squint/ })).toHaveAttribute('aria-pressed', 'true');
  await host.keyboard.press('r');
  await expect(peer.getByText('Mirrored', { exact: false }).first()).toBeVisible();
  await sameSpot(host, peer);
  // Marking does not let go; moving the picture does.
  await sayMidWindow(peer, 'Seen together.');
  await expect(peer.getByText('You look with Hedda.')).toBeVisible();
  await peer.getByRole('button', { name: 'Whole picture' }).click();
  await expect(peer.getByText('You look with Hedda.')).toHaveCount(0);
  await expect(host.getByText('Pia looks with you.')).toHaveCount(0);
  const before = await seenAtRest(peer);
  await zoomIn(host, 0.5, 0.5, 2);
  await host.keyboard.press('g');
  await expect(host.getByRole('button', { name: /^Grey/ })).toHaveAttribute('aria-pressed', 'true');
  expect(await seenOn(peer)).toEqual(before);
  await expect(peer.getByRole('button', { name: /^Grey/ })).toHaveAttribute('aria-pressed', 'false');
  await end();
});

test('everybody is brought to a view, may let go, and stays where they were when the other one leaves', async ({
  browser,
  server,
}) => {
  const { host, peer, phone, end } = await threeScreens(browser, server, 'All together');
  await zoomIn(host, 0.5, 0.5);
  await host.getByRole('button', { name: 'Bring everybody' }).click();
  for (const page of [peer, phone]) {
    await expect(page.getByText('Hedda shows everybody something: you look with them.')).toBeVisible();
    await sameSpot(host, page);
  }
  await expect(host.getByText('Nils and Pia look with you.')).toBeVisible();
  await peer.keyboard.press('Escape');
  await expect(peer.getByText(/you look with them/)).toHaveCount(0);
  await host.getByRole('button', { name: 'Whole picture' }).click();
  await zoomIn(host, 0.35, 0.5);
  await sameSpot(host, phone);
  await expect(peer.getByText(/you look with them/)).toHaveCount(0);
  await host.getByRole('button', { name: 'Bring them again' }).click();
  await expect(peer.getByText(/you look with them/)).toBeVisible();
  await sameSpot(host, peer);

  for (const page of [host, peer, phone]) expect(await barriersOf(page)).toEqual([]);

  // Marks are put away on every screen by one tap, and the marking is closed.
  await sayMidWindow(host, 'A mark for all.');
  const pins = stageOf(peer, 'Painting').locator('[data-mark]');
  await expect(pins).toHaveCount(1);
  await host.getByRole('button', { name: 'Quiet the marks' }).click();
  await expect(pins).toHaveCount(0);
  await expect(peer.getByText('The marks are put away on every screen just now.')).toBeVisible();
  await host.getByRole('button', { name: 'Quiet the marks' }).click();
  await expect(pins).toHaveCount(1);
  await host.getByRole('button', { name: 'Close the marking' }).click();
  await expect(peer.getByText('The marking is closed just now: look, and talk.')).toBeVisible();

  await phone.getByRole('button', { name: 'Ask to speak' }).click();
  await expect(peer.getByText('Nils would like to speak.')).toBeVisible();
  await peer.getByRole('button', { name: 'Ask to speak' }).click();
  await expect(host.getByText('Nils and Pia would like to speak.')).toBeVisible();
  await host.getByRole('button', { name: 'Thank Nils' }).click();
  await expect(phone.getByText('You asked to speak.')).toHaveCount(0);
  await peer.getByRole('button', { name: 'Take it back' }).click();
  await expect(host.getByText(/would like to speak/)).toHaveCount(0);

  const before = await seenOn(peer);
  await host.context().close();
  await expect(peer.getByText('Hedda is not here any more. What you see stays as it was.')).toBeVisible();
  const after = await seenOn(peer);
  expect(Math.abs(after.x - before.x)).toBeLessThan(0.01);
  expect(after.share).toBeCloseTo(before.share, 2);
  await end();
});
