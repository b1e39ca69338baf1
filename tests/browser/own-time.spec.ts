/**
 * In one's own time: a painter asks for a look, the teacher finds it in their queue, answers with a phrase of their own
 * and is told next time what became of it; the painter is told what is new.
 */
import type { Page } from '@playwright/test';
import type { LookedRequest } from '#server/core/contract/own-time-requests.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

const inTwoDays = () => new Date(Date.now() + 2 * 24 * 3_600_000);
const day = (at: Date) =>
  `${at.getFullYear()}-${String(at.getMonth() + 1).padStart(2, '0')}-${String(at.getDate()).padStart(2, '0')}`;
const weekday = (at: Date) => new Intl.DateTimeFormat('en-GB', { weekday: 'long' }).format(at);

async function invited(server: AServer, owner: Entered, boardId: string, role: string): Promise<string> {
  const invite = { role, hours: 2 };
  return (await server.json<{ token: string }>(owner, `/api/boards/${boardId}/invites`, 'POST', invite))
    .token;
}

/** Whether the server took it from this page that nothing is left unseen. */
function untilAllIsSeen(page: Page): { yet(): boolean } {
  let told = false;
  page.on('response', (answer) => {
    const request = answer.request();
    if (!answer.ok() || !answer.url().endsWith('/since') || request.method() !== 'POST') return;
    told ||= (request.postDataJSON() as LookedRequest).unseen.length === 0;
  });
  return { yet: () => told };
}

/** WCAG 2.2 AA, as far as a machine can tell. */
async function clean(page: Page): Promise<void> {
  expect(await barriersOf(page)).toEqual([]);
}

test('asked, promised, answered with a phrase in two clicks, seen to be new, tried, and said next time', async ({
  guest,
  server,
}) => {
  test.setTimeout(240_000);
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, 'Marsh at low tide');
  const reference = await sceneFile({ name: 'reference', bands: REFERENCE_BANDS });
  const file = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  await postPicture(server, owner, board.id, reference, { kind: 'reference', rights: 'mine' });
  const painter = await guest('Pia', await invited(server, owner, board.id, 'painter'));
  const teacher = await guest('Teodor', await invited(server, owner, board.id, 'teacher'));
  const first = await postPicture(server, painter.who, board.id, file, {
    kind: 'painting',
    caption: 'Low tide',
  });

  await test.step('the painter asks one teacher for a look', async () => {
    const { page } = painter;
    await page.goto(`${server.url}/boards/${board.id}`);
    await page.getByRole('button', { name: 'Ask for a look' }).click();
    await page.getByLabel('Who is asked?').selectOption({ label: 'Teodor' });
    await page.getByLabel(/What would you like looked at/).fill('Do the hills sit back?');
    await page.getByRole('button', { name: 'Ask Teodor for a look' }).click();
    await expect(page.getByText('You asked Teodor for a look today.')).toBeVisible();
    await expect(page.getByText('It waits; no day is promised yet.')).toBeVisible();
    await clean(page);
  });

  await test.step('the teacher finds it in the queue and promises a day, which the painter reads at once', async () => {
    const { page } = teacher;
    await page.goto(server.url);
    await expect(page.getByText('One painting waits for you, no day promised yet.')).toBeVisible();
    await page.getByRole('link', { name: 'See what waits' }).click();
    const row = page.getByRole('article', { name: 'Pia, “Low tide”' });
    await expect(row.getByText('Do the hills sit back?')).toBeVisible();
    await expect(row.getByText(/^Nothing was said of it before/)).toBeVisible();
    await row.getByRole('button', { name: 'Promise a day' }).click();
    await row.getByLabel('Day of the look').fill(day(inTwoDays()));
    await row.getByRole('button', { name: 'Promise it' }).click();
    await expect(row.getByText(`Promised for ${weekday(inTwoDays())} by you.`)).toBeVisible();
    await clean(page);
    await expect(painter.page.getByText(`Teodor promised it for ${weekday(inTwoDays())}.`)).toBeVisible();
  });

  await test.step('one click opens the painting; a phrase goes in with two, its gap filled', async () => {
    const { page } = teacher;
    const phrase = { words: 'Lift the darks of the {plane} and squint again.' };
    await server.json(teacher.who, '/api/phrases', 'POST', phrase);
    await page.getByRole('link', { name: 'Open Pia’s painting' }).click();
    const stage = stageOf(page, 'Painting');
    await expect(stage.locator('img').first()).toBeVisible();
    await expect(page.getByText('Pia asked you for a look today.')).toBeVisible();
    await page.getByRole('button', { name: /^Mark/ }).first().click();
    const at = await placeOn(stage, 0.5, 0.4);
    await page.mouse.click(at.x, at.y);
    const field = page.getByLabel('What do you see here?');
    await field.fill('Here.');
    await page.getByRole('button', { name: 'Phrases', exact: true }).click();
    await page.getByRole('option', { name: /Lift the darks/ }).click();
    await expect(field).toHaveValue('Here. Lift the darks of the {plane} and squint again.');
    // The gap that nothing is known for is chosen: the next key types over it.
    await page.keyboard.type('far hills');
    await expect(field).toHaveValue('Here. Lift the darks of the far hills and squint again.');
    await page.getByRole('button', { name: 'Say it' }).click();
    await expect(page.getByText('You have said something since it was asked. Is it answered?')).toBeVisible();
    await page.getByRole('button', { name: 'Looked at' }).click();
    await expect(painter.page.getByText(/^Teodor has looked at it, /)).toBeVisible();
  });

  await test.step('what came while the painter was away is told, and is new until it was seen', async () => {
    const { page } = painter;
    // Looking is told after a few seconds and at leaving; a remark counts as seen once it stood in view.
    await page.reload({ waitUntil: 'commit' });
    const told = untilAllIsSeen(page);
    const answer = page.getByRole('listitem').filter({ hasText: 'far hills' }).first();
    // What arrives late can push it out of view again; a person scrolls back to what they want to read.
    await expect(async () => {
      await answer.scrollIntoViewIfNeeded({ timeout: 5000 });
      expect(told.yet()).toBe(true);
    }).toPass({ timeout: 90_000, intervals: [1000] });
    await page.goto('about:blank');
    const stage = stageOf(teacher.page, 'Painting');
    await teacher.page.getByRole('button', { name: /^Mark/ }).first().click();
    const at = await placeOn(stage, 0.3, 0.8);
    await teacher.page.mouse.click(at.x, at.y);
    await teacher.page.getByLabel('What do you see here?').fill('The meadow holds.');
    await teacher.page.getByRole('button', { name: 'Say it' }).click();
    await expect(teacher.page.getByText('The meadow holds.').first()).toBeVisible();

    await page.goto(server.url);
    await expect(
      page.getByText(/Since you last looked \(.+\): one new remark on “Low tide”\./),
    ).toBeVisible();
    await expect(page.getByText(/Teodor looked at your painting on Marsh at low tide/)).toBeVisible();
    await clean(page);
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(page.getByRole('button', { name: 'one new remark on “Low tide”' })).toBeVisible();
    const remark = page.getByRole('listitem').filter({ hasText: 'The meadow holds.' });
    await expect(remark.getByText('New', { exact: true })).toBeVisible();
  });

  await test.step('the painter says that it was tried, posts the next state and asks anew', async () => {
    const { page } = painter;
    // The teacher is away meanwhile.
    await teacher.page.goto(server.url);
    const remark = page.getByRole('listitem').filter({ hasText: 'far hills' });
    await remark.getByRole('button', { name: 'Tried' }).click();
    const fields = { kind: 'painting', caption: 'Low tide', follows: first.id };
    await postPicture(server, painter.who, board.id, file, fields);
    await page.reload();
    await page.getByRole('button', { name: /^Ask for (a|another) look/ }).click();
    await page.getByRole('button', { name: 'Ask any teacher for a look' }).click();
    await expect(page.getByText('You asked for a look today.')).toBeVisible();
  });

  await test.step('the queue says what was said last time and that it was tried, and what is new', async () => {
    const { page } = teacher;
    await page.goto(`${server.url}/queue`);
    const row = page.getByRole('article', { name: 'Pia, “Low tide”' });
    await expect(row.getByText('Marsh at low tide, second state')).toBeVisible();
    await expect(row.getByText(/^Last time, /)).toBeVisible();
    const said = row.getByRole('listitem').filter({ hasText: 'far hills' });
    await expect(said.getByText('tried', { exact: true })).toBeVisible();
    await expect(row.getByText(/Since you last looked \(.+\): .*one new state/)).toBeVisible();
    for (const viewport of [
      { width: 390, height: 844 },
      { width: 1440, height: 900 },
    ]) {
      await page.setViewportSize(viewport);
      await clean(page);
    }
  });
  expect(painter.troubles).toEqual([]);
  expect(teacher.troubles).toEqual([]);
});

