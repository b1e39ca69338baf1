/**
 * Bad lines and looking together, in real browsers: nothing is lost over a minute without a line, what was made offline
 * outlives its page, what was refused leaves no ghost, copies go with access; and whoever looks with somebody sees the
 * same spot on a screen of any size.
 */
import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { aLineTo, type BadLine } from './bad-line.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

// Two or three browsers, and lines that are tried again only after a while.
test.describe.configure({ timeout: 240_000 });

const BACK = { timeout: 45_000 };

async function aBoard(server: AServer, title: string) {
  const owner = await server.enter('Hedda');
  const { id } = await makeBoard(server, owner, title);
  const reference = await sceneFile({ name: 'line-reference', bands: REFERENCE_BANDS });
  await postPicture(server, owner, id, reference, { kind: 'reference', rights: 'mine' });
  const painting = await sceneFile({ name: 'line-painting', bands: PAINTING_BANDS });
  await postPicture(server, owner, id, painting, { kind: 'painting' });
  const invite = async (role: string) => {
    const body = { role, hours: 2 };
    return (await server.json<{ token: string }>(owner, `/api/boards/${id}/invites`, 'POST', body)).token;
  };
  return { id, owner, invite };
}

async function troublesOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join('; ')}`);
}

/** A browser of somebody who entered before, on a line of its own choice. */
async function aWindow(browser: Browser, who: Entered, url: string, viewport = { width: 1440, height: 900 }) {
  const context = await browser.newContext({ viewport });
  const [name = '', ...value] = who.cookie.split('=');
  await context.addCookies([{ name, value: value.join('='), url }]);
  return { context, page: await context.newPage() };
}

async function openBoard(page: Page, url: string, boardId: string) {
  await page.goto(`${url}/boards/${boardId}`);
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
}

async function say(page: Page, x: number, text: string) {
  await sayAt(page, () => placeOn(stageOf(page, 'Painting'), x, 0.4), text);
}

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

async function sayAt(page: Page, place: () => Promise<{ x: number; y: number }>, text: string) {
  await page.getByRole('button', { name: /^Mark/ }).first().click();
  const at = await place();
  await page.mouse.click(at.x, at.y);
  await page.getByLabel('What do you see here?').fill(text);
  await page.getByRole('button', { name: 'Say it' }).click();
  await expect(page.getByText(text).first()).toBeVisible();
}

/** The first remark of the list, opened; its author changes the words. */
async function rewrite(page: Page, text: string) {
  const remark = page.locator('[data-remark]').first();
  const number = remark.getByRole('button').first();
  // One's own newest remark is open already.
  if ((await number.getAttribute('aria-expanded')) !== 'true') await number.click();
  await remark.getByRole('button', { name: 'Change the words' }).click();
  await remark.getByRole('textbox', { name: 'Change the words' }).fill(text);
  await remark.getByRole('button', { name: 'Keep' }).click();
}

/** Names of the copies that this browser keeps. */
const copiesIn = (page: Page) =>
  page.evaluate(async () => {
    const databases = await indexedDB.databases();
    const keys = Array.from({ length: localStorage.length }, (_, at) => localStorage.key(at) ?? '');
    const names = [...databases.map(({ name }) => name ?? ''), ...keys];
    return names.filter((name) => name.startsWith('veilstep-copy/'));
  });

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

test('a line frozen for a minute comes back with nothing lost, on either side', async ({
  browser,
  server,
}) => {
  const { id, invite } = await aBoard(server, 'A minute without a line');
  const who = await server.enter('Hanne', await invite('peer'));
  const other = await server.enter('Teodor', await invite('teacher'));
  const line = await aLineTo(server.url);
  // One person at two devices, one of them on the bad line, and somebody else.
  const far = await aWindow(browser, who, line.url);
  const near = await aWindow(browser, who, server.url);
  const teacher = await aWindow(browser, other, server.url);
  await openBoard(far.page, line.url, id);
  for (const { page } of [near, teacher]) await openBoard(page, server.url, id);
  await say(near.page, 0.5, 'The hill.');
  await expect(far.page.getByText('The hill.').first()).toBeVisible();

  line.freeze();
  const frozenMs = Date.now();
  await rewrite(far.page, 'Look first: The hill.');
  await rewrite(near.page, 'The hill. Lift its darks.');
  await say(far.page, 0.2, 'Seen from the train.');
  await say(teacher.page, 0.8, 'Said in the room.');
  // The browser finds out by itself that nothing comes any more.
  const state = far.page.getByText(/The line has been down since \d\d:\d\d/);
  await expect(state).toBeVisible(BACK);
  await expect(far.page.getByText('Two remarks wait to be sent.')).toBeVisible();
  await far.page.waitForTimeout(Math.max(0, 60_000 - (Date.now() - frozenMs)));
  await expect(near.page.getByText('Seen from the train.')).toHaveCount(0);
  await expect(far.page.getByText('Said in the room.')).toHaveCount(0);
  line.mend();

  const texts = ['Look first: The hill. Lift its darks.', 'Seen from the train.', 'Said in the room.'];
  for (const { page } of [far, near, teacher]) {
    for (const text of texts) await expect(page.getByText(text).first()).toBeVisible(BACK);
  }
  await expect(state).toHaveCount(0);
  for (const { context } of [far, near, teacher]) await context.close();
  await line.close();
});

test('what was made without a line outlives its page and arrives later', async ({ browser, server }) => {
  const { id, owner, invite } = await aBoard(server, 'Closed in the tunnel');
  const who = await server.enter('Hanne', await invite('peer'));
  const line = await aLineTo(server.url);
  const { context, page } = await aWindow(browser, who, line.url);
  const witness = await aWindow(browser, owner, server.url);
  await openBoard(page, line.url, id);
  await openBoard(witness.page, server.url, id);
  await expect(async () => expect((await copiesIn(page)).length).toBeGreaterThan(2)).toPass();
  line.cut();
  await expect(page.getByText(/The line has been down/)).toBeVisible(BACK);
  await say(page, 0.5, 'Written in the tunnel.');
  await expect(page.getByText('One remark waits to be sent.')).toBeVisible();
  await page.close();
  line.mend();
  await expect(witness.page.getByText('Written in the tunnel.')).toHaveCount(0);
  const later = await context.newPage();
  await openBoard(later, line.url, id);
  await expect(witness.page.getByText('Written in the tunnel.').first()).toBeVisible(BACK);
  for (const each of [context, witness.context]) await each.close();
  await line.close();
});

async function aPeerOnABadLine(browser: Browser, server: AServer, title: string) {
  const board = await aBoard(server, title);
  const who = await server.enter('Pia', await board.invite('peer'));
  const line: BadLine = await aLineTo(server.url);
  const peer = await aWindow(browser, who, line.url);
  const witness = await aWindow(browser, board.owner, server.url);
  await openBoard(peer.page, line.url, board.id);
  await openBoard(witness.page, server.url, board.id);
  await expect(async () => expect((await copiesIn(peer.page)).length).toBeGreaterThan(2)).toPass();
  const end = async () => {
    for (const { context } of [peer, witness]) await context.close();
    await line.close();
  };
  return { ...board, who, line, page: peer.page, witness: witness.page, end };
}

test('a change that is not allowed any more is taken back with a sentence, and its words stay as a draft', async ({
  browser,
  server,
}) => {
  const { id, owner, who, line, page, witness, end } = await aPeerOnABadLine(browser, server, 'No ghosts');
  line.cut();
  await say(page, 0.5, 'Words of a viewer by now.');
  await server.json(owner, `/api/boards/${id}/members/${who.id}`, 'PATCH', { role: 'viewer' });
  line.mend();
  const refusal = page.getByRole('alert').filter({ hasText: 'taken back' });
  await expect(refusal).toBeVisible(BACK);
  await expect(refusal.getByText('Words of a viewer by now.')).toBeVisible();
  await expect(page.locator('[data-remark]')).toHaveCount(0);
  await expect(stageOf(page, 'Painting').locator('[data-mark]')).toHaveCount(0);
  await expect(witness.getByText('Words of a viewer by now.')).toHaveCount(0);
  // The draft is still there when the page is opened again, until it is laid aside.
  await page.reload();
  await expect(refusal.getByText('Words of a viewer by now.')).toBeVisible();
  await expect(page.locator('[data-remark]')).toHaveCount(0);
  await end();
});

test('who lost access while offline keeps a sentence and their own words, and no copy of the board', async ({
  browser,
  server,
}) => {
  const { id, owner, who, line, page, witness, end } = await aPeerOnABadLine(
    browser,
    server,
    'No more copies',
  );
  line.cut();
  await say(page, 0.5, 'My own words.');
  await server.json(owner, `/api/boards/${id}/members/${who.id}`, 'DELETE');
  line.mend();
  await expect(page.getByText(/you are not on it|access to this board has ended/).first()).toBeVisible(BACK);
  await expect(
    page.getByRole('alert').filter({ hasText: 'My own words.' }),
    'the words as a draft',
  ).toBeVisible();
  await expect(async () => expect(await copiesIn(page)).toEqual([])).toPass();
  await expect(witness.getByText('My own words.')).toHaveCount(0);
  await end();
});

test('copies go when access ends while the page is closed, and when somebody else signs in here', async ({
  browser,
  server,
}) => {
  const { id, owner, who, line, page, end } = await aPeerOnABadLine(
    browser,
    server,
    'Cleared at next contact',
  );
  await page.goto('about:blank');
  await server.json(owner, `/api/boards/${id}/members/${who.id}`, 'DELETE');
  await page.goto(line.url);
  await expect(page.getByText('You are here as Pia.')).toBeVisible();
  await expect(async () => expect(await copiesIn(page)).toEqual([])).toPass();

  const second = await aBoard(server, 'One device, two people');
  const first = await server.enter('Agda', await second.invite('peer'));
  const next = await server.enter('Bodil', await second.invite('peer'));
  const device = await aWindow(browser, first, server.url);
  await openBoard(device.page, server.url, second.id);
  await expect(async () => expect((await copiesIn(device.page)).length).toBeGreaterThan(2)).toPass();
  const [name = '', ...value] = next.cookie.split('=');
  await device.context.addCookies([{ name, value: value.join('='), url: server.url }]);
  await device.page.goto(server.url);
  await expect(device.page.getByText('You are here as Bodil.')).toBeVisible();
  await expect(async () => expect(await copiesIn(device.page)).toEqual([])).toPass();
  await device.context.close();
  await end();
});

test('a browser that keeps nothing works as before', async ({ browser, server }) => {
  const { id, invite } = await aBoard(server, 'Private window');
  const who = await server.enter('Pia', await invite('peer'));
  const { context, page } = await aWindow(browser, who, server.url);
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(String(error)));
  await context.addInitScript(() => {
    indexedDB.open = () => {
      throw new DOMException('Switched off.', 'SecurityError');
    };
  });
  await openBoard(page, server.url, id);
  await say(page, 0.4, 'Without a copy.');
  await context.setOffline(true);
  await say(page, 0.6, 'Without a line.');
  await context.setOffline(false);
  const witness = await aWindow(browser, who, server.url);
  await openBoard(witness.page, server.url, id);
  for (const text of ['Without a copy.', 'Without a line.']) {
    await expect(witness.page.getByText(text).first()).toBeVisible(BACK);
  }
  expect(troubles).toEqual([]);
  for (const each of [context, witness.context]) await each.close();
});

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
  const before = await seenOn(peer);
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

  for (const page of [host, peer, phone]) expect(await troublesOf(page)).toEqual([]);

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
