/**
 * Row about the wall: five paintings of 12 megapixels, opened afresh until each is squared and drawn, in three values, with
 * its colours and its ladder, beside the bare copies in a bare page. IO: a server, Chromium.
 */
import { existsSync } from 'node:fs';
import { type Browser, type BrowserContext, chromium } from '@playwright/test';
import sharp from 'sharp';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { setCorners, setSize } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { DEMO_PLANES } from '#server/demo/outlines.ts';
import { onShot, SHOT_CORNERS, SHOT_SIZE } from '#server/demo/paint/on-the-wall.ts';
import { PHOTOGRAPH_PATH } from '#server/demo/photograph.ts';
import { type AServer, type Entered, startAServer } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import playwrightConfig from '../playwright.config.ts';
import { median, notMeasured, ROUNDS, row, times } from './measured.ts';
import type { BenchRow } from './row.ts';

const NAME = 'wall of five paintings of 12 megapixels, whole comparison';
const PAINTINGS = 5;
const TARGET_MS = 3000;
/** 4:3, 12.0 megapixels. */
const PHOTO = { width: 4000, height: 3000 };
/** For measuring them and opening the page, however busy the machine is. */
const PATIENCE_MS = 180_000;

/** The row; where there is no Chromium one that says so. */
export async function wallRows(): Promise<BenchRow[]> {
  const launch = playwrightConfig.use?.launchOptions ?? {};
  if (!existsSync(launch.executablePath ?? chromium.executablePath())) {
    return [notMeasured(NAME, 'there is no Chromium on this machine')];
  }
  const server = await startAServer();
  const browser = await chromium.launch(launch);
  try {
    return [await row(NAME, () => wallRow(server, browser))];
  } finally {
    await browser.close();
    await server.stop();
  }
}

async function wallRow(server: AServer, browser: Browser): Promise<Omit<BenchRow, 'name'>> {
  const who = await server.enter('Bench');
  const { boardId, pictureIds } = await aWall(server, who);
  const took = { wall: [] as number[], bare: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    took.bare.push(
      await inFreshBrowser(browser, server, who, (context) => bareMs(context, server, boardId, pictureIds)),
    );
    took.wall.push(await inFreshBrowser(browser, server, who, (context) => wallMs(context, server, boardId)));
  }
  const [wall, bare] = [median(took.wall), median(took.bare)];
  return {
    measured: `${wall.toFixed(0)} ms`,
    yardstick: `the same copies in a bare page: ${bare.toFixed(0)} ms`,
    ratio: times(wall / bare),
    target: `≤ ${TARGET_MS} ms`,
    met: wall <= TARGET_MS,
  };
}

/** A board whose five paintings are set up and measured. */
async function aWall(server: AServer, who: Entered): Promise<{ boardId: string; pictureIds: string[] }> {
  // Made and posted before anything else: the server closes lines on which nothing is said for a few seconds.
  const photographs = await Promise.all(Array.from({ length: PAINTINGS }, (_, at) => aPhotograph(at)));
  const there = await sharp(PHOTOGRAPH_PATH).jpeg().toBuffer();
  const { id: boardId } = await server.json<{ id: string }>(who, '/api/boards', 'POST', { title: 'Wall' });
  const reference = await post(server, who, boardId, there, 'reference');
  const pictureIds: string[] = [];
  for (const bytes of photographs) pictureIds.push(await post(server, who, boardId, bytes, 'painting'));
  await writeInto(server.url, who, boardId, 'setup', (doc) => {
    for (const { outline, ...plane } of DEMO_PLANES) {
      addPlane(doc, plane);
      putReferenceOutline(doc, reference, plane.id, outline);
    }
  });
  for (const id of pictureIds) {
    await writeInto(server.url, who, boardId, `painting/${id}`, (doc) => {
      for (const { id: planeId, outline } of DEMO_PLANES)
        putPaintingOutline(doc, planeId, outline.map(onShot));
      setCorners(doc, SHOT_CORNERS);
      setSize(doc, SHOT_SIZE);
    });
  }
  for (const id of pictureIds) await measured(server, who, boardId, id);
  return { boardId, pictureIds };
}

/** Twelve megapixels, each a little lighter than the one before. */
function aPhotograph(at: number): Promise<Buffer> {
  return sharp(PHOTOGRAPH_PATH)
    .modulate({ brightness: 0.9 + at * 0.04 })
    .resize({ ...PHOTO, fit: 'fill' })
    .jpeg({ quality: 92 })
    .toBuffer();
}

async function post(
  server: AServer,
  who: Entered,
  boardId: string,
  bytes: Buffer,
  kind: string,
): Promise<string> {
  const form = new FormData();
  form.set('kind', kind);
  if (kind === 'reference') form.set('rights', 'mine');
  form.set('file', new Blob([new Uint8Array(bytes)]), 'picture.jpg');
  const answer = await server.call(who, `/api/boards/${boardId}/pictures`, { method: 'POST', body: form });
  if (!answer.ok) throw new Error(await answer.text());
  return ((await answer.json()) as { id: string }).id;
}

async function measured(server: AServer, who: Entered, boardId: string, id: string): Promise<void> {
  const until = performance.now() + PATIENCE_MS;
  while ((await server.call(who, `/api/boards/${boardId}/measures/${id}`)).status !== 200) {
    if (performance.now() > until) throw new Error('The paintings were not measured in time.');
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}

/** Nothing is in the browser's cache. */
async function inFreshBrowser(
  browser: Browser,
  server: AServer,
  { cookie }: Entered,
  act: (context: BrowserContext) => Promise<number>,
): Promise<number> {
  const [name = '', ...value] = cookie.split('=');
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  try {
    await context.addCookies([{ name, value: value.join('='), url: server.url }]);
    context.setDefaultTimeout(PATIENCE_MS);
    return await act(context);
  } finally {
    await context.close();
  }
}

async function wallMs(context: BrowserContext, server: AServer, boardId: string): Promise<number> {
  const page = await context.newPage();
  const from = performance.now();
  await page.goto(`${server.url}/boards/${boardId}/wall`, { waitUntil: 'commit' });
  await page.waitForFunction(
    ({ paintings }) => {
      const all = (start: string) => document.querySelectorAll(`[role="img"][aria-label^="${start}"]`).length;
      // Squared and in three values, each drawn; colours; ladders.
      const drawn = document.querySelectorAll('canvas[data-drawn]').length;
      return drawn >= 2 * paintings && all('Colours of') >= paintings && all('Ladder of') >= paintings;
    },
    { paintings: PAINTINGS },
    { polling: 'raf' },
  );
  return performance.now() - from;
}

async function bareMs(
  context: BrowserContext,
  server: AServer,
  boardId: string,
  pictureIds: readonly string[],
): Promise<number> {
  const page = await context.newPage();
  await page.goto(`${server.url}/healthz`);
  const from = performance.now();
  await page.evaluate(
    async (addresses) => {
      await Promise.all(
        addresses.map((address) => {
          const image = new Image();
          image.src = address;
          return image.decode();
        }),
      );
    },
    pictureIds.map((id) => `/api/boards/${boardId}/pictures/${id}/lossless-640`),
  );
  return performance.now() - from;
}
