/**
 * Several browsers on one board with a reference and a painting: opening it, remarking by hand, and what is seen of the
 * painting on each screen.
 */
import type { Browser, Page } from '@playwright/test';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { expect, makeBoard, placeOn, postPicture, stageOf } from './story.ts';

export async function aBoard(server: AServer, title: string) {
  const owner = await server.enter('Hedda');
  const { id } = await makeBoard(server, owner, title);
  const reference = await sceneFile({ name: 'line-reference', bands: REFERENCE_BANDS });
  await postPicture(server, owner, id, reference, { kind: 'reference', rights: 'mine' });
  const painting = await sceneFile({ name: 'line-painting', bands: PAINTING_BANDS });
  await postPicture(server, owner, id, painting, { kind: 'painting' });
  const invite = async (role: string) => {
    const body = { role, hours: 2 };
    return (await server.json<{ token: string }>(owner, `/api/boards/${id}/invites`, 'POST', body)).token;
  };
  return { id, owner, invite };
}

/** A browser of somebody who entered before, on a line of its own choice. */
export async function aWindow(
  browser: Browser,
  who: Entered,
  url: string,
  viewport = { width: 1440, height: 900 },
) {
  const context = await browser.newContext({ viewport });
  const [name = '', ...value] = who.cookie.split('=');
  await context.addCookies([{ name, value: value.join('='), url }]);
  return { context, page: await context.newPage() };
}

export async function openBoard(page: Page, url: string, boardId: string) {
  await page.goto(`${url}/boards/${boardId}`);
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
}

export async function say(page: Page, x: number, text: string) {
  await sayAt(page, () => placeOn(stageOf(page, 'Painting'), x, 0.4), text);
}

export async function sayAt(page: Page, place: () => Promise<{ x: number; y: number }>, text: string) {
  await page.getByRole('button', { name: /^Mark/ }).first().click();
  const at = await place();
  await page.mouse.click(at.x, at.y);
  await page.getByLabel('What do you see here?').fill(text);
  await page.getByRole('button', { name: 'Say it' }).click();
  await expect(page.getByText(text).first()).toBeVisible();
}
