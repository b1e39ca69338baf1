/**
 * How a picture is called on a board: whose painting, which state, which reference. Pure.
 */

import type { PictureView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';

/**
 * Which state of its painting a picture is, 1 = the first.
 *
 * A chain that runs in a ring (two pictures each following the other) is cut where it meets itself.
 */
export function stateNumber(picture: PictureView, pictures: readonly PictureView[]): number {
  const seen = new Set<string>([picture.id]);
  let earlier = pictures.find(({ id }) => id === picture.follows);
  while (earlier && !seen.has(earlier.id)) {
    seen.add(earlier.id);
    const next = earlier.follows;
    earlier = pictures.find(({ id }) => id === next);
  }
  return seen.size;
}

/** Its caption when it has one, else whose it is and which state. */
export function pictureName(picture: PictureView, pictures: readonly PictureView[]): string {
  if (picture.caption) return picture.caption;
  if (picture.kind === 'reference') return words.shelf.reference(picture.painter.name);
  return words.shelf.painting(picture.painter.name, stateNumber(picture, pictures));
}
