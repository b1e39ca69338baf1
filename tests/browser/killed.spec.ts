/** The server dies between two marks (kill −9) and comes back on the same port: nothing that was shown is lost. */
import { createServer } from 'node:net';
import { startAServer } from '#tests/helpers/a-server.ts';
import { PAINTING_BANDS, sceneFile } from './scenes.ts';
import { aGuest, expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

function aFreePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

test('kill −9 between two marks loses nothing that was shown', async ({ browser }) => {
  test.setTimeout(240_000);
  const environment = { PORT: String(await aFreePort()) };
  let server = await startAServer({ environment });
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, 'A hard stop');
  await postPicture(server, owner, board.id, await sceneFile({ name: 'hard', bands: PAINTING_BANDS }), {
    kind: 'painting',
  });
  const { token } = await server.json<{ token: string }>(owner, `/api/boards/${board.id}/invites`, 'POST', {
    role: 'teacher',
    hours: 2,
  });
  const one = await aGuest(await browser.newContext(), server, 'Teodor', token);
  const two = await aGuest(await browser.newContext(), server, 'Hanne', token);
  for (const { page } of [one, two]) {
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
  }
  const say = async (page: typeof one.page, x: number, text: string) => {
    await page.getByRole('button', { name: /^Mark/ }).first().click();
    const at = await placeOn(stageOf(page, 'Painting'), x, 0.6);
    await page.mouse.click(at.x, at.y);
    await page.getByLabel('What do you see here?').fill(text);
    await page.getByRole('button', { name: 'Say it' }).click();
  };

  await say(one.page, 0.3, 'The first of two.');
  await expect(two.page.getByText('The first of two.').first()).toBeVisible();
  await server.kill();
  server = await startAServer({ environment, dataFolder: server.dataFolder });
  await say(one.page, 0.6, 'The second of two.');
  await expect(two.page.getByText('The second of two.').first()).toBeVisible({ timeout: 60_000 });

  const late = await aGuest(await browser.newContext(), server, 'Lene', token);
  await late.page.goto(`${server.url}/boards/${board.id}`);
  for (const { page } of [one, two, late]) {
    await expect(page.getByText('The first of two.').first()).toBeVisible({ timeout: 30_000 });
    await expect(page.getByText('The second of two.').first()).toBeVisible({ timeout: 30_000 });
  }
  for (const { context } of [one, two, late]) await context.close();
  await server.stop();
});
