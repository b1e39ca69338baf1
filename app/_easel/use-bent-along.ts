'use client';
/**
 * A pulled point takes its line along, onto the edge where that is clearly better.
 *
 * In the flow: outline hand lets go -> [use-bent-along] -> outline worker -> the outline to keep.
 */
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Outline } from '#server/core/contract/setup.ts';
import { useEasel } from './easel-state.tsx';
import { outlineTrouble } from './outline-trouble.ts';
import { pulledLine, stretchesBeside, withBetterLines } from './pulled-line.ts';

/** The edge is looked for this long after letting go; then the line stays straight. */
const PATIENCE_MS = 500;

/** An outline under the hand, not stored yet. */
export interface Pulled {
  planeId: string;
  before: Outline;
  now: Outline;
  /** The pulled point, or null when the whole outline moves. */
  at: number | null;
  /** Shift is held: the line stays straight. */
  straight: boolean;
}

export function useBentAlong(picture: PictureView, planeName: string): (pulled: Pulled) => Promise<Outline> {
  const { outlineLine, following } = useEasel();
  return async ({ before, now, at, straight }) => {
    if (at === null) return now;
    const { outline: line, at: place } = pulledLine(before, now, at, picture.height / picture.width);
    if (straight || !following) return line;
    const late = new Promise<null>((resolve) => setTimeout(resolve, PATIENCE_MS, null));
    const asked = outlineLine.better(picture.id, stretchesBeside(line, place)).catch(() => null);
    const better = await Promise.race([asked, late]);
    const bent = better ? withBetterLines(line, place, better) : line;
    return outlineTrouble(planeName, bent) === null ? bent : line;
  };
}
