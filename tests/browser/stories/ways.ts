/** The ways in which a story is played, and what is seen of several alike. */
import type { Locator } from '@playwright/test';
import type { Way } from './hands.ts';

interface Played {
  name: string;
  way: Way;
  viewport: { width: number; height: number };
}

export const TOUCH_AND_MOUSE: readonly Played[] = [
  { name: 'by mouse', way: 'mouse', viewport: { width: 1440, height: 900 } },
  { name: 'by touch on a phone', way: 'touch', viewport: { width: 390, height: 844 } },
  { name: 'by touch on a tablet', way: 'touch', viewport: { width: 820, height: 1180 } },
];

export const BY_KEYS: Played = {
  name: 'by keyboard alone',
  way: 'keys',
  viewport: { width: 1440, height: 900 },
};

/** The first that is on the screen, where another leaf holds one of the same name. */
export const seen = (target: Locator): Locator => target.filter({ visible: true }).first();
