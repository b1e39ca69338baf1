/** Running a class besides its usual course: a turn left for later, the clock held, who had none when it stops. */
import { anInvite, strip } from './class-strip.ts';
import { PAINTING_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, postPicture, test } from './story.ts';

test('a turn is left for later, the clock is held, and who had none is told when the class stops', async ({
  guest,
  server,
}) => {
  const host = await guest('Hedda');
  const { id: boardId } = await makeBoard(server, host.who, 'Two of us');
  const painter = await guest('Pelle', await anInvite(server, host.who, boardId, 'painter'));
  const file = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  for (const who of [host.who, painter.who])
    await postPicture(server, who, boardId, file, { kind: 'painting' });
  const { page } = host;
  await page.goto(`${server.url}/boards/${boardId}`);
  await page.getByRole('button', { name: 'Begin a class' }).click();
  const dialog = page.getByRole('dialog', { name: 'Begin a class' });
  await dialog.getByRole('button', { name: 'Draw the order by lot' }).click();
  await dialog.getByRole('button', { name: 'Begin with the silent look' }).click();
  const order = page.getByRole('listitem').filter({ hasText: /now$|to come$/ });
  const first = (await order.first().locator('span').first().textContent()) ?? '';
  await page.getByRole('button', { name: 'Come back to this painting last' }).click();
  await expect(order.last()).toContainText(first);
  await page.getByRole('button', { name: 'Hold the clock' }).click();
  await expect(strip(page).getByText('Held')).toBeVisible();
  await page.getByRole('button', { name: 'Let it go on' }).click();
  await expect(strip(page).getByText('Held')).toHaveCount(0);
  await page.getByRole('button', { name: 'End this turn' }).click();
  await page.getByRole('button', { name: 'Stop the class here' }).click();
  await expect(page.getByText(`No turn yet: ${first}.`)).toBeVisible();
  await page.getByRole('button', { name: 'Go on with them' }).click();
  await expect(strip(page).getByText('Silent look', { exact: true })).toBeVisible();
});
