/**
 * Taking away and bringing in, in a browser: figures and marks of a board, the whole board and back, one's own data, and
 * deleting oneself.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Page } from '@playwright/test';
import type { InviteView } from '#server/core/contract/responses.ts';
import { putMark } from '#server/core/live/marks.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, postPicture, test } from './story.ts';

test.describe.configure({ timeout: 240_000 });

async function saved(page: Page, name: string): Promise<{ download: Download; text: string }> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('link', { name, exact: true }).click();
  const download = await waiting;
  return { download, text: await readFile(await download.path(), 'latin1') };
}

async function invited(server: AServer, host: Entered, boardId: string): Promise<string> {
  const body = { role: 'painter', hours: 2, uses: 1 };
  return (await server.json<InviteView>(host, `/api/boards/${boardId}/invites`, 'POST', body)).token;
}

async function aScene(server: AServer, host: Entered, title: string) {
  const { id: boardId } = await makeBoard(server, host, title);
  const file = await sceneFile({ name: 'take-away', bands: PAINTING_BANDS });
  const { id: pictureId } = await postPicture(server, host, boardId, file, { kind: 'painting' });
  await writeInto(server.url, host, boardId, 'marks', (doc) =>
    putMark(doc, {
      ...{
        id: 'first',
        author: host.id,
        pictureId,
        kind: 'pin',
        text: 'The reeds hold',
        planeId: null,
        parent: null,
      },
      ...{ at: Date.now(), points: [[0.3, 0.4]] },
    }),
  );
  return { boardId, pictureId };
}

test('figures and marks leave a board as files, marks from elsewhere come in, and what cannot is named', async ({
  guest,
  server,
}) => {
  const { page, who, troubles } = await guest('Hedda');
  const { boardId } = await aScene(server, who, 'The ford');
  await page.goto(`${server.url}/boards/${boardId}`);
  await page.getByText('More', { exact: true }).click();
  await page.getByRole('link', { name: 'Take away, bring in' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Take away from The ford');
  expect(await barriersOf(page)).toEqual([]);
  const table = await saved(page, 'Table (CSV)');
  expect(table.download.suggestedFilename()).toBe('The ford figures.csv');
  expect(table.text).toMatch(/CIE L\* 5th percentile/);
  const marks = await saved(page, 'Marks (JSON-LD)');
  expect(JSON.parse(marks.text)).toMatchObject({ type: 'AnnotationCollection', total: 1 });

  const file = join(tmpdir(), `veilstep-marks-${Date.now()}.jsonld`);
  const elsewhere = (id: string, selector: object) => ({
    ...{ '@context': 'http://www.w3.org/ns/anno.jsonld', id: `http://example.org/${id}`, type: 'Annotation' },
    ...{ creator: { type: 'Person', name: 'Ottoline' }, bodyValue: `Said of ${id}` },
    target: { source: 'http://example.org/photo', selector },
  });
  const items = [
    elsewhere('one', { type: 'FragmentSelector', value: 'xywh=percent:20,20,30,30' }),
    elsewhere('two', { type: 'XPathSelector', value: '/html/body' }),
  ];
  await writeFile(file, JSON.stringify(items));
  await page.getByLabel('Where marks go whose picture is not on this board').selectOption({ index: 1 });
  await page.getByLabel('Choose a file').setInputFiles(file);
  await expect(page.getByText('One mark was brought in.')).toBeVisible();
  await expect(page.getByRole('list', { name: 'Left out' })).toContainText('XPathSelector');
  expect(await barriersOf(page)).toEqual([]);
  await page.getByRole('link', { name: 'Back to the board' }).click();
  const remark = page.locator('[data-remark]').filter({ hasText: 'Said of one' });
  await expect(remark).toContainText('Ottoline, brought in by Hedda');
  expect(troubles).toEqual([]);
});

test('a board leaves as one file and comes in again as a board of its own', async ({ guest, server }) => {
  const { page, who } = await guest('Hedda');
  const { boardId, pictureId } = await aScene(server, who, 'The mill race');
  const painter = await server.enter('Pelle', await invited(server, who, boardId));
  const file = await sceneFile({ name: 'take-away-2', bands: PAINTING_BANDS });
  await postPicture(server, painter, boardId, file, { kind: 'painting', caption: 'Dusk' });
  await page.goto(`${server.url}/boards/${boardId}/take-away`);
  await expect(page.getByText('One picture stays behind')).toBeVisible();
  await expect(page.getByText('“Dusk” by Pelle')).toBeVisible();
  const { download } = await saved(page, 'Take the board away');
  expect(download.suggestedFilename()).toBe('The mill race.veilstep.zip');
  const archive = join(tmpdir(), `veilstep-board-${Date.now()}.zip`);
  await download.saveAs(archive);

  await page.goto(server.url);
  await page.getByRole('button', { name: 'Bring a board in from a file' }).click();
  const broken = join(tmpdir(), `veilstep-broken-${Date.now()}.zip`);
  await writeFile(broken, (await readFile(archive)).subarray(0, 4000));
  await page.getByLabel('Choose a file').setInputFiles(broken);
  await expect(page.getByRole('alert').filter({ hasText: 'This archive' })).toBeVisible();
  await page.getByLabel('Choose a file').setInputFiles(archive);
  await expect(page.getByText('“The mill race” is here with one picture.')).toBeVisible();
  await expect(page.getByText('“Dusk” by Pelle: its painter has not said')).toBeVisible();
  expect(await barriersOf(page)).toEqual([]);
  await page.getByRole('link', { name: 'Open it' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The mill race');
  await expect(page.locator('[data-remark]').filter({ hasText: 'The reeds hold' })).toBeVisible();
  expect(page.url()).not.toContain(boardId);
  const same = async (address: string) => Buffer.from(await (await server.call(who, address)).arrayBuffer());
  const copyId = page.url().split('/').at(-1) ?? '';
  const copy = await server.json<{ pictures: { id: string }[] }>(who, `/api/boards/${copyId}`);
  expect(await same(`/api/boards/${copyId}/pictures/${copy.pictures[0]?.id}/1280`)).toEqual(
    await same(`/api/boards/${boardId}/pictures/${pictureId}/1280`),
  );
});

test('somebody takes their data away, is told what they hold, and deletes themselves by writing their name', async ({
  guest,
  server,
}) => {
  const host = await guest('Hedda');
  const { boardId } = await aScene(server, host.who, 'The quarry pond');
  await host.page.goto(`${server.url}/account`);
  await host.page.getByRole('button', { name: 'See what would go' }).click();
  await expect(host.page.getByRole('link', { name: 'the board The quarry pond' })).toBeVisible();
  await expect(host.page.getByRole('button', { name: 'Delete me for good' })).toHaveCount(0);

  const { page, who } = await guest('Pelle', await invited(server, host.who, boardId));
  const file = await sceneFile({ name: 'take-away-3', bands: PAINTING_BANDS });
  await postPicture(server, who, boardId, file, { kind: 'painting', caption: 'Noon' });
  await page.goto(`${server.url}/account`);
  const { download } = await saved(page, 'Take it away');
  expect(download.suggestedFilename()).toBe('Pelle.zip');
  await page.getByRole('button', { name: 'See what would go' }).click();
  await expect(page.getByText('That is one picture and no remarks.')).toBeVisible();
  expect(await barriersOf(page)).toEqual([]);
  const go = page.getByRole('button', { name: 'Delete me for good' });
  await expect(go).toBeDisabled();
  await page.getByLabel('Write your name, Pelle').fill('Pelle');
  await go.click();
  await page.waitForURL(`${server.url}/`);
  await expect(page.getByRole('link', { name: 'Sign in' })).toBeVisible();
  const board = await server.json<{ pictures: { caption: string | null }[]; members: { name: string }[] }>(
    host.who,
    `/api/boards/${boardId}`,
  );
  expect(board.pictures).toHaveLength(1);
  expect(board.members.map(({ name }) => name)).toEqual(['Hedda']);
});
