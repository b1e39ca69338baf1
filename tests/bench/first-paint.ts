/**
 * Rows about what a slow device feels on the built board page: when its largest picture stands there, and how long a press
 * takes to show. In Chromium with its processor slowed fourfold, on the demo board.
 *
 * Largest contentful paint and the duration of interactions are those of the W3C's drafts of the same names and Event
 * Timing; the worst of a series stands for its interaction to next paint. The yardsticks are the same figures of the
 * sign-in page of the same server. IO: a server, Chromium.
 */
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { type Browser, type BrowserContext, chromium, type Locator, type Page } from '@playwright/test';
import { type AServer, type Entered, startAServer } from '#tests/helpers/a-server.ts';
import playwrightConfig from '../playwright.config.ts';
import { atRest } from './at-rest.ts';
import { aBoardFolder } from './board-folder.ts';
import { median, notMeasured, ROUNDS, row, times } from './measured.ts';
import type { BenchRow } from './row.ts';

const SLOWED = 4;
const PAINT_LIMIT_MS = 1500;
const PRESS_LIMIT_MS = 100;
const PATIENCE_MS = 120_000;
const NAMES = [
  `board page, largest paint, processor slowed ${SLOWED} ×`,
  `board page, slowest of a series of presses, processor slowed ${SLOWED} ×`,
] as const;

/** A text, because what tsx makes of a function needs a helper that the page does not have. */
const WATCH = `
  window.felt = { paintMs: 0, presses: [] };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) window.felt.paintMs = entry.startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      if (entry.interactionId) window.felt.presses.push([entry.name, entry.duration]);
    }
  }).observe({ type: 'event', buffered: true, durationThreshold: 16 });
`;

export async function firstPaintRows(): Promise<BenchRow[]> {
  const launch = playwrightConfig.use?.launchOptions ?? {};
  if (!existsSync(launch.executablePath ?? chromium.executablePath())) {
    return NAMES.map((name) => notMeasured(name, 'there is no Chromium on this machine'));
  }
  const { dataFolder, boardId } = await aBoardFolder(0);
  const server = await startAServer({ dataFolder });
  const browser = await chromium.launch(launch);
  try {
    const who = await server.enter('Bench');
    const at = { board: `/boards/${boardId}`, signIn: '/sign-in' };
    return [
      await row(NAMES[0], () => paintRow(browser, server, who, at)),
      await row(NAMES[1], () => pressRow(browser, server, who, at)),
    ];
  } finally {
    await browser.close();
    await server.stop({ keepData: true });
    await rm(dataFolder, { recursive: true, force: true });
  }
}

interface Paths {
  board: string;
  signIn: string;
}

/** A page that nothing is kept of from before, watched from its first moment, on a slow processor. */
async function opened(browser: Browser, server: AServer, { cookie }: Entered, path: string): Promise<Page> {
  const [name = '', ...value] = cookie.split('=');
  const context: BrowserContext = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  context.setDefaultTimeout(PATIENCE_MS);
  if (path !== '/sign-in') await context.addCookies([{ name, value: value.join('='), url: server.url }]);
  await context.addInitScript(WATCH);
  const page = await context.newPage();
  const line = await context.newCDPSession(page);
  await line.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(server.url + path, { waitUntil: 'load', timeout: PATIENCE_MS });
  await page.waitForLoadState('networkidle');
  await atRest(page);
  return page;
}

async function paintRow(
  browser: Browser,
  server: AServer,
  who: Entered,
  { board, signIn }: Paths,
): Promise<Omit<BenchRow, 'name'>> {
  const paint = async (path: string) => {
    const page = await opened(browser, server, who, path);
    const ms = await page.evaluate<number>('window.felt.paintMs');
    await page.context().close();
    if (ms <= 0) throw new Error(`Chromium told of no largest paint of ${path}.`);
    return ms;
  };
  const rounds = { board: [] as number[], signIn: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    rounds.signIn.push(await paint(signIn));
    rounds.board.push(await paint(board));
  }
  return figures(median(rounds.board), median(rounds.signIn), PAINT_LIMIT_MS);
}

function figures(ms: number, yardstickMs: number, limitMs: number, which = ''): Omit<BenchRow, 'name'> {
  return {
    measured: `${ms.toFixed(0)} ms${which}`,
    yardstick: `sign-in page: ${yardstickMs.toFixed(0)} ms`,
    ratio: times(ms / yardstickMs),
    target: `≤ ${limitMs} ms`,
    met: ms <= limitMs,
  };
}

async function pressRow(
  browser: Browser,
  server: AServer,
  who: Entered,
  { board, signIn }: Paths,
): Promise<Omit<BenchRow, 'name'>> {
  const plain = await opened(browser, server, who, signIn);
  const field = plain.getByRole('textbox').first();
  const yardstick = await slowest(plain, {
    type: () => aimedAt(plain, field),
    letter: async () => () => plain.keyboard.press('a'),
  });
  await plain.context().close();
  const page = await opened(browser, server, who, board);
  const worst = await slowest(page, await pressesOn(page));
  await page.context().close();
  return figures(worst.ms, yardstick.ms, PRESS_LIMIT_MS, ` (${worst.which})`);
}

/** Finds out what is to be pressed, and gives the press itself. */
type Press = () => Promise<() => Promise<void>>;

/** What a painter does in a first minute, each with a press. */
async function pressesOn(page: Page): Promise<Record<string, Press>> {
  const painting = page.getByRole('application').last();
  const box = await painting.boundingBox();
  if (!box) throw new Error('The painting is not on the easel.');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  // What the painter wanted stands first; cards and readings come with a press.
  const cards = page.getByRole('button', { name: 'Now the cards and readings' });
  const why = page.locator('summary:visible', { hasText: /^Why$/ }).first();
  const key = (name: string) => async () => () => page.keyboard.press(name);
  return {
    squint: key('s'),
    'squint off': key('s'),
    'to the cards': () => aimedAt(page, cards),
    'ask why': () => aimedAt(page, why),
    'to the picture': async () => () => painting.focus(),
    'zoom in': key('+'),
    'zoom in more': key('+'),
    pan: key('ArrowLeft'),
    drag: async () => () => dragged(page, x, y),
    'whole picture': key('0'),
    'take the marking hand': key('m'),
    'set a mark': async () => () => page.mouse.click(x, y),
    'write its words': async () => () => page.keyboard.type('Softer'),
    'send it': key('Enter'),
  };
}

/** Where to press is found out beforehand: looking a thing up by its name costs the page itself many a millisecond. */
async function aimedAt(page: Page, thing: Locator): Promise<() => Promise<void>> {
  await thing.scrollIntoViewIfNeeded();
  const box = await thing.boundingBox();
  if (!box) throw new Error('What was to be pressed is not on the screen.');
  return () => page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
}

async function dragged(page: Page, x: number, y: number): Promise<void> {
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 12; step++) await page.mouse.move(x + 8 * step, y + 4 * step);
  await page.mouse.up();
}

/** @returns The longest from a press to the next paint, and which it was; one too short to be told of counts as 16 ms. */
async function slowest(page: Page, presses: Record<string, Press>): Promise<{ ms: number; which: string }> {
  let worst = { ms: 16, which: 'none took 16 ms' };
  for (const [which, ready] of Object.entries(presses)) {
    const press = await ready();
    await atRest(page);
    await page.evaluate('window.felt.presses = []');
    await press();
    await atRest(page);
    const felt = await page.evaluate<[string, number][]>('window.felt.presses');
    const ms = Math.max(0, ...felt.map(([, duration]) => duration));
    if (ms > worst.ms) worst = { ms, which };
  }
  return worst;
}
