/** Doubt, the air, and what is said of the scene: on the ladder, in its table, and from one window to another. */
import type { Page } from '@playwright/test';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { CONDITION_REASONS } from '#server/core/readings/conditions.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { barriersOf } from './barriers.ts';
import { outlineScene } from './scene-planes.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { clickPoints, expect, makeBoard, measuresWhenReady, postPicture, stageOf, test } from './story.ts';

/** A board with both pictures and four planes; the far hills are 20 L* too dark. */
async function measuredBoard(server: AServer, who: Entered) {
  const board = await makeBoard(server, who, 'Bands in the air');
  const [reference, painting] = await Promise.all([
    sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
  ]);
  const there = await postPicture(server, who, board.id, reference, { kind: 'reference', rights: 'mine' });
  const here = await postPicture(server, who, board.id, painting, { kind: 'painting' });
  await outlineScene(server, who, board.id, there.id);
  const measured = async () =>
    (await measuresWhenReady(server, who, board.id, here.id)) as unknown as MeasureDocument; // what the call answers
  return { boardId: board.id, address: `${server.url}/boards/${board.id}`, measured };
}

const ladderOf = (page: Page) => page.getByRole('region', { name: 'Ladder' });

/** The leaf of the planes, once the board is there. */
async function planesOf(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(ladderOf(page).getByRole('button', { name: /Far hills/ })).toBeVisible({ timeout: 60_000 });
  await page.getByRole('tab', { name: 'Planes' }).click();
}

test('the ladder speaks of order without a card in the photo, and the table gives every interval', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Ilse');
  const { address, measured } = await measuredBoard(server, who);
  const { capture } = await measured();
  expect(capture.grade).toBe('C');
  await page.goto(address);
  const ladder = ladderOf(page);
  // 20 L* darker, but how many steps no one can say without something neutral in the photo; nor anything of colour.
  await expect(ladder.getByText('darker than in the reference', { exact: true })).toBeVisible();
  await expect(ladder.getByText('holds, as far as this photo tells').first()).toBeVisible();
  await expect(ladder.getByText('darker', { exact: true }).first()).toBeVisible();
  await expect(ladder.getByText('about the same', { exact: true }).first()).toBeVisible();
  await expect(ladder.getByText(/±|\bsteps?$/)).toHaveCount(0);
  await ladder.getByRole('button', { name: 'Table', exact: true }).click();
  const middles = ladder.getByRole('row', { name: /^middle \(L\*\)/ });
  await expect(middles.nth(1)).toHaveText(/66.*46, 36 to 56.*−20, −30 to −10/);
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await barriersOf(page), `table at ${width} px`).toEqual([]);
  }
});

test('a condition that one person switches on is seen by the others and keeps a reading quiet', async ({
  guest,
  server,
}) => {
  const owner = await guest('Ottilie');
  const { boardId, address, measured } = await measuredBoard(server, owner.who);
  const { token } = await server.json<{ token: string }>(
    owner.who,
    `/api/boards/${boardId}/invites`,
    'POST',
    {
      role: 'viewer',
      hours: 1,
    },
  );
  const viewer = await guest('Viggo', token);
  for (const { page } of [owner, viewer]) await planesOf(page, address);
  await expect(viewer.page.getByText('Nothing out of the ordinary is noted.')).toBeVisible();
  const heard = (await measured()).readings.filter(({ muted }) => muted === null).map(({ id }) => id);

  await owner.page.getByText('Say what light and weather it was').click();
  await owner.page.getByRole('checkbox', { name: 'Very clear air' }).check();
  await expect(viewer.page.getByText('Very clear air', { exact: true })).toBeVisible();
  await expect(viewer.page.getByRole('checkbox', { name: 'Very clear air' })).toHaveCount(0);
  await expect(async () => {
    const quiet = (await measured()).readings.filter(({ muted }) => muted === CONDITION_REASONS['clear-air']);
    expect(quiet.map(({ id }) => id).filter((id) => heard.includes(id)).length).toBeGreaterThan(0);
  }).toPass({ timeout: 30_000 });
  for (const width of [1440, 390]) {
    await owner.page.setViewportSize({ width, height: 900 });
    expect(await barriersOf(owner.page), `planes at ${width} px`).toEqual([]);
  }
});

test('a plane of the reference that is not trusted is said to be so, and not compared', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Tove');
  const { address, measured } = await measuredBoard(server, who);
  await planesOf(page, address);
  await page.getByRole('button', { name: /^Plane 2, Far hills/ }).click();
  await page.getByRole('button', { name: 'The photo is not to be trusted here' }).click();
  await page.getByLabel('Why not?').fill('the phone has cleared the haze');
  await page.getByRole('button', { name: 'Do not trust it here' }).click();
  const said = 'The photo is not trusted here: the phone has cleared the haze';
  await expect(ladderOf(page).getByText(said)).toBeVisible();
  await expect(async () => expect((await measured()).planes[1]?.gap).toBeNull()).toPass({ timeout: 30_000 });
  expect(await barriersOf(page), 'not trusted').toEqual([]);
  await page.getByRole('button', { name: 'Trust it again' }).click();
  await expect(ladderOf(page).getByText(said)).toHaveCount(0);
});

test('the air view shows the way back, and the air colour is picked by a tap and measured again', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Runa');
  const { address, measured } = await measuredBoard(server, who);
  const before = (await measured()).air.reference;
  await page.goto(address);
  const ladder = ladderOf(page);
  await ladder.getByRole('button', { name: 'Air', exact: true }).click();
  await expect(ladder.getByRole('region', { name: 'From far to near, on the way to the air' })).toBeVisible();
  await expect(ladder.getByText('goes back less far than in the reference').first()).toBeVisible();
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await barriersOf(page), `air at ${width} px`).toEqual([]);
  }
  await page.setViewportSize({ width: 1440, height: 900 });

  // The far hills, so that what is picked differs from what is measured in the sky.
  await ladder.getByRole('button', { name: 'Pick the air colour in the reference' }).click();
  await clickPoints(page, stageOf(page, 'Reference'), [[0.25, (RIDGES[0] + RIDGES[1]) / 2]]);
  await expect(ladder.getByText('picked by hand')).toBeVisible();
  const [L, a, b] = REFERENCE_BANDS[1] ?? [0, 0, 0];
  await expect(async () => {
    const air = (await measured()).air.reference;
    expect(Math.hypot((air?.L ?? 0) - L, (air?.a ?? 0) - a, (air?.b ?? 0) - b)).toBeLessThan(1);
  }).toPass({ timeout: 30_000 });

  await ladder.getByRole('button', { name: 'Go back to the measured air colour of the reference' }).click();
  await expect(ladder.getByText('picked by hand')).toHaveCount(0);
  await expect(async () => expect((await measured()).air.reference).toEqual(before)).toPass({
    timeout: 30_000,
  });
});
