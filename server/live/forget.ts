/**
 * What goes out of the board's shared rooms with a picture or a remark that was taken back, for good: nobody's remark
 * on a withdrawn picture stays in a log.
 *
 * In the flow: live -> [forget] -> rooms. IO: the store.
 */
import type * as Y from 'yjs';
import { readMarks, rootsOf } from '../core/live/marks.ts';
import type { Rooms } from './rooms.ts';

/** Takes every mark on a picture, with the nods at it, out of the marks. @returns How many marks went. */
export async function forgetMarksOn(rooms: Rooms, boardId: string, pictureId: string): Promise<number> {
  const on = (doc: Y.Doc) => idsWhere(doc, (entry) => entry.get('pictureId') === pictureId);
  const count = await rooms.use(boardId, 'marks', (room) => room.read((doc) => on(doc).length));
  if (count === 0) return 0;
  let gone = 0;
  await rooms.renew(boardId, 'marks', (doc) => {
    const ids = on(doc);
    gone = ids.length;
    dropMarks(doc, ids);
  });
  return gone;
}

/** Takes one mark, with the later strokes of its sketch, out of the document and out of the log. */
export async function forgetMark(rooms: Rooms, boardId: string, markId: string): Promise<boolean> {
  return rooms.use(boardId, 'marks', async (room) => {
    const letGo = room.hold();
    try {
      if (!room.read((doc) => doc.getMap('marks').has(markId))) return false;
      await room.write((doc) => dropMarks(doc, withStrokes(doc, markId)));
      await room.compact();
      return true;
    } finally {
      letGo();
    }
  });
}

/** Takes a picture's outlines and its air colour out of the board's setup. */
export async function forgetPictureInSetup(rooms: Rooms, boardId: string, pictureId: string): Promise<void> {
  const about = (doc: Y.Doc) =>
    [...doc.getMap('outlines').keys()].filter((key) => key.startsWith(`${pictureId}/`));
  await rooms.use(boardId, 'setup', async (room) => {
    if (!room.read((doc) => about(doc).length > 0 || doc.getMap('air').has(pictureId))) return;
    await room.write((doc) => {
      for (const key of about(doc)) doc.getMap('outlines').delete(key);
      doc.getMap('air').delete(pictureId);
    });
  });
}

/** Marks that do not parse are found too: a shape of an older version must not keep somebody's words. */
function idsWhere(doc: Y.Doc, fits: (entry: Y.Map<unknown>) => boolean): string[] {
  const marks = doc.getMap<Y.Map<unknown>>('marks');
  return [...marks].flatMap(([id, entry]) => (typeof entry?.get === 'function' && fits(entry) ? [id] : []));
}

function withStrokes(doc: Y.Doc, markId: string): string[] {
  const roots = rootsOf(readMarks(doc));
  const strokes = [...roots].filter(([mark, root]) => root.id === markId && mark.kind === 'sketch');
  return [markId, ...strokes.map(([{ id }]) => id)];
}

function dropMarks(doc: Y.Doc, ids: readonly string[]): void {
  const gone = new Set(ids);
  for (const id of gone) doc.getMap('marks').delete(id);
  const nods = doc.getMap('nods');
  for (const key of [...nods.keys()]) if (gone.has(key.slice(0, key.indexOf('/')))) nods.delete(key);
}
