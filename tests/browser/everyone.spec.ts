/** Every screen by axe: nothing serious, at desktop and phone width, on each grey. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './story.ts';

const SIZES = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

async function troublesOf(page: import('@playwright/test').Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join('; ')}`);
}

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
      expect(await troublesOf(stranger), path).toEqual([]);
    }
    await stranger.context().close();

    const { page, who } = await guest('Ilse');
    await page.setViewportSize(viewport);
    await page.goto(server.url);
    expect(await troublesOf(page), 'boards').toEqual([]);
    const board = await server.json<{ id: string }>(who, '/api/boards', 'POST', { title: 'For every eye' });
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(page.getByRole('heading', { name: 'Begin with a picture' })).toBeVisible();
    expect(await troublesOf(page), 'empty board').toEqual([]);
  });
}
