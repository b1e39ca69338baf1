/**
 * The ridge of a plane: the upper edge of its outline, from left to right.
 *
 * In the flow: outline -> [ridge-line] -> a bend of it. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';

const STEPS = 80;

/** Height of the outline's upper edge at a place, or null where it doesn't reach. */
function topAt(outline: readonly FractionPoint[], x: number): number | null {
  let top: number | null = null;
  let previous = outline.at(-1);
  for (const point of outline) {
    if (previous) {
      const [x0, y0] = previous;
      const [x1, y1] = point;
      if (x0 <= x !== x1 <= x) {
        const y = y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
        if (top === null || y < top) top = y;
      }
    }
    previous = point;
  }
  return top;
}

/** @returns rising in x, within the picture; empty for an outline without width. */
export function ridgeLine(outline: readonly FractionPoint[]): FractionPoint[] {
  const xs = outline.map(([x]) => x);
  const [left, right] = [Math.max(0, Math.min(...xs)), Math.min(1, Math.max(...xs))];
  return Array.from({ length: STEPS + 1 }, (_, step): FractionPoint | null => {
    // Not the very ends, where the outline runs upright.
    const x = left + ((right - left) * (step + 0.5)) / (STEPS + 1);
    const top = topAt(outline, x);
    return top === null ? null : [x, Math.min(1, Math.max(0, top))];
  }).filter((point) => point !== null);
}
