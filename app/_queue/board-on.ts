/** The address of a board opened on one of its pictures. Pure. */

/** Name of the part of the address that says which picture is on the easel. */
export const PICTURE_PART = 'picture';

export function boardOn(boardId: string, pictureId: string): string {
  return `/boards/${encodeURIComponent(boardId)}?${PICTURE_PART}=${encodeURIComponent(pictureId)}`;
}
