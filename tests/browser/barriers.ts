/** What keeps somebody from using a page, as far as axe-core can tell: WCAG 2.2, levels A and AA. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** Each rule that is broken with the elements that break it; none = no barrier found. */
export async function barriersOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
  );
}
