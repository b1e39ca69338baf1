/** What a screen in the lists is, the window it is opened in, and when it holds still. IO: the browser. */
import { type Browser, errors, type Page } from '@playwright/test';
import type { Made } from './made.ts';

export interface At {
  page: Page;
  /** Of the server. */
  url: string;
  made: Made;
  /** Of the window, px. */
  width: number;
}

export interface Screen {
  /** Names the picture; kebab-case. */
  name: string;
  /** The page of the app it shows, such as app/page.tsx. */
  page: string;
  /** Who looks; the host unless said. */
  who?: 'host' | 'painter' | 'viewer' | 'stranger';
  /** Parts of messages on the browser's console that belong to this state. */
  expects?: readonly string[];
  /** Goes there by what the screen offers, and waits for a fact that shows it has come. */
  open(at: At): Promise<void>;
}

/** Below this the board turns its parts to leaves under the picture, as `use-wide.ts` has it. */
export const isNarrow = ({ width }: At) => width < 1000;

const HEIGHT: Record<number, number> = { 1440: 900, 820: 1180, 390: 844 };
/** One screen, with everything it waits for. */
const PATIENCE_MS = 45_000;

/** Opens a window of that person, hands it over with the faults the page reports, and closes it. */
export async function inWindow(
  browser: Browser,
  made: Made,
  { who = 'host', expects = [] }: Pick<Screen, 'who' | 'expects'>,
  width: number,
  use: (page: Page, faults: string[]) => Promise<void>,
): Promise<void> {
  const context = await browser.newContext({
    ...{ viewport: { width, height: HEIGHT[width] ?? 900 }, locale: 'en-GB', reducedMotion: 'reduce' },
    hasTouch: width < 1000,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  try {
    if (who !== 'stranger') {
      const [name = '', ...value] = made[who].cookie.split('=');
      await context.addCookies([{ name, value: value.join('='), url: made.server.url }]);
    }
    const page = await context.newPage();
    const faults: string[] = [];
    const heard = (text: string) => {
      if (!expects.some((part) => text.includes(part))) faults.push(text);
    };
    page.on('pageerror', (error) => heard(String(error)));
    page.on('console', (message) => message.type() === 'error' && heard(message.text()));
    await use(page, faults);
  } finally {
    await context.close();
  }
}

/** A request whose worker has ended is never said to be over: no use to wait for it any longer. */
const QUIET_AT_MOST_MS = 8000;

/** Nothing is being fetched any more. */
export async function quiet(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle', { timeout: QUIET_AT_MOST_MS }).catch((thrown: unknown) => {
    if (!(thrown instanceof errors.TimeoutError)) throw thrown;
  });
}

/** Fonts and pictures are there. @returns What is not as it should be: pictures that did not come. */
export async function settled(page: Page): Promise<string[]> {
  await quiet(page);
  await page.evaluate(() => document.fonts.ready);
  // The picture is of the whole page, so what lies below the window is wanted as well.
  await page.evaluate(() => {
    for (const image of document.images) image.loading = 'eager';
  });
  await page.waitForFunction(() => [...document.images].every((image) => image.complete));
  // Two frames, so that what the last answer brought is drawn.
  await page.evaluate(
    () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  );
  return page.evaluate(() =>
    [...document.images]
      .filter((image) => image.src !== '' && image.naturalWidth === 0)
      .map((image) => `a picture did not come: ${image.src}`),
  );
}
