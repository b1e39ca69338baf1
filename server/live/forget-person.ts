/**
 * What somebody wrote goes out of a board's rooms for good: their marks, their nods, their first impressions, what bears
 * their name in the setup; and what anybody deleted there goes out of the logs.
 *
 * In the flow: live -> [forget-person] -> rooms. Replies of others stay and stand alone. IO: the store, sockets.
 */
import type * as Y from 'yjs';
import type { RoomName } from '../core/live/layout.ts';
import { nodParts } from '../core/live/nods.ts';
import { eraseRoom, roomsOf } from '../store/live-updates.ts';
import type { Appends } from './appends.ts';
import type { Rooms } from './rooms.ts';

/** Compacting waits for what is on its way to the store. */
const MOST_GOES = 20;

/** @param endRoom Sends everybody out of a room and forgets it. @returns How many marks went. */
export async function forgetPerson(
  rooms: Rooms,
  appends: Appends,
  { boardId, personId }: { boardId: string; personId: string },
  endRoom: (name: RoomName) => Promise<void>,
): Promise<number> {
  const names = await roomsOf(boardId);
  let marks = 0;
  for (const name of names) {
    if (name === `silent/${personId}`) {
      await endRoom(name);
      await eraseRoom(boardId, name);
    } else if (name === 'marks') {
      marks = await forgetInMarks(rooms, boardId, personId);
    } else if (name === 'setup' || name === 'class') {
      await rooms.use(boardId, name, async (room) => {
        if (room.read((doc) => signedBy(doc, personId).length) > 0)
          await room.write((doc) => dropSigned(doc, personId));
      });
    }
  }
  for (const name of names) if (name !== `silent/${personId}`) await compact(rooms, appends, boardId, name);
  return marks;
}

/** A new epoch keeps browsers from bringing the words back that they have copies of. */
async function forgetInMarks(rooms: Rooms, boardId: string, personId: string): Promise<number> {
  const theirs = await rooms.use(boardId, 'marks', (room) =>
    room.read((doc) => ({ marks: marksBy(doc, personId).length, nods: nodsBy(doc, personId).length })),
  );
  if (theirs.marks + theirs.nods === 0) return 0;
  await rooms.renew(boardId, 'marks', (doc) => {
    const [marks, nods] = [doc.getMap('marks'), doc.getMap('nods')];
    const gone = new Set(marksBy(doc, personId));
    for (const id of gone) marks.delete(id);
    for (const key of [...nods.keys()]) {
      const { markId, personId: who } = nodParts(key);
      if (who === personId || gone.has(markId)) nods.delete(key);
    }
  });
  return theirs.marks;
}

function marksBy(doc: Y.Doc, personId: string): string[] {
  const marks = doc.getMap<Y.Map<unknown>>('marks');
  // What does not parse is found too: a shape of an older version must not keep somebody's words.
  return [...marks].flatMap(([id, entry]) => {
    return typeof entry?.get === 'function' && entry.get('author') === personId ? [id] : [];
  });
}

function nodsBy(doc: Y.Doc, personId: string): string[] {
  return [...doc.getMap('nods').keys()].filter((key) => nodParts(key).personId === personId);
}

/** Entries that say who made them, or whose they are. */
function signedBy(doc: Y.Doc, personId: string): [string, string][] {
  return [...doc.share.keys()].flatMap((root) =>
    [...doc.getMap(root)].flatMap(([key, value]): [string, string][] => {
      const { by, personId: whose, painterId } = (value ?? {}) as Record<string, unknown>;
      return [by, whose, painterId].includes(personId) ? [[root, key]] : [];
    }),
  );
}

function dropSigned(doc: Y.Doc, personId: string): void {
  for (const [root, key] of signedBy(doc, personId)) doc.getMap(root).delete(key);
}

async function compact(rooms: Rooms, appends: Appends, boardId: string, name: RoomName): Promise<void> {
  await rooms.use(boardId, name, async (room) => {
    const letGo = room.hold();
    try {
      for (let goes = 0; room.loose > 0 && goes < MOST_GOES; goes++) {
        await appends.settled();
        await room.compact();
      }
    } finally {
      letGo();
    }
  });
}
