/** Waits until a page is at rest. IO: the page. */
import type { Page } from '@playwright/test';

/** Resolves once half a second of frames came in time: what opening a page left to do is over. */
export async function atRest(page: Page): Promise<void> {
  await page.evaluate(AT_REST);
}

/** A text, because what tsx makes of a function needs a helper that the page does not have. */
const AT_REST = `new Promise((resolve) => {
  let inTime = 0;
  let last = performance.now();
  requestAnimationFrame(function frame(now) {
    inTime = now - last < 40 ? inTime + 1 : 0;
    last = now;
    if (inTime >= 30) resolve();
    else requestAnimationFrame(frame);
  });
})`;
