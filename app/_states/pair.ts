/** Two states that lie on one another, and the box they are shown in. In the flow: stage -> [pair] -> wipe, in-turn. Pure. */
import type { CSSProperties } from 'react';

/** What each way of showing needs. */
export interface Pair {
  before: { at: number; src: string };
  after: { at: number; src: string };
  /** Width over height. */
  ratio: number;
}

/** For a box as wide as page and height of the screen allow; `.over` and `.alone` take their shape from it. */
export function stageRatio(ratio: number): CSSProperties {
  return { '--stage-ratio': ratio } as CSSProperties; // the type knows no properties of one's own
}
