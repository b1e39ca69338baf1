/** Every screen by axe: nothing serious, at desktop and phone width, on each grey. */
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, postPicture, stageOf, test } from './story.ts';

const SIZES = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

for (const viewport of SIZES) {
  test(`no screen has a barrier at ${viewport.width} px`, async ({ guest, browser, server }) => {
    const stranger = await (await browser.newContext({ viewport })).newPage();
    for (const path of [
      '/',
      `/enter?key=${server.hostKey}`,
      '/join/no-such-invitation',
      '/boards/no-such-board',
    ]) {
      await stranger.goto(`${server.url}${path}`);
      expect(await barriersOf(stranger), path).toEqual([]);
    }
    await stranger.context().close();

    const { page, who } = await guest('Ilse');
    await page.setViewportSize(viewport);
    await page.goto(server.url);
    expect(await barriersOf(page), 'boards').toEqual([]);
    const board = await server.json<{ id: string }>(who, '/api/boards', 'POST', { title: 'For every eye' });
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(page.getByRole('heading', { name: 'Begin with a picture' })).toBeVisible();
    expect(await barriersOf(page), 'empty board').toEqual([]);

    const reference = await sceneFile({ name: 'reference', bands: REFERENCE_BANDS });
    const painting = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
    await postPicture(server, who, board.id, reference, { kind: 'reference', rights: 'mine' });
    await postPicture(server, who, board.id, painting, { kind: 'painting' });
    await page.reload();
    await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
    expect(await barriersOf(page), 'board with pictures').toEqual([]);

    await page.getByRole('tab', { name: 'Planes' }).click();
    await page.getByRole('button', { name: 'Add Sky' }).click();
    await page.getByRole('button', { name: 'The whole picture' }).click();
    expect(await barriersOf(page), 'outlining').toEqual([]);
    await page.getByRole('tab', { name: 'Talk' }).click();
    expect(await barriersOf(page), 'talk').toEqual([]);
    await page.getByRole('button', { name: /^People/ }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
    expect(await barriersOf(page), 'people').toEqual([]);
  });
}
