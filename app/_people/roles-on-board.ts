/** What a role may do on a board, so that only what will be accepted is offered. The server decides again. Pure. */
import type { BoardView, PictureView } from '#server/core/contract/responses.ts';
import type { BoardRole } from '#server/core/contract/roles.ts';

/** Rename, delete, end people's access. */
export function runsBoard(role: BoardRole): boolean {
  return role === 'host' || role === 'owner';
}

/** Invite, and take invitations back. */
export function mayInvite(role: BoardRole): boolean {
  return runsBoard(role) || role === 'teacher';
}

/** Post references; painters post paintings only. */
export function mayPostReference(role: BoardRole): boolean {
  return runsBoard(role) || role === 'teacher';
}

/** Post pictures. */
export function mayPost(role: BoardRole): boolean {
  return role !== 'viewer' && role !== 'peer';
}

/** Delete a picture: whoever posted it, and those who run or teach on the board. */
export function mayDeletePicture(board: BoardView, picture: PictureView): boolean {
  return picture.painter.id === board.me.id || runsBoard(board.role) || board.role === 'teacher';
}

/** Note what a painting is made with and how it was photographed: its painter, a teacher, the host. */
export function mayNotePicture(board: BoardView, picture: PictureView): boolean {
  if (picture.kind !== 'painting' || board.role === 'viewer') return false;
  return picture.painter.id === board.me.id || board.role === 'teacher' || board.role === 'host';
}
