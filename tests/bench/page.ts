/**
 * Rows about start and page: time to the first page, a second start, script of the board page, panning and
 * zooming among 500 marks. IO: child processes, a server, Chromium.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from '@playwright/test';
import { type AServer, startAServer } from '#tests/helpers/a-server.ts';
import playwrightConfig from '../playwright.config.ts';
import { aBoardFolder } from './board-folder.ts';
import { longestTask } from './longest-task.ts';
import type { BenchRow } from './row.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FIRST_PAGE_LIMIT_MS = 3_000;
const SCRIPT_LIMIT_BYTES = 250_000;
const TASK_LIMIT_MS = 50;
const MARKS = 500;
/** For opening the board in Chromium, however busy the machine is. */
const PATIENCE_MS = 120_000;
/** Also builds what the server below serves, should anything have changed. */
const PREPARE = ['server/prepare/prepare.mjs', 'bench'];
const BARE_SERVER =
  "require('node:http').createServer((q,s)=>s.end('ok')).listen(0,function(){console.log(this.address().port)})";

/** All rows about start and page; a part that cannot run gives a row that says why. */
export async function pageRows(): Promise<BenchRow[]> {
  const rows = [await row('second start prepares nothing', secondStart)];
  const { dataFolder, boardId } = await aBoardFolder(MARKS);
  let server: AServer | undefined;
  try {
    rows.push(
      await row('start (already built) to first page', async () => {
        const started = performance.now();
        server = await startAServer({ dataFolder });
        await firstPage(server.url);
        return startRow(performance.now() - started, await bareServerMs());
      }),
    );
    rows.push(...(await browserRows(server, boardId)));
  } finally {
    await server?.stop({ keepData: true });
    await rm(dataFolder, { recursive: true, force: true });
  }
  return rows;
}

/** A row, or in its place one that says why it could not be measured. */
async function row(name: string, measure: () => Promise<Omit<BenchRow, 'name'>>): Promise<BenchRow> {
  try {
    return { name, ...(await measure()) };
  } catch (thrown) {
    return notMeasured(name, thrown instanceof Error ? thrown.message : String(thrown));
  }
}

function notMeasured(name: string, why: string): BenchRow {
  const reason = why.split('\n')[0] ?? '';
  return { name, measured: `not measured: ${reason}`, yardstick: '', ratio: '', target: '', met: null };
}

/** What `npm start` does before the server, when nothing changed since the last time. */
async function secondStart(): Promise<Omit<BenchRow, 'name'>> {
  timed(PREPARE);
  const bareMs = timed(['-e', '0']).ms;
  const { ms, printed } = timed(PREPARE);
  const silent = printed === '';
  return {
    measured: `${ms.toFixed(0)} ms${silent ? ', nothing done' : `, did: ${printed.split('\n')[0]}`}`,
    yardstick: `node -e 0: ${bareMs.toFixed(0)} ms`,
    ratio: times(ms / bareMs),
    target: 'nothing done',
    met: silent,
  };
}

function timed(args: string[]): { ms: number; printed: string } {
  const started = performance.now();
  const { stdout, stderr, status } = spawnSync(process.execPath, args, { cwd: ROOT, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}.`);
  return { ms: performance.now() - started, printed: `${stdout}${stderr}`.trim() };
}

async function firstPage(url: string): Promise<void> {
  const answer = await fetch(url);
  await answer.text();
  if (!answer.ok) throw new Error(`The first page answered ${answer.status}.`);
}

function startRow(ms: number, bareMs: number): Omit<BenchRow, 'name'> {
  return {
    measured: `${ms.toFixed(0)} ms`,
    yardstick: `bare node:http server: ${bareMs.toFixed(0)} ms`,
    ratio: times(ms / bareMs),
    target: `≤ ${FIRST_PAGE_LIMIT_MS} ms`,
    met: ms <= FIRST_PAGE_LIMIT_MS,
  };
}

/** From starting Node.js with the smallest HTTP server to its first answer. */
async function bareServerMs(): Promise<number> {
  const started = performance.now();
  const child = spawn(process.execPath, ['-e', BARE_SERVER], { stdio: ['ignore', 'pipe', 'inherit'] });
  try {
    const port = await new Promise<string>((resolve, reject) => {
      child.stdout.once('data', (chunk) => resolve(String(chunk).trim()));
      child.once('exit', (code) => reject(new Error(`The bare server ended with ${code}.`)));
    });
    await firstPage(`http://localhost:${port}`);
    return performance.now() - started;
  } finally {
    child.kill();
  }
}

async function browserRows(server: AServer | undefined, boardId: string): Promise<BenchRow[]> {
  const names = [
    'script of the board page, gzipped',
    `pan and zoom with ${MARKS} marks, longest task`,
  ] as const;
  if (!server) return names.map((name) => notMeasured(name, 'the server did not start'));
  const launch = playwrightConfig.use?.launchOptions ?? {};
  if (!existsSync(launch.executablePath ?? chromium.executablePath())) {
    return names.map((name) => notMeasured(name, 'there is no Chromium on this machine'));
  }
  const browser = await chromium.launch(launch);
  try {
    const { page, scriptBytes } = await openBoard(browser, server, boardId);
    return [{ name: names[0], ...scriptRow(scriptBytes) }, await row(names[1], () => taskRow(browser, page))];
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
}

async function openBoard(browser: Browser, server: AServer, boardId: string): Promise<OpenBoard> {
  const { cookie } = await server.enter('Bench');
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
  await page.waitForLoadState('networkidle');
  await Promise.all(reading);
  return { page, scriptBytes };
}

function scriptRow(scriptBytes: ReadonlyMap<string, number>): Omit<BenchRow, 'name'> {
  const bytes = [...scriptBytes.values()].reduce((sum, size) => sum + size, 0);
  return {
    measured: `${(bytes / 1000).toFixed(0)} kB in ${scriptBytes.size} files`,
    yardstick: `${SCRIPT_LIMIT_BYTES / 1000} kB`,
    ratio: times(bytes / SCRIPT_LIMIT_BYTES),
    target: `≤ ${SCRIPT_LIMIT_BYTES / 1000} kB`,
    met: bytes <= SCRIPT_LIMIT_BYTES,
  };
}

async function taskRow(browser: Browser, page: Page): Promise<Omit<BenchRow, 'name'>> {
  await page
    .locator('[data-mark]')
    .nth(MARKS - 1)
    .waitFor({ state: 'attached' });
  const box = await page.getByRole('application').last().boundingBox();
  if (!box) throw new Error('The painting is not on the easel.');
  const hands = panAndZoom(box.x + box.width / 2, box.y + box.height / 2);
  const board = await longestTask(browser, page, hands);
  const empty = await page.context().newPage();
  await empty.setContent('<!doctype html><title>empty</title>');
  const yardstick = await longestTask(browser, empty, hands);
  return {
    measured: `${board.longestMs.toFixed(1)} ms in ${board.tasks} tasks`,
    yardstick: `empty page: ${yardstick.longestMs.toFixed(1)} ms`,
    ratio: times(board.longestMs / yardstick.longestMs),
    target: `≤ ${TASK_LIMIT_MS} ms`,
    met: board.longestMs <= TASK_LIMIT_MS,
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

function times(ratio: number): string {
  return `${ratio.toFixed(ratio < 10 ? 2 : 1)} ×`;
}
