/**
 * From critique to the next state: a card is taken on, the painter repaints and posts, the card says how far it went; a
 * re-shoot of the same paint says no change; the teacher finds it in the queue; all states side by side, by keyboard.
 */
import { randomUUID } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { setCards, setCorners } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { encoded, paint } from '#tests/fixtures/painted/paint.ts';
import { drawFrom } from '#tests/fixtures/pairs/draw.ts';
import { renderReference } from '#tests/fixtures/pairs/scene.ts';
import { pngOf } from '#tests/fixtures/states/posted.ts';
import { reshot } from '#tests/fixtures/states/reshoot.ts';
import { painted, type Subject, subjectOf } from '#tests/fixtures/states/stated.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { barriersOf } from '../barriers.ts';
import { expect, makeBoard, measuresWhenReady, postPicture, test } from '../story.ts';
import { countActs, tellActs } from './acts.ts';

const SEED = 7203;
/** How much too dark the far plane is painted, L*; the card asks to lift it by about two steps. */
const WRONG = -18;
const FAR = 1;

async function fileOf(name: string, png: Buffer): Promise<string> {
  const folder = fileURLToPath(new URL('../../.out/scenes/', import.meta.url));
  await mkdir(folder, { recursive: true });
  const path = `${folder}${name}.png`;
  await writeFile(path, png);
  return path;
}

/** A board with the photograph and its planes outlined on it. */
async function aScene(server: AServer, owner: Entered, subject: Subject): Promise<string> {
  const board = await makeBoard(server, owner, 'Ridges over the fjord');
  const reference = encoded(
    paint(renderReference(drawFrom(SEED)), subject.layout, { fine: true, seed: SEED }),
  );
  const file = await fileOf('states-reference', await pngOf(reference));
  const there = await postPicture(server, owner, board.id, file, { kind: 'reference', rights: 'mine' });
  await writeInto(server.url, owner, board.id, 'setup', (doc) => {
    subject.setup.planes.forEach(({ name, kind = 'land' }, at) => {
      const id = randomUUID();
      addPlane(doc, { id, name, kind, tilt: null });
      putReferenceOutline(doc, there.id, id, subject.layout.outlines[at] ?? []);
    });
  });
  return board.id;
}

interface Post {
  boardId: string;
  lift: number;
  seed: number;
  follows?: string;
}

/** Photographs the painting as it is now, posts it and sets its corners and cards, as a painter would by hand. */
async function postState(
  server: AServer,
  painter: Entered,
  subject: Subject,
  { boardId, lift, seed, follows }: Post,
): Promise<string> {
  const picture = painted(subject, new Map([[FAR, WRONG + lift]]));
  const { photo, correction } = await reshot(picture, { seed, grade: 'A', cornerHand: 0.002 });
  const file = await fileOf(`state-${seed}`, await pngOf(photo));
  const fields = { kind: 'painting', ...(follows ? { follows } : {}) };
  const { id } = await postPicture(server, painter, boardId, file, fields);
  await writeInto(server.url, painter, boardId, `painting/${id}`, (doc) => {
    setCorners(doc, correction.corners ?? null);
    setCards(doc, correction.cards ?? null);
  });
  await measuresWhenReady(server, painter, boardId, id);
  return id;
}

const sinceLast = (page: Page) => page.getByRole('region', { name: 'Since the last state' });

