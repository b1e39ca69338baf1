/**
 * Row about a planned rung under the hand: the longest task of the page's main thread while a handle of the planned ladder
 * is dragged and the photograph beside it follows.
 *
 * The yardstick is the same page at rest. IO: a server, Chromium.
 */
import { existsSync } from 'node:fs';
import { chromium, type Page, type Response } from '@playwright/test';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import playwrightConfig from '../playwright.config.ts';
import { atRest } from './at-rest.ts';
import { longestTask } from './longest-task.ts';
import { median, notMeasured, ROUNDS, row, times } from './measured.ts';
import type { BenchRow } from './row.ts';

const NAME = 'handle of a planned rung dragged, longest task of the page';
const TASK_LIMIT_MS = 50;
const PATIENCE_MS = 120_000;

/** @param path Of the plan page of a board with outlined planes. */
export async function planHandleRow(server: AServer, { cookie }: Entered, path: string): Promise<BenchRow> {
  const launch = playwrightConfig.use?.launchOptions ?? {};
  if (!existsSync(launch.executablePath ?? chromium.executablePath()))
    return notMeasured(NAME, 'there is no Chromium on this machine');
  return row(NAME, async () => {
    const browser = await chromium.launch(launch);
    try {
      const [name = '', ...value] = cookie.split('=');
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
      context.setDefaultTimeout(PATIENCE_MS);
      await context.addCookies([{ name, value: value.join('='), url: server.url }]);
      const page = await context.newPage();
      // The page asks for its plan until the server has it; a plan that came in between would be measured with the hand.
      const planned = page.waitForResponse(isPlan, { timeout: PATIENCE_MS });
      await page.goto(server.url + path, { timeout: PATIENCE_MS });
      await page.getByRole('tab', { name: 'Ladder' }).click();
      const handle = page.getByRole('slider', { name: /^Middle of/ }).nth(1);
      await handle.waitFor();
      // The photograph stands there in its planned light.
      await page.locator('[data-by]').first().waitFor({ state: 'attached' });
      await planned;
      await handle.scrollIntoViewIfNeeded();
      const longest = { dragged: [] as number[], rest: [] as number[] };
      for (let round = 0; round < ROUNDS; round++) {
        await atRest(page);
        longest.rest.push((await longestTask(browser, page, (tab) => tab.waitForTimeout(1000))).longestMs);
        const before = await handle.getAttribute('aria-valuenow');
        longest.dragged.push((await longestTask(browser, page, (tab) => dragged(tab, round))).longestMs);
        if ((await handle.getAttribute('aria-valuenow')) === before)
          throw new Error('The handle did not follow the hand.');
      }
      const [draggedMs, restMs] = [median(longest.dragged), median(longest.rest)];
      return {
        measured: `${draggedMs.toFixed(1)} ms`,
        yardstick: `the same page at rest: ${restMs.toFixed(1)} ms`,
        ratio: times(draggedMs / restMs),
        target: `≤ ${TASK_LIMIT_MS} ms`,
        met: draggedMs <= TASK_LIMIT_MS,
      };
    } finally {
      await browser.close();
    }
  });
}

/** The plan itself, where 202 says that it is being made. */
const isPlan = (answer: Response) =>
  /\/api\/boards\/[^/]+\/plan\/[^/]+$/.test(new URL(answer.url()).pathname) && answer.status() === 200;

/** Up in one round, down in the next, a pixel at a time. */
async function dragged(page: Page, round: number): Promise<void> {
  const box = await page
    .getByRole('slider', { name: /^Middle of/ })
    .nth(1)
    .boundingBox();
  if (!box) throw new Error('The handle is not on the screen.');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 30; step++) await page.mouse.move(x, y + (round % 2 === 0 ? -step : step));
  await page.mouse.up();
  await page.waitForTimeout(200);
}