test('phrases are found by typing, put in order and kept from what was written, by keys alone', async ({
  guest,
  server,
}) => {
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, 'Weir in spring');
  const file = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  await postPicture(server, owner, board.id, file, { kind: 'painting' });
  const { page, who, troubles } = await guest('Torolf', await invited(server, owner, board.id, 'teacher'));
  for (const words of ['Soften this edge.', 'Squint at it.'])
    await server.json(who, '/api/phrases', 'POST', { words });
  await page.goto(`${server.url}/boards/${board.id}`);
  const stage = stageOf(page, 'Painting');
  await expect(stage.locator('img').first()).toBeVisible();
  await page.getByRole('button', { name: /^Mark/ }).first().click();
  const at = await placeOn(stage, 0.5, 0.4);
  await page.mouse.click(at.x, at.y);
  const field = page.getByLabel('What do you see here?');
  await field.fill('A third phrase.');
  await page.getByRole('button', { name: 'Phrases', exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Keep what I wrote as a phrase' }).press('Enter');
  await expect(page.getByText('Kept.')).toBeVisible();
  await page.getByRole('combobox', { name: 'Find a phrase' }).fill('squ');
  await expect(page.getByRole('option')).toHaveText(['Squint at it.']);
  await clean(page);
  await page.keyboard.press('Enter');
  await expect(field).toHaveValue('A third phrase. Squint at it.');
  await expect(field).toBeFocused();

  await page.getByRole('button', { name: 'Phrases', exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Put phrases in order' }).press('Enter');
  const book = page.getByRole('dialog', { name: 'Phrases of your own' });
  await book.getByRole('button', { name: 'Move up: A third phrase.' }).press('Enter');
  await expect(book.getByRole('listitem').nth(1)).toContainText('A third phrase.');
  await book.getByRole('button', { name: 'Delete: Soften this edge.' }).press('Enter');
  await expect(book.getByRole('listitem')).toHaveCount(2);
  await clean(page);
  expect(await server.json<{ words: string }[]>(who, '/api/phrases')).toMatchObject([
    { words: 'A third phrase.' },
    { words: 'Squint at it.' },
  ]);
  expect(await server.json(owner, '/api/phrases')).toEqual([]);
  expect(troubles).toEqual([]);
});
