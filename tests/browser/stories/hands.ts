/**
 * Hands that play a story, by mouse, by touch or by keyboard alone, and count its steps.
 *
 * A step is a gesture of the pointer, a key that does something, a field filled in, or a choice in the system's own sheet
 * of files. Going from one place to the next with Tab is travel, and an arrow held down is one step however far it goes.
 * By keyboard nothing is reached but by Tab: what the ring of focus does not come to, the story does not get.
 */
import { expect, type Locator, type Page } from '@playwright/test';
import { placeOn } from '../story.ts';

export type Way = 'mouse' | 'touch' | 'keys';

/** A board with everything open has fewer stops than this. */
const MOST_TABS = 260;
const MOST_CHOICES = 12;
/** How far an arrow key moves the cross, screen pixels (`use-stage-hands.ts`). */
const CROSS_PX = 14;
const CROSS_FINE_PX = 2;

export class Hands {
  readonly page: Page;
  readonly way: Way;
  #steps = 0;
  #tabs = 0;
  #said: string[] = [];

  constructor(page: Page, way: Way) {
    this.page = page;
    this.way = way;
  }

  /** Presses a button, a link, a tab or a choice. */
  async press(target: Locator, timeout = 45_000): Promise<void> {
    await target.waitFor({ timeout });
    if (this.way === 'mouse') await target.click();
    else if (this.way === 'touch') await target.tap();
    else return this.#pressByKey(target);
    this.#steps++;
  }

  /** A key of the board, where the story is played by keyboard; else the button that does the same. */
  async letter(key: string, button: Locator): Promise<void> {
    if (this.way !== 'keys') return this.press(button);
    await this.key(key);
  }

  async key(key: string): Promise<void> {
    await this.page.keyboard.press(key);
    this.#steps++;
  }

  /** Fills a field; by keyboard after going there. */
  async write(field: Locator, text: string): Promise<void> {
    await field.waitFor();
    if (this.way === 'keys') {
      await this.#reach(field);
      await this.page.keyboard.type(text);
    } else await field.fill(text);
    this.#steps++;
  }

  async choose(field: Locator, option: string): Promise<void> {
    await field.waitFor();
    if (this.way === 'keys') await this.#reach(field);
    // The list of a closed choice is the system's own; its keys are not the page's to test.
    await field.selectOption(option);
    this.#steps++;
  }

  /** Files in the system's sheet, which no page sees; a press of its own opens it. */
  async chooseFiles(open: () => Promise<void>, paths: string[]): Promise<void> {
    const sheet = this.page.waitForEvent('filechooser');
    await open();
    await (await sheet).setFiles(paths);
    this.#steps++;
  }

  /**
   * Points at a place of a picture, 0..1 of it, with what the hand holds.
   * @param how `near` for what only has to stand about there: by keyboard within half an arrow's step. `exact` for a corner
   *   or a small patch, for which a person goes on with Shift.
   */
  async point(stage: Locator, x: number, y: number, how: 'near' | 'exact' = 'near'): Promise<void> {
    // On the way there the page may still lay itself out anew: where the place is, is looked at on arrival.
    if (this.way === 'keys') await this.#reach(stage);
    const at = await placeOn(stage, x, y);
    if (this.way === 'mouse') await this.page.mouse.click(at.x, at.y);
    else if (this.way === 'touch') await this.page.touchscreen.tap(at.x, at.y);
    else {
      await this.#moveCross(stage, at, how);
      await this.page.keyboard.press('Space');
    }
    this.#steps++;
  }

  /** Pulls something by so many pixels. Not by keyboard: there the part itself is reached and moved by its keys. */
  async pull(target: Locator, by: readonly [number, number]): Promise<void> {
    await target.scrollIntoViewIfNeeded();
    const box = await target.boundingBox();
    if (!box) throw new Error('What is to be pulled is not on the screen.');
    const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    if (this.way === 'touch') await touchPull(this.page, from, by);
    else {
      await this.page.mouse.move(from.x, from.y);
      await this.page.mouse.down();
      await this.page.mouse.move(from.x + by[0] / 2, from.y + by[1] / 2);
      await this.page.mouse.move(from.x + by[0], from.y + by[1]);
      await this.page.mouse.up();
    }
    this.#steps++;
  }

  /** Ends a part of the story; the steps it took are printed with the others. */
  part(name: string): void {
    const before = this.#said.reduce((sum, line) => sum + Number(line.split(' ')[0]), 0);
    this.#said.push(`${this.#steps - before} ${name}`);
  }

