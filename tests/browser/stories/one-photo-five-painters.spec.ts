/**
 * A wall of five with hidden names, run by a teacher: nobody's browser is sent a name before the teacher shows them, by
 * mouse, by keyboard alone and on a narrow screen.
 */
import type { Locator, Page } from '@playwright/test';
import { readMarks } from '#server/core/live/marks.ts';
import type { AServer } from '#tests/helpers/a-server.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { barriersOf } from '../barriers.ts';
import { outlineScene, SCENE_PLANES } from '../scene-planes.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from '../scenes.ts';
import { expect, type Guest, makeBoard, measuresWhenReady, postPicture, test } from '../story.ts';
import { countActs, tellActs } from './acts.ts';

const PAINTERS = ['Ylvaine', 'Torbald', 'Quirinus', 'Xenilda', 'Zorabel'] as const;
interface Scene {
  boardId: string;
  teacher: Guest;
  painter: Guest;
  viewer: Guest;
  pictureIds: string[];
}

/** Five painters, a teacher, and somebody who looks on; each painting's far hills of another lightness. */
async function aWall(server: AServer, guest: (name: string, key?: string) => Promise<Guest>): Promise<Scene> {
  const owner = await server.enter('Hedda');
  const { id: boardId } = await makeBoard(server, owner, 'Five evenings at the weir');
  const link = async (role: string) => {
    const body = { role, hours: 2 };
    return (await server.json<{ token: string }>(owner, `/api/boards/${boardId}/invites`, 'POST', body))
      .token;
  };
  const reference = await sceneFile({
    name: 'wall-reference',
    bands: REFERENCE_BANDS,
    widthPx: 900,
    heightPx: 600,
  });
  const rights = { kind: 'reference', rights: 'mine' };
  const there = await postPicture(server, owner, boardId, reference, rights);
  await outlineScene(server, owner, boardId, there.id);
  const painter = await guest(PAINTERS[0], await link('painter'));
  const pictureIds: string[] = [];
  for (const [at, name] of PAINTERS.entries()) {
    const who = at === 0 ? painter.who : await server.enter(name, await link('painter'));
    const bands = PAINTING_BANDS.map((band, index) =>
      index === 1 ? ([46 + at * 6, -1, 4 - at * 3] as const) : band,
    );
    const file = await sceneFile({ name: `wall-${at}`, bands, widthPx: 900, heightPx: 600 });
    pictureIds.push(
      (await postPicture(server, who, boardId, file, { kind: 'painting', caption: `By ${name}` })).id,
    );
  }
  for (const id of pictureIds) await measuresWhenReady(server, owner, boardId, id);
  const teacher = await guest('Tilda', await link('teacher'));
  return { boardId, teacher, painter, viewer: await guest('Vera', await link('viewer')), pictureIds };
}

/** Everything that a browser is sent from now on, over HTTP and sockets. */
function listenIn(page: Page): () => string {
  const heard: string[] = [];
  page.on('websocket', (socket) => {
    socket.on('framereceived', ({ payload }) => heard.push(Buffer.from(payload).toString('latin1')));
  });
  page.on('response', async (response) => {
    const body = await response.body().catch(() => Buffer.alloc(0)); // redirects and broken-off answers have none
    heard.push(body.toString('latin1'));
  });
  return () => heard.join('\n');
}

const hung = (page: Page): Locator =>
  page
    .getByRole('list')
    .filter({ has: page.getByRole('button', { name: /large$/ }) })
    .getByRole('listitem');

/** All five hang, drawn and measured. */
async function allHang(page: Page): Promise<void> {
  await expect(hung(page)).toHaveCount(5);
  for (const letter of ['A', 'B', 'C', 'D', 'E']) {
    await expect(page.getByRole('img', { name: `Painting ${letter}, squared` })).toBeVisible({
      timeout: 60_000,
    });
    await expect(page.getByRole('img', { name: new RegExp(`^Colours of painting ${letter}`) })).toBeVisible();
    await expect(page.getByRole('img', { name: new RegExp(`^Ladder of painting ${letter}`) })).toBeVisible({
      timeout: 60_000,
    });
  }
}

