/** A German house: pages, sentences of the server, numbers and the demo are German, on a first start of its own. */
import type { Page } from '@playwright/test';
import { anEmptyFolder, startAServer } from '#tests/helpers/a-server.ts';
import { barriersOf } from './barriers.ts';
import { aGuest, expect, test } from './story.ts';

/** Five paintings are painted before a first server opens. */
const FIRST_START_MS = 120_000;
/** English words that are no German words when written like this. */
const ENGLISH =
  /(?<![\p{L}’'-])(?:the|The|and|of|with|this|This|that|from|is|are|its|your|you|not|for|than)(?![\p{L}’'-])/u;

/** What stands on the page and what is told of it to those who do not see it. */
function allWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    // Word for word as it is drawn: what is hidden has no place in it.
    // biome-ignore lint/performance/useDomNodeTextContent: textContent would read scripts and what is hidden.
    const texts = [document.title, ...document.body.innerText.split('\n')];
    for (const element of document.querySelectorAll('[aria-label], [title], [alt], [placeholder]'))
      for (const name of ['aria-label', 'title', 'alt', 'placeholder'])
        texts.push(element.getAttribute(name) ?? '');
    return texts;
  });
}

async function isGerman(page: Page, where: string): Promise<void> {
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  const words = await allWords(page);
  expect(words.join('').length, where).toBeGreaterThan(100);
  expect(
    words.filter((text) => ENGLISH.test(text)),
    where,
  ).toEqual([]);
}

test('in a German house pages, readings, numbers and refusals are German', async ({ browser }) => {
  test.setTimeout(FIRST_START_MS * 2);
  const server = await startAServer({
    ...{ dataFolder: await anEmptyFolder(), language: 'de', startLimitMs: FIRST_START_MS },
  });
  try {
    const stranger = await (await browser.newContext()).newPage();
    await stranger.goto(`${server.url}/enter?key=${server.hostKey}`);
    await isGerman(stranger, 'entering');
    await stranger.context().close();

    const { page, who, context } = await aGuest(await browser.newContext(), server, 'Hedda');
    await page.goto(server.url);
    await isGerman(page, 'boards');
    const [demo] = await server.json<{ id: string; demo: boolean }[]>(who, '/api/boards');
    if (!demo) throw new Error('The server has no demo board.');

    await page.goto(`${server.url}/boards/${demo.id}`);
    const ladder = page.getByRole('region', { name: 'Leiter' });
    // The paintings of a first start are still being measured.
    await expect(ladder.getByText(/^−\d,\d Stufen$/).first()).toBeVisible({ timeout: FIRST_START_MS });
    await page.getByRole('button', { name: 'Nun Karten und Befunde' }).click();
    await expect(page.getByText(/^Alle \d+ Befunde$/)).toBeVisible();
    await page.getByText(/^Alle \d+ Befunde$/).click();
    for (const why of await page.locator('summary:visible', { hasText: /^Warum$/ }).all()) await why.click();
    await isGerman(page, 'board with its readings');
    // Decimals have a comma; the number of a licence is its name.
    await expect(page.getByText(/(?<!CC-BY )\d\.\d/)).toHaveCount(0);
    expect(await barriersOf(page)).toEqual([]);
    for (const leaf of ['Ebenen', 'Foto']) {
      await page.getByRole('tab', { name: leaf }).click();
      await isGerman(page, leaf);
    }
    await page.getByRole('button', { name: 'Was die Wörter meinen' }).click();
    await expect(page.getByRole('dialog').getByText('Luftperspektive')).toBeVisible();
    await isGerman(page, 'words');
    expect(await barriersOf(page), 'words').toEqual([]);
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toBeHidden();
    await page.getByRole('button', { name: 'Tabelle' }).click();
    await isGerman(page, 'table');
    await page.keyboard.press('?');
    await isGerman(page, 'keys');

    for (const path of ['plan', 'wall', 'take-away']) {
      await page.goto(`${server.url}/boards/${demo.id}/${path}`);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      await page.waitForLoadState('networkidle');
      await isGerman(page, path);
    }
    for (const path of ['account', 'queue', 'path', 'no-such-page']) {
      await page.goto(`${server.url}/${path}`);
      await isGerman(page, path);
    }

    const refused = await server.call(who, `/api/boards/${demo.id}`, {
      method: 'PATCH',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ title: '' }),
    });
    expect(refused.ok).toBe(false);
    expect(await refused.text()).toContain('Schreib einen Titel.');

    await page.setViewportSize({ width: 390, height: 844 });
    for (const path of ['', `boards/${demo.id}`, `boards/${demo.id}/plan`, `boards/${demo.id}/wall`]) {
      await page.goto(`${server.url}/${path}`);
      await page.waitForLoadState('networkidle');
      expect(await page.evaluate(() => document.documentElement.scrollWidth), path).toBeLessThanOrEqual(390);
    }
    await context.close();
  } finally {
    await server.stop();
  }
});
