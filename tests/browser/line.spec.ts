/**
 * Bad lines in real browsers: nothing is lost over a minute without a line, what was made offline outlives its page, what
 * was refused leaves no ghost, and copies go with access.
 */
import type { Browser, Page } from '@playwright/test';
import type { AServer } from '#tests/helpers/a-server.ts';
import { aLineTo, type BadLine } from './bad-line.ts';
import { aBoard, aWindow, openBoard, say } from './several.ts';
import { expect, stageOf, test } from './story.ts';

// Two or three browsers, and lines that are tried again only after a while.
test.describe.configure({ timeout: 240_000 });

const BACK = { timeout: 45_000 };

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
