/**
 * Shown work, hurt feelings: somebody blocks the author of a blunt remark in two presses, reports it, the host removes it
 * and leaves a line in the record, and a picture that is taken back is gone for whoever looks at it.
 */
import type { Locator, Page } from '@playwright/test';
import { putMark } from '#server/core/live/marks.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { aToken } from '../a-token.ts';
import { barriersOf } from '../barriers.ts';
import { PAINTING_BANDS, sceneFile } from '../scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf, test } from '../story.ts';
import { countActs, tellActs } from './acts.ts';

test.describe.configure({ timeout: 240_000 });

const SIZES = ['640', '1280', '2560', 'lossless-640'];

/** A board with a painting by Maren; Pia a peer. */
async function aScene(server: AServer, host: Entered) {
  const { id: boardId } = await makeBoard(server, host, 'The ford in October');
  const maren = await server.enter('Maren', await aToken(server, host, `boards/${boardId}`, 'painter'));
  const file = await sceneFile({ name: 'decency', bands: PAINTING_BANDS });
  const { id: pictureId } = await postPicture(server, maren, boardId, file, { kind: 'painting' });
  return { boardId, pictureId, maren };
}

const says = (
  server: AServer,
  who: Entered,
  boardId: string,
  pictureId: string,
  id: string,
  text: string,
  x: number,
) =>
  writeInto(server.url, who, boardId, 'marks', (doc) =>
    putMark(doc, {
      ...{ id, author: who.id, pictureId, kind: 'pin', text, planeId: null, parent: null, at: Date.now() },
      points: [[x, 0.4]],
    }),
  );

const remark = (page: Page, text: string): Locator => page.locator('[data-remark]').filter({ hasText: text });
const HARSH = 'Paint something else.';
const KIND = 'The far bank holds.';

test('two who block each other do not see one another any more, from before and from now on', async ({
  guest,
  server,
}) => {
  const host = await server.enter('Hedda');
  const { boardId, pictureId } = await aScene(server, host);
  const one = await guest('Petra', await aToken(server, host, `boards/${boardId}`, 'painter'));
  const two = await guest('Pia', await aToken(server, host, `boards/${boardId}`, 'peer'));
  for (const { page } of [one, two]) await countActs(page);
  await says(server, two.who, boardId, pictureId, 'harsh', HARSH, 0.3);
  await says(server, one.who, boardId, pictureId, 'kind', KIND, 0.6);
  for (const { page } of [one, two]) {
    await page.goto(`${server.url}/boards/${boardId}`);
    await expect(remark(page, HARSH)).toBeVisible();
    await expect(remark(page, KIND)).toBeVisible();
  }
  const stage = stageOf(two.page, 'Painting');
  const at = await placeOn(stage, 0.5, 0.5);
  await two.page.mouse.move(at.x, at.y);
  const pointer = stageOf(one.page, 'Painting').getByText('Pia', { exact: true });
  await expect(pointer).toBeVisible();

  await remark(one.page, HARSH)
    .getByRole('button', { name: /^Show remark/ })
    .click();
  await one.page.getByRole('button', { name: 'Block Pia' }).click();
  await expect(one.page.getByText('Neither of you sees what the other says')).toBeVisible();
  expect(await barriersOf(one.page), 'before blocking').toEqual([]);
  await one.page.getByRole('button', { name: 'Block Pia' }).click();
  await expect(remark(one.page, HARSH)).toHaveCount(0, { timeout: 5_000 });
  await expect(remark(two.page, KIND)).toHaveCount(0, { timeout: 5_000 });
  await two.page.mouse.move(at.x + 20, at.y + 20);
  await expect(pointer).toHaveCount(0);

  await tellActs('A blunt remark, its author blocked', { painter: one.page });

  await one.page.goto(`${server.url}/account`);
  await one.page.getByRole('button', { name: 'Unblock Pia' }).click();
  await expect(one.page.getByText('You block nobody.')).toBeVisible();
  expect(await barriersOf(one.page), 'oneself').toEqual([]);
  await expect(remark(two.page, KIND)).toBeVisible({ timeout: 5_000 });
});

test('a remark is reported; the host reads it, removes it, and the reporter is told', async ({
  guest,
  server,
}) => {
  const host = await guest('Hedda');
  const { boardId, pictureId } = await aScene(server, host.who);
  const painter = await guest('Petra', await aToken(server, host.who, `boards/${boardId}`, 'painter'));
  const peer = await server.enter('Pia', await aToken(server, host.who, `boards/${boardId}`, 'peer'));
  await says(server, peer, boardId, pictureId, 'harsh', HARSH, 0.3);
  const { page } = painter;
  for (const each of [page, host.page]) await countActs(each);
  await page.goto(`${server.url}/boards/${boardId}`);
  await remark(page, HARSH)
    .getByRole('button', { name: /^Show remark/ })
    .click();
  await page.getByRole('button', { name: 'Report this by Pia' }).click();
  await page.getByLabel('What is the matter?').fill('This is not about the picture.');
  await expect(page.getByText(/never to the one it is about/)).toBeVisible();
  expect(await barriersOf(page), 'reporting').toEqual([]);
  await page.getByRole('button', { name: 'Send the report' }).click();
  await expect(page.getByText(/^It was sent/)).toBeVisible();

  await host.page.goto(server.url);
  await host.page.getByRole('link', { name: 'Reports and records' }).click();
  const row = host.page.getByRole('listitem').filter({ hasText: 'This is not about the picture.' });
  await expect(row.getByText(HARSH)).toBeVisible();
  expect(await barriersOf(host.page), 'house matters').toEqual([]);
  await row.getByRole('button', { name: 'Remove the remark' }).click();
  await row.getByRole('button', { name: 'Remove the remark' }).click();
  await expect(host.page.getByText(/the remark was removed,/)).toBeVisible();
  await expect(host.page.getByText(/Hedda removed a remark of Pia from/)).toBeVisible();

  await tellActs('A report, read and acted on', { painter: page, host: host.page });
  await page.goto(`${server.url}/boards/${boardId}`);
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
  await expect(remark(page, HARSH)).toHaveCount(0);
  await page.goto(`${server.url}/house`);
  await expect(page.getByText(/the remark was removed,/)).toBeVisible();
  await expect(page.getByText(HARSH)).toHaveCount(0);
});

test('a picture that is taken back is gone for who looks at it, with every link', async ({
  guest,
  server,
}) => {
  const host = await guest('Hedda');
  const { boardId, pictureId, maren } = await aScene(server, host.who);
  const peer = await guest('Pia', await aToken(server, host.who, `boards/${boardId}`, 'peer'));
  await says(server, peer.who, boardId, pictureId, 'kind', KIND, 0.6);
  await peer.page.goto(`${server.url}/boards/${boardId}`);
  await expect(stageOf(peer.page, 'Painting').locator('img').first()).toBeVisible();
  const links = SIZES.map((size) => `/api/boards/${boardId}/pictures/${pictureId}/${size}`);
  const answers = () =>
    peer.page.evaluate((all) => Promise.all(all.map(async (link) => (await fetch(link)).status)), links);
  expect(await answers()).toEqual(links.map(() => 200));

  const taken = await server.call(maren, `/api/boards/${boardId}/pictures/${pictureId}`, {
    method: 'DELETE',
  });
  expect(taken.status).toBe(204);
  expect(await answers()).toEqual(links.map(() => 404));
  await expect(stageOf(peer.page, 'Painting')).toHaveCount(0);
  await expect(remark(peer.page, KIND)).toHaveCount(0);
});