test('five hang under letters; nobody is sent a name before the teacher shows them', async ({
  guest,
  server,
}) => {
  test.setTimeout(300_000);
  const { boardId, teacher, painter, viewer } = await aWall(server, guest);
  await painter.page.setViewportSize({ width: 390, height: 844 });
  for (const { page } of [teacher, painter, viewer]) await countActs(page);
  const heard = new Map([teacher, painter, viewer].map((each) => [each, listenIn(each.page)]));
  for (const { page } of heard.keys()) await page.goto(`${server.url}/boards/${boardId}/wall`);

  await test.step('all see five paintings in one order, and only their own is marked', async () => {
    for (const { page } of heard.keys()) {
      await allHang(page);
      await expect(page.getByText('Names are hidden.')).toBeVisible();
    }
    await expect(painter.page.getByText('yours', { exact: true })).toHaveCount(1);
    await expect(teacher.page.getByText('yours', { exact: true })).toHaveCount(0);
    await expect(viewer.page.getByRole('button', { name: 'Show the names' })).toHaveCount(0);
    await expect(painter.page.getByRole('button', { name: 'Show the names' })).toHaveCount(0);
    expect(await barriersOf(teacher.page), 'wall').toEqual([]);
    expect(await barriersOf(painter.page), 'wall at 390 px').toEqual([]);
    const wide = await painter.page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(390);
  });

  await test.step('the teacher asks the question of the day, and everybody reads it', async () => {
    const { page } = teacher;
    await page.getByRole('button', { name: 'Ask something of the day' }).click();
    await page.getByLabel('Question of the day').fill('How did each of us say far?');
    await page.getByRole('button', { name: 'Ask it' }).click();
    for (const each of heard.keys()) {
      await expect(each.page.getByText('How did each of us say far?')).toBeVisible();
    }
  });

  await test.step('ladders in one chart, and far in words', async () => {
    const { page } = viewer;
    await page.getByText('The same in figures').click();
    const table = page.getByRole('table');
    await expect(table.getByRole('columnheader')).toHaveText(['Plane', 'A', 'B', 'C', 'D', 'E']);
    await expect(table.getByRole('row')).toHaveCount(1 + SCENE_PLANES.length);
    const far = page.getByRole('region', { name: 'How each said far' });
    await expect(far.getByText('Far hills.')).toHaveCount(5);
    // Nothing neutral stands in these photos: words of order, and no figure.
    await expect(far).toContainText(/Its darks lift less far than in the reference\./);
    expect(await far.textContent()).not.toMatch(/\d/);
  });

  await test.step('in all that, no name was sent to anybody else', async () => {
    for (const [{ who }, all] of heard) {
      const text = `${all()}`;
      expect(text.length).toBeGreaterThan(1000);
      for (const name of PAINTERS) {
        const own = who === painter.who && name === PAINTERS[0];
        if (!own) expect(text.includes(name), `${name} to ${who.name}`).toBe(false);
      }
    }
  });

  await test.step('shown by the teacher, all read them; hidden again, nobody', async () => {
    await teacher.page.getByRole('button', { name: 'Show the names' }).click();
    for (const { page } of heard.keys()) {
      for (const name of PAINTERS)
        await expect(page.getByRole('heading', { name: new RegExp(name) })).toBeVisible();
    }
    await teacher.page.getByRole('button', { name: 'Hide the names again' }).click();
    for (const { page } of heard.keys()) {
      for (const name of PAINTERS) await expect(page.getByText(name)).toHaveCount(0);
    }
  });

  await tellActs('Five paintings compared by mouse', { teacher: teacher.page, viewer: viewer.page });
  for (const { troubles } of heard.keys()) expect(troubles).toEqual([]);
});

test('by keyboard alone: rows, two large, the edge between them, one thing to try', async ({
  guest,
  server,
}) => {
  test.setTimeout(300_000);
  const { boardId, teacher, pictureIds } = await aWall(server, guest);
  const { page } = teacher;
  await countActs(page);
  await page.goto(`${server.url}/boards/${boardId}`);
  await page.getByRole('link', { name: 'Wall', exact: true }).press('Enter');
  await allHang(page);

  const rows = page.getByRole('group', { name: 'Ways of looking' });
  await rows.getByRole('button', { name: 'Squint' }).press('Enter');
  await expect(page.getByRole('img', { name: /half-closed eyes$/ })).toHaveCount(5);
  await page.getByLabel('How many values').press('ArrowDown');
  await expect(page.getByRole('img', { name: /in four values$/ })).toHaveCount(5);
  await page.getByLabel('Order of the colours').press('ArrowDown');
  await expect(page.getByRole('img', { name: /^Colours of painting .*far to near/ })).toHaveCount(5);
  await rows.getByRole('button', { name: 'Ladder' }).press('Enter');
  await expect(page.getByRole('img', { name: /^Ladder of painting/ })).toHaveCount(0);

  await page.getByRole('button', { name: 'Painting B, squared: see it large' }).press('Enter');
  const large = page.getByRole('dialog', { name: 'Two paintings large' });
  await expect(large.getByRole('img', { name: 'Painting B, squared' })).toBeVisible();
  await expect(large.getByRole('img', { name: 'Painting A, squared' })).toBeVisible();
  expect(await barriersOf(page), 'two large').toEqual([]);
  await large.getByRole('button', { name: 'One over the other' }).press('Enter');
  const edge = large.getByRole('slider');
  await edge.press('ArrowLeft');
  await expect(edge).toHaveAttribute('aria-valuenow', '48');
  await large.getByRole('button', { name: 'Side by side' }).press('Enter');
  await large.getByRole('textbox').fill('The cooler hills, over a warm foot');
  await large.getByRole('button', { name: 'Say it' }).press('Enter');
  await expect(large.getByText('It stands on painting B now')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(large).toHaveCount(0);

  const room = await joinRoom(server.url, teacher.who, boardId, 'marks');
  const [mark] = readMarks(room.doc);
  room.leave();
  expect(mark).toMatchObject({
    kind: 'pin',
    text: 'The cooler hills, over a warm foot',
    points: [[0.5, 0.5]],
  });
  expect(pictureIds).toContain(mark?.pictureId);

  await page.getByRole('button', { name: 'Which paintings' }).press('Enter');
  const choice = page.getByRole('dialog', { name: 'Which paintings hang' });
  await choice.getByRole('checkbox', { name: 'Painting C' }).press('Space');
  await page.keyboard.press('Escape');
  await expect(hung(page)).toHaveCount(4);
  await tellActs('Five paintings compared by keyboard alone', { teacher: page });
  expect(teacher.troubles).toEqual([]);
});

test('with one painting alone the wall says what to do', async ({ guest, server }) => {
  const owner = await guest('Hedda');
  const { id } = await makeBoard(server, owner.who, 'Nothing beside it');
  const file = await sceneFile({ name: 'wall-alone', bands: PAINTING_BANDS, widthPx: 900, heightPx: 600 });
  await postPicture(server, owner.who, id, file, { kind: 'painting' });
  await owner.page.goto(`${server.url}/boards/${id}/wall`);
  await expect(owner.page.getByRole('heading', { name: 'A wall begins with two paintings' })).toBeVisible();
  await expect(owner.page.getByText('Post one on the board')).toBeVisible();
});
