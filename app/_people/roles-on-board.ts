/** What a role may do on a board, so that only what will be accepted is offered. The server decides again. Pure. */
import type { BoardView, MemberView, PictureView } from '#server/core/contract/responses.ts';
import type { BoardRole } from '#server/core/contract/roles.ts';
import { may, type Relation } from '#server/core/permissions/may.ts';

/** Rename, delete, end people's access, change what they are. */
export function runsBoard(role: BoardRole): boolean {
  return may(role, 'board.delete');
}

/** Invite, and take invitations back. */
export function mayInvite(role: BoardRole): boolean {
  return may(role, 'invite.make');
}

/** Post references; painters post paintings only. */
export function mayPostReference(role: BoardRole): boolean {
  return may(role, 'reference.post');
}

/** Post pictures. */
export function mayPost(role: BoardRole): boolean {
  return may(role, 'painting.post');
}

/** Delete a picture: whoever posted it, and those who run or teach on the board. */
export function mayDeletePicture(board: BoardView, picture: PictureView): boolean {
  return may(board.role, 'picture.withdraw', relationTo(board, picture));
}

/** Note what a painting is made with and how it was photographed: its painter, a teacher, the host. */
export function mayNotePicture(board: BoardView, picture: PictureView): boolean {
  return picture.kind === 'painting' && may(board.role, 'painting.note', relationTo(board, picture));
}

/** Whom a guardian can be invited for. */
export function wardsAmong(members: readonly MemberView[]): MemberView[] {
  return members.filter(({ role }) => role === 'painter' || role === 'peer' || role === 'viewer');
}

function relationTo(board: BoardView, picture: PictureView): Relation {
  return picture.painter.id === board.me.id ? 'own' : 'other';
}
