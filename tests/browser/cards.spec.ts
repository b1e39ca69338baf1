/** Cards and readings in two windows: the painter answers and means, a teacher rewrites, each sees the other. */
import type { Page } from '@playwright/test';
import type { AServer } from '#tests/helpers/a-server.ts';
import { barriersOf } from './barriers.ts';
import { outlineScene } from './scene-planes.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, measuresWhenReady, postPicture, test } from './story.ts';

/** A board with a reference and its four planes, and links for a painter and a teacher. */
async function aClass(server: AServer) {
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, 'Two hands on one card');
  const there = await postPicture(
    server,
    owner,
    board.id,
    await sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    { kind: 'reference', rights: 'mine' },
  );
  await outlineScene(server, owner, board.id, there.id);
  const link = async (role: string) =>
    (
      await server.json<{ token: string }>(owner, `/api/boards/${board.id}/invites`, 'POST', {
        role,
        hours: 2,
      })
    ).token;
  return { boardId: board.id, painterLink: await link('painter'), teacherLink: await link('teacher') };
}

const hillsCard = (page: Page) => page.getByRole('button', { name: /^Far hills, / });

test('what the painter answers and means, and what a teacher writes, is seen by both', async ({
  guest,
  server,
}) => {
  const { boardId, painterLink, teacherLink } = await aClass(server);
  const painter = await guest('Pelle', painterLink);
  const painting = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  const { id } = await postPicture(server, painter.who, boardId, painting, { kind: 'painting' });
  await measuresWhenReady(server, painter.who, boardId, id);
  const teacher = await guest('Tilda', teacherLink);
  for (const { page } of [painter, teacher]) {
    await page.goto(`${server.url}/boards/${boardId}`);
    // Nothing neutral stands in the photo, so that comes first; the hills that sank come after it.
    await expect(
      page.getByRole('heading', { name: /^The photo of the painting: photograph again/ }),
    ).toBeVisible({ timeout: 60_000 });
    await expect(page.getByText(/amounts are not said and colour is withheld/)).toBeVisible();
    await hillsCard(page).click();
  }

  await painter.page.getByRole('group', { name: 'Answer to Far hills' }).getByText('Another way').click();
  await painter.page.getByLabel('How will you do it?').fill('A veil of sky colour over all of them.');
  await painter.page.keyboard.press('Enter');
  await expect(painter.page.getByText('You do it another way.')).toBeVisible();
  await expect(hillsCard(painter.page)).toBeFocused();
  await expect(teacher.page.getByText('Pelle does it another way.')).toBeVisible();
  await expect(teacher.page.getByText('“A veil of sky colour over all of them.”')).toBeVisible();

  const tools = teacher.page.getByRole('group', { name: 'Change the card of Far hills' });
  await tools.getByRole('button', { name: 'Rewrite' }).click();
  await teacher.page.getByLabel('What to do').fill('lift them until they lie behind the wood');
  await teacher.page.getByRole('button', { name: 'Keep', exact: true }).click();
  for (const { page } of [painter, teacher]) {
    await expect(hillsCard(page)).toHaveText('Far hills, lift them until they lie behind the wood');
    await expect(page.getByText('In the teacher’s words')).toBeVisible();
  }
  await tools.getByRole('button', { name: 'Move up' }).click();
  await expect(painter.page.getByRole('heading', { level: 3 }).first()).toHaveText(/^Far hills/);
  // A painter may not change cards, so nothing offers it.
  await expect(painter.page.getByRole('button', { name: 'Rewrite' })).toHaveCount(0);

  for (const { page } of [painter, teacher]) await page.getByText(/^All \d+ readings$/).click();
  const readings = painter.page.locator('details', { hasText: /^All \d+ readings/ });
  await readings.getByRole('button', { name: 'I meant it' }).last().click();
  await painter.page.getByLabel('What did you want with it? (if you like)').fill('A storm is coming.');
  await painter.page.keyboard.press('Enter');
  for (const { page } of [painter, teacher]) {
    await expect(page.getByText('Meant: “A storm is coming.”')).toBeVisible({ timeout: 30_000 });
  }

  for (const { page, troubles } of [painter, teacher]) {
    for (const width of [1440, 390]) {
      await page.setViewportSize({ width, height: 900 });
      if (width < 1000) await page.getByRole('tab', { name: 'Talk' }).click();
      expect(await barriersOf(page), `cards at ${width} px`).toEqual([]);
    }
    expect(troubles).toEqual([]);
  }
});
