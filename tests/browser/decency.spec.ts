/**
 * Decency in browsers: two who block each other, a report and what the host does about it, a picture taken back, the
 * school setting.
 */
import type { Locator, Page } from '@playwright/test';
import type { InviteView } from '#server/core/contract/responses.ts';
import { putMark } from '#server/core/live/marks.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { HEALTH_LINE } from '#server/core/readings/health-line.ts';
import { OWN_WAY } from '#server/core/readings/without-mixing.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

test.describe.configure({ timeout: 240_000 });

const SIZES = ['640', '1280', '2560', 'lossless-640'];

async function aToken(server: AServer, host: Entered, place: string, role: string): Promise<string> {
  return (await server.json<InviteView>(host, `/api/${place}/invites`, 'POST', { role, hours: 2, uses: 1 }))
    .token;
}

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
  await host.page.getByRole('link', { name: 'House matters' }).click();
  const row = host.page.getByRole('listitem').filter({ hasText: 'This is not about the picture.' });
  await expect(row.getByText(HARSH)).toBeVisible();
  expect(await barriersOf(host.page), 'house matters').toEqual([]);
  await row.getByRole('button', { name: 'Remove the remark' }).click();
  await row.getByRole('button', { name: 'Remove the remark' }).click();
  await expect(host.page.getByText(/the remark was removed,/)).toBeVisible();
  await expect(host.page.getByText(/Hedda removed a remark of Pia from/)).toBeVisible();

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

test('the school setting shows made-up names and hides how paint is mixed', async ({ guest, server }) => {
  const host = await guest('Hedda');
  const { id: groupId } = await server.json<{ id: string }>(host.who, '/api/groups', 'POST', {
    name: 'Class 8b',
  });
  const body = { title: 'The ford in October', group: groupId };
  const { id: boardId } = await server.json<{ id: string }>(host.who, '/api/boards', 'POST', body);
  const join = (role: string) => aToken(server, host.who, `groups/${groupId}`, role);
  const maren = await server.enter('Maren', await join('painter'));
  const peer = await guest('Pia', await join('peer'));
  const file = (name: string, bands: typeof PAINTING_BANDS) => sceneFile({ name, bands });
  const reference = await postPicture(server, host.who, boardId, await file('decency-r', REFERENCE_BANDS), {
    ...{ kind: 'reference', rights: 'mine' },
  });
  const painting = await postPicture(server, maren, boardId, await file('decency-p', PAINTING_BANDS), {
    kind: 'painting',
  });
  const bands = [
    ['sky', 0, 0.3],
    ['hills', 0.3, 0.5],
    ['wood', 0.5, 0.72],
    ['meadow', 0.72, 1],
  ] as const;
  const outline = (top: number, bottom: number): [number, number][] => [
    [0, top],
    [1, top],
    [1, bottom],
    [0, bottom],
  ];
  await writeInto(server.url, host.who, boardId, 'setup', (doc) => {
    for (const [id, top, bottom] of bands) {
      addPlane(doc, { id, name: id, kind: id === 'sky' ? 'sky' : 'land', tilt: null });
      putReferenceOutline(doc, reference.id, id, outline(top, bottom));
    }
  });
  await writeInto(server.url, host.who, boardId, `painting/${painting.id}`, (doc) => {
    for (const [id, top, bottom] of bands) putPaintingOutline(doc, id, outline(top, bottom));
  });
  const hints = async () => {
    const response = await server.call(peer.who, `/api/boards/${boardId}/measures/${painting.id}`);
    if (response.status !== 200) return null;
    const { cards } = (await response.json()) as { cards: { actions: { how: string; mixes: boolean }[] }[] };
    return cards.flatMap(({ actions }) => actions.filter(({ mixes }) => mixes).map(({ how }) => how));
  };
  await expect.poll(async () => (await hints())?.length ?? 0, { timeout: 60_000 }).toBeGreaterThan(0);
  const said = (await hints()) ?? [];
  await peer.page.goto(`${server.url}/boards/${boardId}`);
  const card = peer.page.getByRole('button', { name: /^Hills, / });
  await card.click();
  await expect(peer.page.getByText(said[0] ?? 'a hint').first()).toBeVisible();
  await expect(peer.page.getByText(HEALTH_LINE)).toBeVisible();

  await host.page.goto(`${server.url}/groups/${groupId}`);
  await host.page.getByLabel('No mixing hints').check();
  await host.page.getByLabel('Made-up names').check();
  expect(await barriersOf(host.page), 'a group').toEqual([]);
  await host.page.getByRole('button', { name: 'Keep the setting' }).click();
  await expect(host.page.getByText('The setting holds from now on.')).toBeVisible();
  expect(await hints()).toEqual([]);

  await peer.page.reload();
  await peer.page.getByRole('button', { name: /^People/ }).click();
  await expect(peer.page.getByText(/^The other members see you here as [A-Z]/)).toBeVisible();
  await expect(peer.page.getByText('Maren')).toHaveCount(0);
  await expect(peer.page.getByText('Hedda').first()).toBeVisible();
  expect(await barriersOf(peer.page), 'people under made-up names').toEqual([]);
  await peer.page.getByRole('button', { name: 'Close', exact: true }).click();
  await card.click();
  await expect(peer.page.getByText(OWN_WAY).first()).toBeVisible();
  for (const how of [...said, HEALTH_LINE]) await expect(peer.page.getByText(how)).toHaveCount(0);
});
