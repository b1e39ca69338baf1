/**
 * Which changes from one state to the next are worth a word, in whatever language. Pure.
 *
 * In the flow: changes -> [worth-saying] -> `moves.ts` of the house's language.
 */
import type { StateChange } from '#server/core/contract/moves.ts';

export type PhotoGrade = 'A' | 'B' | 'C' | null;

/** Where the middle moved, darks and lights that went with it need not be said. */
export function worthSaying(changes: readonly StateChange[]): StateChange[] {
  const mid = changes.find(({ key }) => key === 'mid');
  return changes.filter(({ key, by }) => {
    const goesWith = mid !== undefined && (key === 'dark' || key === 'light') && by * mid.by > 0;
    return !goesWith;
  });
}

/** The poorer of two grades. */
export function poorer(one: PhotoGrade, two: PhotoGrade): PhotoGrade {
  const order: PhotoGrade[] = ['A', 'B', 'C', null];
  return order.indexOf(one) > order.indexOf(two) ? one : two;
}
