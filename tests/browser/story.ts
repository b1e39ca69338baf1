/**
 * What the browser tests share: a server for the worker, people with browsers of their own, and the hands that
 * work the board the way a person would.
 */
import { type BrowserContext, test as base, expect, type Locator, type Page } from '@playwright/test';
import { type AServer, type Entered, startAServer } from '#tests/helpers/a-server.ts';

export interface Guest {
  page: Page;
  context: BrowserContext;
  who: Entered;
  /** Errors that the page threw or logged. A test that expects none says so at its end. */
  troubles: string[];
}

interface Fixtures {
  /** Opens a browser of its own for somebody who entered with this key (the host's unless given), at a desk unless said. */
  guest(name: string, key?: string, seat?: Seat): Promise<Guest>;
}

/** What somebody holds in their hands. */
export interface Seat {
  viewport: { width: number; height: number };
  hasTouch: boolean;
}

export const test = base.extend<Fixtures, { server: AServer }>({
  server: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the fixture's needs from this pattern.
    async ({}, use) => {
      const server = await startAServer();
      await use(server);
      await server.stop();
    },
    { scope: 'worker', timeout: 180_000 },
  ],
  guest: async ({ browser, server }, use) => {
    const contexts: BrowserContext[] = [];
    await use(async (name, key, seat) => {
      const made = await aGuest(await browser.newContext(seat), server, name, key);
      contexts.push(made.context);
      return made;
    });
    for (const context of contexts) await context.close();
  },
});

export { expect };

/** A person with a browser: entered over HTTP, the cookie put into the browser. */
export async function aGuest(
  context: BrowserContext,
  server: AServer,
  name: string,
  key?: string,
): Promise<Guest> {
  const who = await server.enter(name, key);
  const [cookieName = '', ...value] = who.cookie.split('=');
  await context.addCookies([{ name: cookieName, value: value.join('='), url: server.url }]);
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  return { page, context, who, troubles };
}

export function makeBoard(server: AServer, who: Entered, title: string): Promise<{ id: string }> {
  return server.json<{ id: string }>(who, '/api/boards', 'POST', { title });
}

/** Posts a picture over HTTP, for tests whose story begins later. */
export async function postPicture(
  server: AServer,
  who: Entered,
  boardId: string,
  path: string,
  fields: Record<string, string>,
): Promise<{ id: string; width: number; height: number }> {
  const { readFile } = await import('node:fs/promises');
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  form.set('file', new Blob([new Uint8Array(await readFile(path))]), 'picture.png');
  const response = await server.call(who, `/api/boards/${boardId}/pictures`, { method: 'POST', body: form });
  if (response.status !== 201) throw new Error(`Posting was refused: ${await response.text()}`);
  return (await response.json()) as { id: string; width: number; height: number };
}

/** The window of a picture on the easel. */
export function stageOf(page: Page, side: 'Reference' | 'Painting'): Locator {
  return page.getByRole('application', { name: new RegExp(`^${side}`) });
}

/** The place on the screen of a point in 0..1 of the picture. */
export async function placeOn(stage: Locator, x: number, y: number): Promise<{ x: number; y: number }> {
  const box = await stage.locator('img').first().boundingBox();
  if (!box) throw new Error('The picture is not on the screen.');
  return { x: box.x + x * box.width, y: box.y + y * box.height };
}

/** Clicks points, in 0..1 of the picture. */
export async function clickPoints(
  page: Page,
  stage: Locator,
  points: readonly (readonly [number, number])[],
) {
  for (const [x, y] of points) {
    const at = await placeOn(stage, x, y);
    await page.mouse.click(at.x, at.y);
  }
}

/** Waits until the measures of a painting are there and returns them. */
export async function measuresWhenReady(
  server: AServer,
  who: Entered,
  boardId: string,
  pictureId: string,
): Promise<Record<string, unknown>> {
  let body: Record<string, unknown> = {};
  await expect(async () => {
    const response = await server.call(who, `/api/boards/${boardId}/measures/${pictureId}`);
    body = (await response.json()) as Record<string, unknown>;
    expect(response.status).toBe(200);
  }).toPass({ timeout: 30_000 });
  return body;
}
