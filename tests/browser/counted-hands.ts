/**
 * Hands that are counted: every pointer gesture and every key that goes into the page through them, and the time.
 *
 * The page counts too, by the events that the browser itself calls trusted, so that nothing slips by uncounted. Choosing
 * files in the system's own sheet, which no page sees, counts as one action more. An action adds a second to the clock.
 */
import { expect, type Locator, type Page } from '@playwright/test';

declare global {
  interface Window {
    countedActs?: { pointers: number; keys: number };
  }
}

/** Runs in the page before anything else of it. */
function countActs(): void {
  const acts = { pointers: 0, keys: 0 };
  window.countedActs = acts;
  window.addEventListener('pointerdown', (event) => event.isTrusted && acts.pointers++, true);
  window.addEventListener('keydown', (event) => event.isTrusted && acts.keys++, true);
}

export class CountedHands {
  readonly #page: Page;
  #pointers = 0;
  #keys = 0;
  #sheets = 0;
  #began = 0;

  private constructor(page: Page) {
    this.#page = page;
  }

  /** Call it before the page is opened. */
  static async on(page: Page): Promise<CountedHands> {
    await page.addInitScript(countActs);
    return new CountedHands(page);
  }

  /** Starts the clock, on a page that was just opened: what was counted before is forgotten. */
  begin(): void {
    this.#began = performance.now();
    this.#pointers = 0;
    this.#keys = 0;
    this.#sheets = 0;
  }

  async click(target: Locator): Promise<void> {
    await target.click();
    this.#pointers++;
  }

  async press(key: string): Promise<void> {
    await this.#page.keyboard.press(key);
    this.#keys++;
  }

  /** Files chosen in the system's sheet, which `open` brings up. */
  async chooseFiles(open: () => Promise<void>, paths: string[]): Promise<void> {
    const sheet = this.#page.waitForEvent('filechooser');
    await open();
    await (await sheet).setFiles(paths);
    this.#sheets++;
  }

  /** Actions, and seconds with one more for each of them. @throws when the page saw other acts than were counted. */
  async result(): Promise<{ actions: number; seconds: number }> {
    const elapsed = (performance.now() - this.#began) / 1000;
    const seen = await this.#page.evaluate(() => window.countedActs);
    expect(seen).toEqual({ pointers: this.#pointers, keys: this.#keys });
    const actions = this.#pointers + this.#keys + this.#sheets;
    return { actions, seconds: elapsed + actions };
  }
}
