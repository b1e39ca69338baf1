/**
 * What somebody writes without being in the room, from a page that does not open it.
 *
 * In the flow: live -> [write-as] -> the room, whose guard judges it as if their browser had sent it. IO: the store.
 */
import * as Y from 'yjs';
import { declareRoots } from '../core/live/document.ts';
import type { RoomName } from '../core/live/layout.ts';
import type { Writer } from '../core/live/permission.ts';
import { Problem } from '../core/problem.ts';
import type { Rooms } from './rooms.ts';

/** @throws Problem 'live-not-allowed' when it is refused; what the store throws. */
export async function writeAs(
  rooms: Rooms,
  boardId: string,
  name: RoomName,
  writer: Writer,
  edit: (doc: Y.Doc) => void,
): Promise<void> {
  const refused = await rooms.use(boardId, name, async (room) => {
    const letGo = room.hold();
    try {
      // The guard goes by the class, which stands in another room.
      await rooms.ready(room);
      return await room.takeFrom(writer, await room.read((doc) => editedCopy(doc, name, edit)));
    } finally {
      letGo();
    }
  });
  if (refused) throw new Problem('live-not-allowed', refused.message);
}

/** The update that the edit makes on a copy, as a browser that has everything would send it. */
function editedCopy(doc: Y.Doc, name: RoomName, edit: (doc: Y.Doc) => void): Uint8Array {
  const copy = declareRoots(new Y.Doc(), name);
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(doc));
  const before = Y.encodeStateVector(copy);
  edit(copy);
  const update = Y.encodeStateAsUpdate(copy, before);
  copy.destroy();
  return update;
}
