/**
 * A mark that somebody makes without being in the room, from a page that must not open it.
 *
 * In the flow: live -> [add-mark] -> the marks room, whose guard judges it as if their browser had sent it. IO: the store.
 */
import * as Y from 'yjs';
import { declareRoots } from '../core/live/document.ts';
import { type Mark, putMark } from '../core/live/marks.ts';
import type { Writer } from '../core/live/permission.ts';
import { Problem } from '../core/problem.ts';
import type { Rooms } from './rooms.ts';

/** @throws Problem 'live-malformed' when it is no mark, 'live-not-allowed' when it is refused; what the store throws. */
export async function addMark(rooms: Rooms, boardId: string, writer: Writer, mark: Mark): Promise<void> {
  const doc = declareRoots(new Y.Doc(), 'marks');
  putMark(doc, mark);
  const bytes = Y.encodeStateAsUpdate(doc);
  doc.destroy();
  const refused = await rooms.use(boardId, 'marks', async (room) => {
    const letGo = room.hold();
    try {
      // The guard goes by the class and by leave to sketch, which stand in other rooms.
      await rooms.ready(room);
      return await room.takeFrom(writer, bytes);
    } finally {
      letGo();
    }
  });
  if (refused) throw new Problem('live-not-allowed', refused.message);
}
