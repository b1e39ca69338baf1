/** Which paintings have a turn in a class. In the flow: board -> [turns] -> start of a class, running order. Pure. */
import type { PictureView } from '#server/core/contract/responses.ts';

/** The newest painting of each painter, in the order in which the painters first posted. */
export function newestOfEach(paintings: readonly PictureView[]): PictureView[] {
  const newest = new Map<string, PictureView>();
  for (const painting of paintings) newest.set(painting.painter.id, painting);
  return [...newest.values()];
}
