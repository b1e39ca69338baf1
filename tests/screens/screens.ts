/**
 * `npm run screens`: photographs every screen and state of the built app at three widths, for people to look at.
 *
 * In the flow: list-*.ts (what there is and how to get there) -> [screens] -> tests/.out/screens/<width>/*.png with a page
 * of all of them. Ends with an error when a screen cannot be reached, shows a fault of the page, or a page of the app is
 * in no list. `-- --readme` puts the README's pictures in their place as well; widths and other words choose
 * screens by width and by name.
 * IO: a server of its own, Chromium, the ignored folder.
 */
import { existsSync, readdirSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from '@playwright/test';
import sharp from 'sharp';
import playwright from '../playwright.config.ts';
import { indexPage } from './index-page.ts';
import { BOARD_SCREENS } from './list-board.ts';
import { PAGE_SCREENS } from './list-pages.ts';
import { PLAN_AND_WALL_SCREENS } from './list-plan-wall.ts';
import { type Made, makeAll } from './made.ts';
import { README_PICTURES } from './readme-pictures.ts';
import { inWindow, type Screen, settled } from './screen.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const OUT = fileURLToPath(new URL('../.out/screens/', import.meta.url));
const PICTURES = fileURLToPath(new URL('../pictures/', import.meta.url));
const ALL_WIDTHS = [1440, 820, 390];
const SCREENS: readonly Screen[] = [...PAGE_SCREENS, ...BOARD_SCREENS, ...PLAN_AND_WALL_SCREENS];

const isWidth = (word: string) => ALL_WIDTHS.includes(Number(word));
const words = process.argv.slice(2);
const forReadme = words.includes('--readme');
const WIDTHS = ALL_WIDTHS.filter((width) => !words.some(isWidth) || words.includes(String(width)));
const wanted = words.filter((word) => !word.startsWith('--') && !isWidth(word));
const chosen = SCREENS.filter(
  ({ name }) => wanted.length === 0 || wanted.some((word) => name.includes(word)),
);

/** Pages of the app that no screen of the lists shows, and pages in the lists that the app does not have. */
function unlisted(): string[] {
  const pages = readdirSync(`${ROOT}app`, { recursive: true, encoding: 'utf8' })
    .filter((path) => /(^|\/)page\.tsx$/.test(path))
    .map((path) => `app/${path}`)
    .sort();
  const listed = new Set(SCREENS.map(({ page }) => page));
  return [
    ...pages.filter((page) => !listed.has(page)).map((page) => `${page} is in no list of screens.`),
    ...[...listed].filter((page) => !pages.includes(page)).map((page) => `${page} is no page of the app.`),
    ...SCREENS.filter((screen, at) => SCREENS.findIndex(({ name }) => name === screen.name) !== at).map(
      ({ name }) => `Two screens are called ${name}.`,
    ),
  ];
}

async function photograph(
  browser: Browser,
  made: Made,
  screen: Screen,
  width: number,
): Promise<string | null> {
  const place = `${screen.name} at ${width} px`;
  try {
    await inWindow(browser, made, screen, width, async (page, faults) => {
      await screen.open({ page, url: made.server.url, made, width });
      faults.push(...(await settled(page)));
      // A sheet over the page is seen through the window alone: what is dimmed under it ends with the window.
      const sheet = await page.locator('dialog:modal').count();
      await page.screenshot({ path: `${OUT}${width}/${screen.name}.png`, fullPage: sheet === 0 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      if (wide > width) faults.push(`it is ${wide} px wide`);
      if (faults.length > 0) throw new Error(faults.join('; '));
    });
    process.stdout.write(`${place}\n`);
    return null;
  } catch (thrown) {
    const trouble = `${place}: ${String(thrown).split('\n').slice(0, 4).join(' ')}`;
    process.stdout.write(`NOT ${trouble}\n`);
    return trouble;
  }
}

async function readmePictures(browser: Browser, made: Made): Promise<void> {
  for (const picture of README_PICTURES) {
    await inWindow(browser, made, picture, picture.width, async (page) => {
      await picture.open({ page, url: made.server.url, made, width: picture.width });
      await settled(page);
      const bytes = await page.screenshot();
      await sharp(bytes).jpeg({ quality: 84, mozjpeg: true }).toFile(`${PICTURES}${picture.name}.jpg`);
    });
    process.stdout.write(`README: ${picture.name}.jpg\n`);
  }
}

async function run(): Promise<number> {
  const troubles = unlisted();
  if (!existsSync(`${ROOT}.next-test/BUILD_ID`)) throw new Error('The pages are not built.');
  for (const width of WIDTHS) await rm(`${OUT}${width}`, { recursive: true, force: true });
  for (const width of WIDTHS) await mkdir(`${OUT}${width}`, { recursive: true });
  const made = await makeAll();
  const browser = await chromium.launch(playwright.use?.launchOptions ?? {});
  try {
    for (const width of WIDTHS) {
      for (const screen of chosen) {
        const trouble = await photograph(browser, made, screen, width);
        if (trouble) troubles.push(trouble);
      }
    }
    if (forReadme) await readmePictures(browser, made);
  } finally {
    await browser.close();
    await made.server.stop();
  }
  await writeFile(`${OUT}index.html`, indexPage(chosen, ALL_WIDTHS));
  for (const trouble of troubles) process.stderr.write(`${trouble}\n`);
  const count = chosen.length * WIDTHS.length;
  process.stdout.write(`${count} pictures wanted, ${troubles.length} faults; see ${OUT}index.html\n`);
  return troubles.length === 0 ? 0 : 1;
}

// Rooms that were written into leave timers behind, which would hold the command for ever.
process.exit(await run());
