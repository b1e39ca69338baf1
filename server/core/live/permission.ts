/**
 * Who may write what in a room: a function of person, room, root key and, for marks, their author.
 *
 * `server/live` asks it for every effect of an update; browsers ask it to show only what will be accepted.
 * Everybody with a role on the board may read. Pure.
 */
import type { BoardRole } from '../contract/roles.ts';
import type { RoomKind } from './document.ts';

/** A person as far as permission goes. */
export interface Writer {
  personId: string;
  role: BoardRole;
  /** Whether the picture of this `painting/<pictureId>` room is theirs; false in other rooms. */
  paints: boolean;
}

/** Whether the person may change that root key at all; for `marks`, `mayChangeMark` decides about each. */
export function mayWrite(writer: Writer, kind: RoomKind, rootKey: string): boolean {
  if (writer.role === 'viewer') return false;
  if (kind === 'marks') return true;
  const leads = leadsAll(writer.role);
  if (kind === 'setup') return leads || writer.role === 'owner';
  if (rootKey === 'result') return false;
  return leads || (writer.paints && rootKey !== 'cards');
}

/** Whether the person may change anything in the room. */
export function mayWriteRoom(writer: Writer, kind: RoomKind): boolean {
  return mayWrite(writer, kind, kind === 'painting' ? 'photo' : kind);
}

/** A mark is changed or removed by its author, a teacher or the host; the board's owner only as its author. */
export function mayChangeMark(writer: Writer, authorId: string): boolean {
  if (writer.role === 'viewer') return false;
  return writer.personId === authorId || leadsAll(writer.role);
}

function leadsAll(role: BoardRole): boolean {
  return role === 'teacher' || role === 'host';
}
