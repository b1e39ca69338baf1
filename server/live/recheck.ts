/**
 * After roles or consent on a board changed: who is in its rooms is asked about anew.
 *
 * In the flow: handler changed the store -> [recheck] -> sockets. IO: the store, sockets.
 */
import { hiddenPainters } from '../access/consent.ts';
import { roleNow } from '../access/roles.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import type { Refusal } from '../core/live/wire.ts';
import { painterOf } from '../store/live-updates.ts';
import type { Connection } from './connection.ts';
import type { Room } from './room.ts';
import type { Rooms } from './rooms.ts';
import { REFUSALS } from './sentences.ts';
import { type Sight, sameSight, sightOn } from './sight.ts';

/** What somebody is and may not see on the board now; a null role = nothing any more. */
interface Now {
  role: BoardRole | null;
  hidden: ReadonlySet<string>;
  sight: Sight | null;
}

/** Closes the sockets of who lost access, became something else, or may not see the room's painting any more. */
export async function recheck(rooms: Rooms, boardId: string): Promise<void> {
  const before = (await rooms.present(boardId)).flatMap((room) => [...room.connections]);
  const people = new Map<string, Now>();
  for (const personId of new Set(before.map(({ person }) => person.id))) {
    people.set(personId, await nowOn(boardId, personId));
  }
  // Looked up again: who joined while this was read has been asked about after the change.
  for (const room of await rooms.present(boardId)) {
    const painter = await painterIn(room);
    for (const connection of [...room.connections]) {
      const refusal = refusalFor(connection, people.get(connection.person.id), painter);
      if (refusal) connection.close(refusal);
      else resight(room, connection, people.get(connection.person.id)?.sight ?? null);
    }
  }
}

async function nowOn(boardId: string, personId: string): Promise<Now> {
  const role = await roleNow(personId, boardId);
  if (role === null) return { role, hidden: new Set(), sight: null };
  const sight = await sightOn(boardId, personId, role);
  return { role, hidden: await hiddenPainters(boardId, personId, role), sight };
}

function resight(room: Room, connection: Connection, sight: Sight | null): void {
  if (sight && !sameSight(sight, connection.sight)) room.presence.resight(connection, sight);
}

/** These people block each other, or do no longer: whom they see is asked anew wherever they are now. */
export async function recheckSight(rooms: Rooms, personIds: readonly string[]): Promise<string[]> {
  const boards = new Set<string>();
  for (const room of await rooms.present()) {
    for (const connection of [...room.connections]) {
      const { person } = connection;
      if (!personIds.includes(person.id)) continue;
      boards.add(room.boardId);
      resight(room, connection, await sightOn(room.boardId, person.id, connection.writer.role));
    }
  }
  return [...boards];
}

async function painterIn({ boardId, name }: Room): Promise<string | null> {
  return name.startsWith('painting/') ? painterOf(boardId, name.slice('painting/'.length)) : null;
}

function refusalFor(connection: Connection, now: Now | undefined, painter: string | null): Refusal | null {
  if (now === undefined) return null;
  if (now.role === null) return REFUSALS.accessEnded();
  if (painter !== null && now.hidden.has(painter)) return REFUSALS.noSuchRoom();
  return now.role === connection.writer.role ? null : REFUSALS.roleChanged();
}
