/**
 * Rows about the page: script of the board page, panning and zooming among 500 marks; with them those about
 * starting, on the same data folder. IO: a server, Chromium.
 */
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from '@playwright/test';
import { REST_MARK } from '#app/_ui/rest-mark.ts';
import { type AServer, type Entered, startAServer } from '#tests/helpers/a-server.ts';
import playwrightConfig from '../playwright.config.ts';
import { atRest } from './at-rest.ts';
import { aBoardFolder } from './board-folder.ts';
import { findPlanesRow } from './find-planes.ts';
import { longestTask } from './longest-task.ts';
import { median, notMeasured, ROUNDS, row, times } from './measured.ts';
import type { BenchRow } from './row.ts';
import { startRows } from './start.ts';

const SCRIPT_LIMIT_BYTES = 250_000;
const TASK_LIMIT_MS = 50;
const MARKS = 500;
/** For opening the board in Chromium, however busy the machine is. */
const PATIENCE_MS = 120_000;

/** All rows about start and page; a part that cannot run gives a row that says why. */
export async function pageRows(): Promise<BenchRow[]> {
  const { dataFolder, boardId } = await aBoardFolder(MARKS);
  try {
    const rows = await startRows(dataFolder);
    const server = await startAServer({ dataFolder });
    try {
      rows.push(...(await browserRows(server, boardId)));
    } finally {
      await server.stop({ keepData: true });
    }
    return rows;
  } finally {
    await rm(dataFolder, { recursive: true, force: true });
  }
}

async function browserRows(server: AServer, boardId: string): Promise<BenchRow[]> {
  const names = [
    'script of the board page as it opens, gzipped',
    'script that it fetches once it is at rest, gzipped',
    `pan and zoom with ${MARKS} marks, longest task`,
    'planes found in a photograph of 2048 px, longest task of the page',
  ] as const;
  const launch = playwrightConfig.use?.launchOptions ?? {};
  if (!existsSync(launch.executablePath ?? chromium.executablePath())) {
    return names.map((name) => notMeasured(name, 'there is no Chromium on this machine'));
  }
  const browser = await chromium.launch(launch);
  try {
    const who = await server.enter('Bench');
    const board = await openBoard(browser, server, who, boardId);
    const { page } = board;
    return [
      ...scriptRows([names[0], names[1]], board),
      await row(names[2], () => taskRow(browser, page)),
      await row(names[3], () => findPlanesRow(browser, page.context(), server, who)),
    ];
  } catch (thrown) {
    const why = thrown instanceof Error ? thrown.message : String(thrown);
    return names.map((name) => notMeasured(name, why));
  } finally {
    await browser.close();
  }
}

interface OpenBoard {
  page: Page;
  /** Gzipped size of every script that the page loaded, by address. */
  scriptBytes: Map<string, number>;
  /** Addresses of those that it fetched once it was at rest, for what nobody had asked for yet. */
  atRest: ReadonlySet<string>;
}

async function openBoard(
  browser: Browser,
  server: AServer,
  { cookie }: Entered,
  boardId: string,
): Promise<OpenBoard> {
  const [name = '', ...value] = cookie.split('=');
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  await context.addCookies([{ name, value: value.join('='), url: server.url }]);
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  const scriptBytes = new Map<string, number>();
  const reading: Promise<void>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() !== 'script') return;
    reading.push(
      response.body().then((body) => {
        scriptBytes.set(response.url(), gzipSync(body).length);
      }),
    );
  });
  await page.goto(`${server.url}/boards/${boardId}`, { waitUntil: 'load' });
  await page.getByRole('application').first().waitFor();
  await page.evaluate(RESTED);
  await page.waitForLoadState('networkidle');
  await atRest(page);
  await Promise.all(reading);
  return { page, scriptBytes, atRest: new Set(await page.evaluate<string[]>(FETCHED_AT_REST)) };
}

/** Resolves once the page says that it is at rest. Texts, because what tsx makes of a function needs a helper that the page does not have. */
const RESTED = `new Promise((resolve) => {
  requestAnimationFrame(function look() {
    if (performance.getEntriesByName('${REST_MARK}').length > 0) resolve();
    else requestAnimationFrame(look);
  });
})`;
const FETCHED_AT_REST = `performance
  .getEntriesByType('resource')
  .filter(({ startTime }) => startTime > performance.getEntriesByName('${REST_MARK}')[0].startTime)
  .map(({ name }) => name)`;

function scriptRows([asked, rest]: readonly [string, string], board: OpenBoard): BenchRow[] {
  const sum = (late: boolean) => {
    const those = [...board.scriptBytes].filter(([address]) => board.atRest.has(address) === late);
    return { bytes: those.reduce((all, [, size]) => all + size, 0), files: those.length };
  };
  const said = ({ bytes, files }: ReturnType<typeof sum>) =>
    `${(bytes / 1000).toFixed(0)} kB in ${files} files`;
  const now = sum(false);
  return [
    {
      name: asked,
      measured: said(now),
      yardstick: `${SCRIPT_LIMIT_BYTES / 1000} kB`,
      ratio: times(now.bytes / SCRIPT_LIMIT_BYTES),
      target: `≤ ${SCRIPT_LIMIT_BYTES / 1000} kB`,
      met: now.bytes <= SCRIPT_LIMIT_BYTES,
    },
    { name: rest, measured: said(sum(true)), yardstick: '', ratio: '', target: '', met: null },
  ];
}

async function taskRow(browser: Browser, page: Page): Promise<Omit<BenchRow, 'name'>> {
  await page
    .locator('[data-mark]')
    .nth(MARKS - 1)
    .waitFor({ state: 'attached' });
  const box = await page.getByRole('application').last().boundingBox();
  if (!box) throw new Error('The painting is not on the easel.');
  const hands = panAndZoom(box.x + box.width / 2, box.y + box.height / 2);
  const empty = await page.context().newPage();
  await empty.setContent('<!doctype html><title>empty</title>');
  const longest = { board: [] as number[], empty: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    for (const [name, tab] of [
      ['empty', empty],
      ['board', page],
    ] as const) {
      await tab.bringToFront();
      await atRest(tab);
      longest[name].push((await longestTask(browser, tab, hands)).longestMs);
    }
  }
  const [boardMs, emptyMs] = [median(longest.board), median(longest.empty)];
  return {
    measured: `${boardMs.toFixed(1)} ms`,
    yardstick: `empty page: ${emptyMs.toFixed(1)} ms`,
    ratio: times(boardMs / emptyMs),
    target: `≤ ${TASK_LIMIT_MS} ms`,
    met: boardMs <= TASK_LIMIT_MS,
  };
}

/** Zooms in at a place with the wheel, drags to and fro, zooms out again. */
function panAndZoom(x: number, y: number): (page: Page) => Promise<void> {
  return async (page) => {
    await page.mouse.move(x, y);
    for (let turn = 0; turn < 12; turn++) await page.mouse.wheel(0, -120);
    await page.mouse.down();
    for (let step = 0; step <= 40; step++) {
      await page.mouse.move(x + 160 * Math.sin(step / 6), y + 90 * Math.sin(step / 4));
    }
    await page.mouse.up();
    for (let turn = 0; turn < 12; turn++) await page.mouse.wheel(0, 120);
    await page.waitForTimeout(200);
  };
}
