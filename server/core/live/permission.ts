/**
 * Who may write what in a room: which row of the permission table an effect falls under, and whose it is.
 *
 * `server/live` asks it for every effect of an update; browsers ask it to show only what will be accepted.
 * Everybody with a role on the board may read. Pure.
 */
import type { BoardRole } from '../contract/roles.ts';
import { may } from '../permissions/may.ts';
import type { Action } from '../permissions/table.ts';
import type { RoomKind } from './document.ts';

/** A person as far as permission goes. */
export interface Writer {
  personId: string;
  role: BoardRole;
  /** Whether the picture of this `painting/<pictureId>` room is theirs; false in other rooms. */
  paints: boolean;
}

/** Root keys of a painting's room that have a row of their own. */
const PAINTING_ROWS: Record<string, Action> = {
  cards: 'room.cards',
  result: 'room.result',
  hidden: 'room.hide',
  allows: 'room.sketch',
  said: 'room.said',
};

/** Whether the person may change that root key at all; `mayChangeMark` and `mayNod` decide about each entry of theirs. */
export function mayWrite(writer: Writer, kind: RoomKind, rootKey: string): boolean {
  if (kind === 'marks') return may(writer.role, rootKey === 'nods' ? 'room.nod' : 'room.mark', 'own');
  if (kind === 'setup') return may(writer.role, 'room.setup');
  if (kind === 'class') return may(writer.role, rootKey === 'kept' ? 'room.kept' : 'room.class');
  // Nobody but its own person gets into such a room.
  if (kind === 'silent') return may(writer.role, 'room.silent', 'own');
  return may(writer.role, PAINTING_ROWS[rootKey] ?? 'room.painting', writer.paints ? 'own' : 'other');
}

/** Whether the person may change anything in the room. */
export function mayWriteRoom(writer: Writer, kind: RoomKind): boolean {
  return mayWrite(writer, kind, kind === 'painting' ? 'photo' : kind);
}

/** A mark is changed or removed by its author, a teacher or the host; the board's owner only as its author. */
export function mayChangeMark(writer: Writer, authorId: string): boolean {
  return may(writer.role, 'room.mark', writer.personId === authorId ? 'own' : 'other');
}

/** A nod is given and taken back by the person in whose name it is, and by nobody else. */
export function mayNod(writer: Writer, personId: string): boolean {
  return may(writer.role, 'room.nod', writer.personId === personId ? 'own' : 'other');
}
