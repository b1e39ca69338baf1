/**
 * A school on a server of its own: a guardian answers for a minor's pictures, members have made-up names, cards do not say
 * how paint is mixed, invitations are for one person, and no page asks anything of another host.
 */
import type { Page } from '@playwright/test';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { HEALTH_LINE } from '#server/core/readings/health-line.ts';
import { OWN_WAY } from '#server/core/readings/without-mixing.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { aToken } from '../a-token.ts';
import { barriersOf } from '../barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from '../scenes.ts';
import { expect, makeBoard, postPicture, test } from '../story.ts';
import { countActs, tellActs } from './acts.ts';

test.describe.configure({ timeout: 240_000 });

/** Addresses of other hosts that this page asks anything of. */
function asksElsewhere(page: Page, url: string): string[] {
  const elsewhere: string[] = [];
  const own = new URL(url).host;
  const heard = (address: string) => {
    const { host, protocol } = new URL(address);
    if (!['data:', 'blob:'].includes(protocol) && host !== own) elsewhere.push(address);
  };
  page.on('request', (request) => heard(request.url()));
  page.on('websocket', (socket) => heard(socket.url()));
  return elsewhere;
}

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
  const elsewhere = [host, peer].map(({ page }) => asksElsewhere(page, server.url));
  for (const { page } of [host, peer]) await countActs(page);
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
  await expect(host.page.getByText('The setting counts from now on.')).toBeVisible();
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
  expect(elsewhere).toEqual([[], []]);
  await tellActs('A school sets what it does not allow', { host: host.page, pupil: peer.page });
});

test('a guardian says what a minor’s pictures may be used for', async ({ guest, server }) => {
  const host = await guest('Hedda');
  const { id: boardId } = await makeBoard(server, host.who, 'The weir');
  const place = `boards/${boardId}`;
  const minor = await server.enter('Majken', await aToken(server, host.who, place, 'painter'));
  const { page } = await guest('Gudrun', await aToken(server, host.who, place, 'guardian', minor.id));
  await countActs(page);
  await page.goto(`${server.url}/boards/${boardId}`);
  await page.getByRole('button', { name: /^People/ }).click();
  await expect(page.getByText('Gudrun, guardian of Majken, you')).toBeVisible();
  const shown = page.getByLabel('shown to everybody on this board');
  await expect(shown).not.toBeChecked();
  await shown.check();
  await expect(page.getByLabel(/^shown to everybody on this board \(Gudrun, /)).toBeChecked();
  expect(await barriersOf(page), 'consent').toEqual([]);
  await page.getByLabel('used as an example in teaching').check();
  await expect(page.getByLabel(/^used as an example in teaching \(Gudrun, /)).toBeChecked();
  await shown.uncheck();
  await expect(shown).not.toBeChecked();
  await tellActs('A guardian and a minor’s pictures', { guardian: page });
});
