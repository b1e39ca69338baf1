/**
 * What a person is on a board. A board that is not there and one without access look the same.
 *
 * In the flow: session -> [role] -> handlers and rooms. IO: the database.
 */
import type { BoardRole } from '../core/contract/roles.ts';
import { ownerOf } from '../store/boards.ts';
import { findMember } from '../store/members.ts';
import type { Visitor } from './session.ts';

/** The person's role, or null when there is no such board or they have no access to it. */
export async function roleOn(visitor: Visitor, boardId: string): Promise<BoardRole | null> {
  const ownerId = await ownerOf(boardId);
  if (ownerId === undefined) return null;
  if (ownerId === visitor.personId) return 'owner';
  if (visitor.isHost) return 'host';
  return (await findMember(boardId, visitor.personId))?.role ?? null;
}

/** Whether this role may invite and revoke. */
export function mayInvite(role: BoardRole): boolean {
  return role === 'host' || role === 'owner' || role === 'teacher';
}

/** Whether this role may rename or delete the board and send people away. */
export function mayManage(role: BoardRole): boolean {
  return role === 'host' || role === 'owner';
}
