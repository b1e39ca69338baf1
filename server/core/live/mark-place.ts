/**
 * The one point that a mark is about, whatever its kind.
 *
 * In the flow: mark -> [mark-place] -> which plane it stands on, the words for its place, its number on the sheet. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';
import type { MarkKind } from './layout.ts';
import type { Mark } from './marks.ts';

/** The point that a mark is about: an arrow's head, the middle of a line, the mean of a loop's points. */
export function markPlace(kind: MarkKind, points: Mark['points']): FractionPoint | null {
  if (points.length === 0) return null;
  if (kind === 'outline') {
    const sum = (axis: 0 | 1) => points.reduce((total, point) => total + point[axis], 0) / points.length;
    return [sum(0), sum(1)];
  }
  const at = kind === 'arrow' ? points.length - 1 : Math.floor((points.length - 1) / 2);
  const point = points[at];
  return point ? [point[0], point[1]] : null;
}
