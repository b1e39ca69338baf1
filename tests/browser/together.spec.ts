/** Two people on one board: what one does the other sees, what a dropped line missed comes later, nothing is lost. */
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

async function aSharedBoard(server: import('#tests/helpers/a-server.ts').AServer, title: string) {
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, title);
  const reference = await postPicture(
    server,
    owner,
    board.id,
    await sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    { kind: 'reference', rights: 'mine' },
  );
  const painting = await postPicture(
    server,
    owner,
    board.id,
    await sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
    { kind: 'painting' },
  );
  const { token } = await server.json<{ token: string }>(owner, `/api/boards/${board.id}/invites`, 'POST', {
    role: 'teacher',
    hours: 2,
  });
  return { board, owner, reference, painting, token };
}

test('two people mark one board together', async ({ guest, server }) => {
  const { board, token } = await aSharedBoard(server, 'Two hands');
  const teacher = await guest('Teodor', token);
  const peerToken = await server.json<{ token: string }>(
    await server.enter('Hedda again'),
    `/api/boards/${board.id}/invites`,
    'POST',
    { role: 'peer', hours: 2 },
  );
  const peer = await guest('Pia', peerToken.token);
  for (const { page } of [teacher, peer]) await page.goto(`${server.url}/boards/${board.id}`);

  const stage = stageOf(teacher.page, 'Painting');
  await expect(stage.locator('img').first()).toBeVisible();
  await teacher.page.getByRole('button', { name: /^Mark/ }).first().click();
  const at = await placeOn(stage, 0.5, 0.4);
  await teacher.page.mouse.click(at.x, at.y);
  await teacher.page.getByLabel('What do you see here?').fill('The hills come forward.');
  await teacher.page.getByRole('button', { name: 'Say it' }).click();

  const remark = peer.page.getByText('The hills come forward.').first();
  await expect(remark).toBeVisible();
  await peer.page.getByRole('button', { name: 'Answer' }).first().click();
  await peer.page.getByRole('textbox', { name: /Answer to Teodor/ }).fill('Lift the darks?');
  await peer.page.getByRole('button', { name: 'Send' }).first().click();
  await expect(teacher.page.getByText('Lift the darks?').first()).toBeVisible();

  // A freehand line drawn by the peer reaches the teacher.
  await peer.page.getByRole('button', { name: /^Mark/ }).first().click();
  await peer.page.getByRole('radio', { name: 'Line', exact: true }).click();
  const peerStage = stageOf(peer.page, 'Painting');
  const from = await placeOn(peerStage, 0.2, 0.3);
  const to = await placeOn(peerStage, 0.6, 0.35);
  await peer.page.mouse.move(from.x, from.y);
  await peer.page.mouse.down();
  await peer.page.mouse.move((from.x + to.x) / 2, from.y - 10, { steps: 5 });
  await peer.page.mouse.move(to.x, to.y, { steps: 5 });
  await peer.page.mouse.up();
  await expect(stage.getByRole('button', { name: /^Line \d+ by Pia/ })).toBeAttached();

  // Whoever points is seen with their name.
  const point = await placeOn(peerStage, 0.7, 0.6);
  await peer.page.mouse.move(point.x, point.y, { steps: 4 });
  await expect(stage.getByText('Pia', { exact: true })).toBeVisible();
  expect(teacher.troubles).toEqual([]);
  expect(peer.troubles).toEqual([]);
});

test('a browser that was offline catches up and loses nothing', async ({ guest, server }) => {
  const { board, token } = await aSharedBoard(server, 'A dropped line');
  const one = await guest('Teodor', token);
  const two = await guest('Hanne', token);
  for (const { page } of [one, two]) {
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
  }
  const say = async (page: typeof one.page, x: number, text: string) => {
    await page.getByRole('button', { name: /^Mark/ }).first().click();
    const at = await placeOn(stageOf(page, 'Painting'), x, 0.4);
    await page.mouse.click(at.x, at.y);
    await page.getByLabel('What do you see here?').fill(text);
    await page.getByRole('button', { name: 'Say it' }).click();
  };
  await say(one.page, 0.2, 'Before the line went.');
  await expect(two.page.getByText('Before the line went.').first()).toBeVisible();

  await two.context.setOffline(true);
  await say(two.page, 0.5, 'Written without a line.');
  await say(one.page, 0.8, 'Said meanwhile.');
  await two.context.setOffline(false);

  for (const { page } of [one, two]) {
    for (const text of ['Before the line went.', 'Written without a line.', 'Said meanwhile.']) {
      await expect(page.getByText(text).first()).toBeVisible({ timeout: 45_000 });
    }
  }
});
