/**
 * Counts the steps of a story in the page itself, for stories that are told with the browser's own hands: gestures of the
 * pointer, keys that do something, and fields filled in. Tab is travel and no step; letters in a field are one with it.
 */
import type { Page } from '@playwright/test';

/** Runs in the page before anything else of it; the count outlives going to another page. */
function count(): void {
  const more = () => {
    sessionStorage.setItem('acts', String(Number(sessionStorage.getItem('acts') ?? 0) + 1));
  };
  const travel = ['Tab', 'Shift', 'Control', 'Alt', 'Meta'];
  const isField = ({ target }: Event) =>
    target instanceof Element &&
    target.matches('textarea, input:not([type=range], [type=checkbox], [type=radio])');
  window.addEventListener('pointerdown', (event) => event.isTrusted && more(), true);
  window.addEventListener(
    'keydown',
    (event) => {
      const written = isField(event) && event.key.length === 1;
      if (event.isTrusted && !event.repeat && !written && !travel.includes(event.key)) more();
    },
    true,
  );
  // A field that is typed into says so when it is left; one that is filled at once says it as it happens.
  window.addEventListener('change', (event) => event.isTrusted && isField(event) && more(), true);
  window.addEventListener('input', (event) => !event.isTrusted && more(), true);
}

/** Call it before the page is opened. */
export async function countActs(page: Page): Promise<void> {
  await page.addInitScript(count);
}

/** Prints the steps taken in these pages, by name, and returns them together. */
export async function tellActs(story: string, pages: Readonly<Record<string, Page>>): Promise<number> {
  const taken: [string, number][] = [];
  for (const [name, page] of Object.entries(pages)) {
    taken.push([name, await page.evaluate(() => Number(sessionStorage.getItem('acts') ?? 0))]);
  }
  const all = taken.reduce((sum, [, acts]) => sum + acts, 0);
  console.log(`${story}: ${all} steps (${taken.map(([name, acts]) => `${name} ${acts}`).join(', ')})`);
  return all;
}
