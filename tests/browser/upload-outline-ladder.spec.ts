/** The main job by hand: link, name, two pictures, planes outlined far to near, the ladder. */
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { clickPoints, expect, makeBoard, postPicture, stageOf, test } from './story.ts';

const NAMES = ['Sky', 'Far hills', 'Middle ground', 'Foreground'];

/** A tenth of a step: the grain and eight-bit codes of the scene allow no less. */
const L_TOLERANCE = 1;

/** Which planes are not as light as they were painted, each with its own figure. */
function far(
  measured: readonly (number | null | undefined)[],
  bands: readonly (readonly [number, number, number])[],
): string[] {
  return bands.flatMap(([l], at) =>
    Math.abs((measured[at] ?? Number.NaN) - l) < L_TOLERANCE
      ? []
      : [`${NAMES[at]}: ${measured[at]}, not ${l}`],
  );
}

test('a newcomer gets from the link to the ladder of their own two pictures', async ({ browser, server }) => {
  const [reference, painting] = await Promise.all([
    sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
  ]);
  const context = await browser.newContext();
  const page = await context.newPage();

  await page.goto(`${server.url}/enter?key=${server.hostKey}`);
  await page.getByLabel('Your name').fill('Ilse');
  await page.getByRole('button', { name: 'Enter' }).click();

  await page.getByRole('button', { name: 'New board' }).first().click();
  await page.getByLabel('What is the scene?').fill('Bands of an even day');
  await page.getByRole('button', { name: 'Make the board' }).click();
  await expect(page.getByRole('heading', { name: 'Begin with a picture' })).toBeVisible();

  await page.locator('input[type=file][multiple]').first().setInputFiles([reference, painting]);
  const sheet = page.getByRole('dialog');
  const rows = sheet.getByRole('list').first().locator('> li');
  await rows.nth(0).getByLabel('A reference').check();
  await rows.nth(0).getByLabel('I took it myself').check();
  await rows.nth(1).getByLabel('A painting').check();
  await sheet.getByRole('button', { name: 'Post all 2' }).click();
  await expect(stageOf(page, 'Reference').locator('img').first()).toBeVisible({ timeout: 30_000 });
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible({ timeout: 30_000 });

  await page.getByRole('tab', { name: 'Planes' }).click();
  await page.getByRole('button', { name: 'Add Sky' }).click();
  await page.getByRole('button', { name: 'The whole picture' }).click();
  const ridges = [
    ['Far hills', RIDGES[0]],
    ['Middle ground', RIDGES[1]],
    ['Foreground', RIDGES[2]],
  ] as const;
  for (const [name, ridge] of ridges) {
    await page.getByRole('button', { name: `Add ${name}` }).click();
    await clickPoints(page, stageOf(page, 'Reference'), [
      [0.01, ridge],
      [0.5, ridge],
      [0.99, ridge],
    ]);
    await page.getByRole('button', { name: 'Finish' }).click();
  }
  await page.getByRole('button', { name: 'Carry the planes over' }).first().click();
  await page.getByRole('button', { name: 'Take them' }).click({ timeout: 60_000 });

  const ladder = page.getByRole('region', { name: 'Ladder' });
  await expect(ladder.getByRole('button', { name: /Far hills/ })).toBeVisible({ timeout: 30_000 });
  await expect(ladder.getByText(/darker than in the reference/).first()).toBeVisible({ timeout: 30_000 });

  const boardId = /boards\/([0-9a-f-]+)/.exec(page.url())?.[1] ?? '';
  const view = await page.evaluate(async (id) => (await fetch(`/api/boards/${id}`)).json(), boardId);
  const paintingId = view.pictures.find((picture: { kind: string }) => picture.kind === 'painting').id;
  // The ladder may show the browser's own preview first, and the server what it measured before the planes were taken;
  // the figures checked here are the server's once it has measured them.
  await expect(async () => {
    const figures = await page.evaluate(
      async ([id, picture]): Promise<MeasureDocument> =>
        (await fetch(`/api/boards/${id}/measures/${picture}`)).json(),
      [boardId, paintingId],
    );
    expect(figures.planes.map((plane) => plane.name)).toEqual(NAMES);
    expect(
      far(
        figures.planes.map((plane) => plane.reference?.mid),
        REFERENCE_BANDS,
      ),
    ).toEqual([]);
    expect(
      far(
        figures.planes.map((plane) => plane.painting.mid),
        PAINTING_BANDS,
      ),
    ).toEqual([]);
  }).toPass({ timeout: 30_000 });
  await context.close();
});

test('a board without a reference measures the painting alone', async ({ guest, server }) => {
  const { page, who } = await guest('Ottilie');
  const board = await makeBoard(server, who, 'From life');
  await postPicture(server, who, board.id, await sceneFile({ name: 'from-life', bands: PAINTING_BANDS }), {
    kind: 'painting',
  });
  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).click();
  await page.getByRole('button', { name: 'Add Sky' }).click();
  await page.getByRole('button', { name: 'The whole picture' }).click();
  await page.getByRole('button', { name: 'Add Foreground' }).click();
  await clickPoints(page, stageOf(page, 'Painting'), [
    [0.02, RIDGES[2]],
    [0.98, RIDGES[2]],
  ]);
  await page.keyboard.press('Enter');
  await expect(
    page.getByRole('region', { name: 'Ladder' }).getByRole('button', { name: /Foreground/ }),
  ).toBeVisible({
    timeout: 30_000,
  });
});

test('a refused file says why and leaves the board as it was', async ({ guest, server }) => {
  const { page, who } = await guest('Runa');
  const board = await makeBoard(server, who, 'Refusals');
  await page.goto(`${server.url}/boards/${board.id}`);
  await page
    .locator('input[type=file][multiple]')
    .first()
    .setInputFiles({
      name: 'notes.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('These are only words about a picture.\n'.repeat(20)),
    });
  const sheet = page.getByRole('dialog');
  await sheet.getByLabel('A painting').check();
  await sheet.getByRole('button', { name: 'Post it' }).click();
  await expect(page.getByText(/not a picture/)).toBeVisible({ timeout: 20_000 });
  const view = await server.json<{ pictures: unknown[] }>(who, `/api/boards/${board.id}`);
  expect(view.pictures).toEqual([]);
});