test('a card taken on, half of it painted, said on the card, in the queue and on the time line', async ({
  guest,
  server,
}) => {
  test.setTimeout(400_000);
  const subject = subjectOf(SEED);
  const owner = await server.enter('Hedda');
  const boardId = await aScene(server, owner, subject);
  const link = async (role: string) =>
    (
      await server.json<{ token: string }>(owner, `/api/boards/${boardId}/invites`, 'POST', {
        role,
        hours: 2,
      })
    ).token;
  const painter = await guest('Pia', await link('painter'));
  const teacher = await guest('Teodor', await link('teacher'));
  const { page } = painter;
  for (const each of [page, teacher.page]) await countActs(each);
  const far = subject.setup.planes[FAR]?.name ?? '';
  const first = await postState(server, painter.who, subject, { boardId, lift: 0, seed: 43 });
  let second = '';

  await test.step('the painter takes the card of the far plane on', async () => {
    await page.goto(`${server.url}/boards/${boardId}?picture=${first}`);
    const card = page.getByRole('button', { name: new RegExp(`^${far}, whole plane: lift`, 'i') });
    await card.click({ timeout: 60_000 });
    await page
      .getByRole('group', { name: new RegExp(`^Answer to ${far}`, 'i') })
      .getByText('I’ll do this')
      .click();
    await expect(page.getByText('You will do this.').first()).toBeVisible();
  });

  await test.step('the next state shows about half of it, and the card is taken along', async () => {
    second = await postState(server, painter.who, subject, { boardId, lift: 9.5, seed: 343, follows: first });
    await page.goto(`${server.url}/boards/${boardId}?picture=${second}`);
    const went = sinceLast(page)
      .getByRole('listitem')
      .filter({ hasText: new RegExp(far, 'i') })
      .first();
    await expect(went.getByText(/^about half of it/).first()).toBeVisible({ timeout: 90_000 });
    await went.getByRole('button', { name: 'Take it along' }).click();
    await expect(went.getByText('Goes along to the next state.')).toBeVisible();
    expect(await barriersOf(page)).toEqual([]);
  });

  await test.step('a re-shoot of the same paint says no change beyond the doubt', async () => {
    const third = await postState(server, painter.who, subject, {
      boardId,
      lift: 9.5,
      seed: 543,
      follows: second,
    });
    await page.goto(`${server.url}/boards/${boardId}/paintings/${third}`);
    const line = page.getByRole('region', { name: 'In order of time' });
    await expect(line.getByText('No change beyond the doubt.')).toHaveCount(1, { timeout: 90_000 });
    const became = page.getByRole('region', { name: 'What became of the advice' });
    // The card that was taken along is held against the state it was given on: still half of it.
    await expect(became.getByText(/^about half of it/).first()).toBeVisible();
    await page.getByText('What changed', { exact: true }).click();
    await expect(page.getByRole('img', { name: 'Where it became lighter or darker' })).toBeVisible();
    await expect(page.getByText('Nothing changed by more than the photos can tell.')).toBeVisible();
  });

  await test.step('the time line and both pictures go by keyboard', async () => {
    const line = page.getByRole('region', { name: 'In order of time' });
    const [one, two] = ['first', 'second'].map((nth) =>
      line.getByRole('button', { name: `Hold the ${nth} state against the one before` }),
    );
    if (!one || !two) throw new Error('There are two.');
    await one.focus();
    await page.keyboard.press('ArrowRight');
    await expect(two).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(
      page.getByRole('heading', { name: 'First and second state, laid on one another' }),
    ).toBeVisible();
    await page.getByRole('radio', { name: 'One over the other' }).focus();
    await page.keyboard.press('Space');
    const edge = page.getByRole('slider', { name: 'Edge between the two states' });
    await edge.focus();
    await page.keyboard.press('ArrowRight');
    await expect(edge).toHaveAttribute('aria-valuenow', '52');
    await page.getByRole('radio', { name: 'One over the other' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('radio', { name: 'In turn' })).toBeChecked();
    await page.getByRole('button', { name: 'Hold still' }).click();
    await page.keyboard.down('b');
    await expect(page.getByText('Shown: first state')).toBeVisible();
    await page.keyboard.up('b');
    await expect(page.getByText('Shown: second state')).toBeVisible();
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await barriersOf(page), `states at ${width} px`).toEqual([]);
    }
    expect(painter.troubles).toEqual([]);
  });

  await test.step('the teacher reads how far it went in the queue, and the path that the painter reads too', async () => {
    await server.json(painter.who, `/api/boards/${boardId}/asks`, 'POST', {
      picture: second,
      of: null,
      words: '',
    });
    await teacher.page.goto(`${server.url}/queue`);
    const row = teacher.page.getByRole('article', { name: 'Pia’s painting' });
    await expect(row.getByText('How far it went: about half of it.').first()).toBeVisible({
      timeout: 60_000,
    });
    await row.getByRole('link', { name: 'Pia’s path' }).click();
    await expect(teacher.page.getByRole('heading', { name: 'Pia’s path' })).toBeVisible();
    await expect(teacher.page.getByText(/whole plane: lift/).first()).toBeVisible();
    await page.goto(`${server.url}/path`);
    await expect(page.getByText(/whole plane: lift/).first()).toBeVisible();
    await expect(page.getByText(/What is on Ridges over the fjord: .*Teodor/)).toBeVisible();
    for (const shown of [page, teacher.page]) expect(await barriersOf(shown)).toEqual([]);
    // It leaves the board as a table that opens without it.
    await teacher.page.goto(`${server.url}/boards/${boardId}/take-away`);
    const download = teacher.page.waitForEvent('download');
    await teacher.page.getByRole('link', { name: 'Table (CSV)' }).click();
    const table = await readFile(await (await download).path(), 'utf8');
    expect(table.split('\n')[0]).toContain(',');
    expect(table).toContain(far);
    await tellActs('From state to state to the path', { painter: page, teacher: teacher.page });
  });
});