  /** Prints how many steps it took. @param most More than these fail: a way that grew longer is looked at. */
  told(story: string, most: number): void {
    const travel = this.way === 'keys' ? `, ${this.#tabs} Tabs between them` : '';
    const parts = this.#said.length > 0 ? ` (${this.#said.join(', ')})` : '';
    console.log(`${story}: ${this.#steps} steps${parts}${travel}`);
    expect(this.#steps, 'steps').toBeLessThanOrEqual(most);
  }

  async #pressByKey(target: Locator): Promise<void> {
    const kind = await target.evaluate((element) =>
      element.getAttribute('role') === 'radio' || element.matches('input[type=radio]')
        ? 'radio'
        : element.matches('input')
          ? 'tick'
          : element.getAttribute('role') === 'tab'
            ? 'tab'
            : 'button',
    );
    if (kind === 'tab') return this.#turnTo(target);
    if (kind !== 'radio') {
      await this.#reach(target);
      await this.page.keyboard.press(kind === 'tick' ? 'Space' : 'Enter');
      this.#steps++;
      return;
    }
    // Tab comes to a group of choices once; its arrow keys go on from there and choose as they go.
    const group = target.locator('xpath=ancestor::*[@role="radiogroup" or self::fieldset][1]');
    await this.#tabUntil(() => group.evaluate((element) => element.contains(document.activeElement)), target);
    for (let arrows = 0; arrows < MOST_CHOICES && !(await this.#isAt(target)); arrows++)
      await this.key('ArrowRight');
    if (!(await target.isChecked())) await this.key('Space');
    expect(await target.isChecked()).toBe(true);
  }

  /** Tab comes to the open leaf of a row, its arrow keys go round and open each as they come to it. */
  async #turnTo(leaf: Locator): Promise<void> {
    const row = leaf.locator('xpath=ancestor::*[@role="tablist"][1]');
    await this.#tabUntil(() => row.evaluate((element) => element.contains(document.activeElement)), leaf);
    for (let arrows = 0; arrows < MOST_CHOICES && !(await this.#isAt(leaf)); arrows++)
      await this.key('ArrowRight');
    await expect(leaf).toHaveAttribute('aria-selected', 'true');
  }

  #isAt(target: Locator): Promise<boolean> {
    return target.evaluate((element) => element === document.activeElement);
  }

  async #reach(target: Locator): Promise<void> {
    await this.#tabUntil(() => this.#isAt(target), target);
  }

  async #tabUntil(there: () => Promise<boolean>, target: Locator): Promise<void> {
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      if (await there()) return;
      await this.page.keyboard.press('Tab');
      this.#tabs++;
    }
    throw new Error(`By Tab alone ${target} is not reached.`);
  }

  /** The cross stays where it was left, so that its place is read from the screen; Shift makes its steps small. */
  async #moveCross(stage: Locator, to: { x: number; y: number }, how: 'near' | 'exact'): Promise<void> {
    const { keyboard } = this.page;
    await keyboard.press('Shift+ArrowRight');
    const box = await stage.locator('[class*="_crosshair"]').boundingBox();
    if (!box) throw new Error('The cross is not on the screen.');
    const [dx, dy] = [to.x - box.x - box.width / 2, to.y - box.y - box.height / 2];
    for (const [by, back, on] of [
      [dx, 'ArrowLeft', 'ArrowRight'],
      [dy, 'ArrowUp', 'ArrowDown'],
    ] as const) {
      const key = by < 0 ? back : on;
      const coarse = Math.abs(by) / CROSS_PX;
      const far = how === 'exact' ? Math.floor(coarse) : Math.round(coarse);
      const fine = how === 'exact' ? Math.round((Math.abs(by) - far * CROSS_PX) / CROSS_FINE_PX) : 0;
      for (let press = 0; press < far; press++) await keyboard.press(key);
      for (let press = 0; press < fine; press++) await keyboard.press(`Shift+${key}`);
      this.#steps += Number(far > 0) + Number(fine > 0);
    }
  }
}

/** A finger that goes down, moves and lifts, as the browser itself makes the events of one. */
async function touchPull(page: Page, from: { x: number; y: number }, by: readonly [number, number]) {
  const session = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', share: number) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: from.x + by[0] * share, y: from.y + by[1] * share }],
    });
  await send('touchStart', 0);
  for (const share of [0.25, 0.5, 0.75, 1]) await send('touchMove', share);
  await send('touchEnd', 1);
  await session.detach();
}
