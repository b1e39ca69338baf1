/**
 * Rows about finding planes in the page: how long nothing else could happen meanwhile, and how long it took in all.
 *
 * A new board with one photograph, opened afresh for each round, since what was found is kept while a page is open.
 * IO: a server, Chromium.
 */
import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext } from '@playwright/test';
import sharp from 'sharp';
import { PHOTOGRAPH_PATH } from '#server/demo/photograph.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { atRest } from './at-rest.ts';
import { longestTask } from './longest-task.ts';
import { median, ROUNDS, times } from './measured.ts';
import type { BenchRow } from './row.ts';

const TASK_LIMIT_MS = 50;
const LONG_SIDE_PX = 2048;
const PATIENCE_MS = 120_000;

/** @param context Of somebody who entered as `who`. */
export async function findPlanesRow(
  browser: Browser,
  context: BrowserContext,
  server: AServer,
  who: Entered,
): Promise<Omit<BenchRow, 'name'>> {
  const boardId = await boardToLookAt(server, who);
  const measured = { longest: [] as number[], all: [] as number[], rest: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    const page = await context.newPage();
    await page.goto(`${server.url}/boards/${boardId}`, { timeout: PATIENCE_MS });
    await page.getByRole('button', { name: 'Find the planes' }).waitFor({ timeout: PATIENCE_MS });
    await page.waitForLoadState('networkidle');
    await atRest(page);
    const rest = await longestTask(browser, page, (tab) => tab.waitForTimeout(1000));
    measured.rest.push(rest.longestMs);
    await atRest(page);
    let tookMs = 0;
    const found = await longestTask(browser, page, async (tab) => {
      const started = performance.now();
      await tab.keyboard.press('f');
      await tab.getByRole('radio').first().waitFor({ timeout: PATIENCE_MS });
      tookMs = performance.now() - started;
      await atRest(tab);
    });
    measured.longest.push(found.longestMs);
    measured.all.push(tookMs);
    await page.close();
  }
  const [longestMs, restMs] = [median(measured.longest), median(measured.rest)];
  return {
    measured: `${longestMs.toFixed(1)} ms; planes shown after ${median(measured.all).toFixed(0)} ms`,
    yardstick: `the same page at rest: ${restMs.toFixed(1)} ms`,
    ratio: times(longestMs / restMs),
    target: `≤ ${TASK_LIMIT_MS} ms`,
    met: longestMs <= TASK_LIMIT_MS,
  };
}

async function boardToLookAt(server: AServer, who: Entered): Promise<string> {
  const { id } = await server.json<{ id: string }>(who, '/api/boards', 'POST', { title: 'To look at' });
  const form = new FormData();
  form.set('kind', 'reference');
  form.set('rights', 'mine');
  const large = await sharp(await readFile(PHOTOGRAPH_PATH))
    .resize(LONG_SIDE_PX, LONG_SIDE_PX, { fit: 'inside' })
    .jpeg({ quality: 92 })
    .toBuffer();
  form.set('file', new Blob([new Uint8Array(large)]), 'photograph.jpg');
  const response = await server.call(who, `/api/boards/${id}/pictures`, { method: 'POST', body: form });
  if (!response.ok) throw new Error(`The photograph was refused: ${await response.text()}`);
  return id;
}
