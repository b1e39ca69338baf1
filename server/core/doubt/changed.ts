/**
 * Which figures of a painting changed between two photographs of it, beyond what both leave open.
 *
 * In the flow: two documents of states of one painting -> [changed] -> screen. A difference counts when it exceeds
 * twice its deviation, as for every reading. Pure.
 */
import { hueDifferenceDeg } from '../colour/difference.ts';
import type { GapKey, MeasureDocument, PlaneMeasures } from '../contract/measures.ts';
import { HALF_90 } from './intervals.ts';

/** Figures that a painter changes with paint; shares follow the outlines, and hue is in a and b already. */
export const CHANGING: readonly GapKey[] = [
  'dark',
  'mid',
  'light',
  'spread',
  'chroma',
  'strong',
  'hue',
  'a',
  'b',
  'warmCool',
  'detail',
  'edge',
  'airDistance',
  'airShare',
];
const SIGMAS = 2;

export interface Change {
  readonly plane: string;
  readonly key: GapKey;
  /** Later − earlier. */
  readonly by: number;
}

function deviation({ doubt }: PlaneMeasures, key: GapKey): number | null {
  const interval = doubt[key];
  return interval ? (interval[1] - interval[0]) / 2 / HALF_90 : null;
}

/** Changes from the earlier to the later document, plane by plane of the same name; none where doubt is missing. */
export function changesBetween(earlier: MeasureDocument, later: MeasureDocument): Change[] {
  return later.planes.flatMap(({ name, painting }) => {
    const before = earlier.planes.find((plane) => plane.name === name)?.painting;
    if (!before) return [];
    return CHANGING.flatMap((key): Change[] => {
      const [was, is] = [before[key], painting[key]];
      const [p, q] = [deviation(before, key), deviation(painting, key)];
      if (was === null || is === null || p === null || q === null) return [];
      const by = key === 'hue' ? hueDifferenceDeg(is, was) : is - was;
      return Math.abs(by) > SIGMAS * Math.hypot(p, q) ? [{ plane: name, key, by }] : [];
    });
  });
}
