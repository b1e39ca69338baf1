/** What was taken, for the words after it. In the flow: chooser -> [taken] -> plane list. Types and one rule; pure. */
import type { PlaneView } from '#app/_live/board-live-types.ts';
import type { PictureView } from '#server/core/contract/responses.ts';

export interface Taken {
  side: PictureView['kind'];
  /** Ids of the planes of a new set; null when the planes that were there got new outlines. */
  ids: readonly string[] | null;
  /** Ids of the planes that were there before. */
  before: readonly string[];
}

/**
 * Whether what was taken still stands: `stands`; `undone` = the planes of before are back, or none are there;
 * `overtaken` = others that this person never saw.
 */
export function standing({ ids, before }: Taken, planes: readonly Pick<PlaneView, 'id'>[]) {
  const known = (list: readonly string[]) => planes.some(({ id }) => list.includes(id));
  if (known(ids ?? before)) return 'stands';
  return planes.length === 0 || known(before) ? 'undone' : 'overtaken';
}
