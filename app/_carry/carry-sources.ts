'use client';
import type { PictureView } from '#server/core/contract/responses.ts';
/**
 * The pictures that planes can be carried from, in words.
 *
 * In the flow: board -> [carry-sources] -> carry controls. References first; then the other paintings.
 */
import { carryWords as words } from '#words/carry.ts';

export interface CarrySource {
  pictureId: string;
  name: string;
}

/** How many pictures before this one show the same painting, itself counted. */
function stateOf(picture: PictureView, pictures: readonly PictureView[]): number {
  let count = 1;
  let before = picture.follows;
  while (before && count < pictures.length) {
    count++;
    before = pictures.find(({ id }) => id === before)?.follows ?? null;
  }
  return count;
}

export function carrySources(pictures: readonly PictureView[], paintingId: string): CarrySource[] {
  const references = pictures.filter(({ kind }) => kind === 'reference');
  const paintings = pictures.filter(({ kind, id }) => kind === 'painting' && id !== paintingId);
  return [
    ...references.map(({ id, caption }, at) => ({
      pictureId: id,
      name: words.reference(at + 1, references.length, caption),
    })),
    ...paintings.map((picture) => ({
      pictureId: picture.id,
      name: words.painting(picture.painter.name, picture.caption, stateOf(picture, pictures)),
    })),
  ];
}

/** The reference on the easel when it has planes, else any picture that has, else the first. */
export function firstSource(
  sources: readonly CarrySource[],
  referenceId: string | null,
  planesOn: (pictureId: string) => number,
): string | null {
  if (referenceId && planesOn(referenceId) > 0) return referenceId;
  const other = sources.find(({ pictureId }) => planesOn(pictureId) > 0) ?? sources[0];
  return other?.pictureId ?? null;
}
