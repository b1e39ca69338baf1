/**
 * Writing marks, nods, and what is said of remarks: on the marks room, and on the rooms of the pictures.
 *
 * In the flow: hands and talk -> [mark-writers] -> core/live writers -> the rooms. IO: randomness and the clock.
 */
import { uuidv4 } from 'lib0/random';
import type * as Y from 'yjs';
import { setAnswer } from '#server/core/live/card-answers.ts';
import { editMarkText, type Mark, putMark, removeMark, setMarkPlane } from '#server/core/live/marks.ts';
import { setNod } from '#server/core/live/nods.ts';
import { setAllowsSketch, setHidden } from '#server/core/live/remarks.ts';
import type { Documents } from './documents.ts';
import type { MarkWriters, RemarkWriters } from './mark-types.ts';

export function markWriters({ marks, writer }: Documents): MarkWriters {
  const on = (change: (doc: Y.Doc) => void) => {
    const doc = marks();
    if (doc) change(doc);
  };
  const add = (mark: Omit<Mark, 'id' | 'author' | 'at'>) => {
    const id = uuidv4();
    on((doc) => putMark(doc, { ...mark, id, author: writer.personId, at: Date.now() }));
    return id;
  };
  return {
    addMark: ({ layerId = null, ...mark }) => add({ ...mark, parent: layerId }),
    addReply: (parent, text) =>
      add({ kind: 'reply', pictureId: parent.pictureId, points: [], text, planeId: null, parent: parent.id }),
    rewriteMark: (markId, text) => on((doc) => editMarkText(doc, markId, text)),
    setMarkPlane: (markId, planeId) => on((doc) => setMarkPlane(doc, markId, planeId)),
    deleteMark: (markId) => on((doc) => removeMark(doc, markId, writer)),
    setNod: (markId, nods) => on((doc) => setNod(doc, markId, writer.personId, nods)),
  };
}

/** Of a reference it is said in the setup room, of a painting in its own. */
export function remarkWriters({ setup, painting, isReference }: Documents): RemarkWriters {
  const on = (pictureId: string, change: (doc: Y.Doc) => void) => {
    const doc = isReference(pictureId) ? setup() : painting(pictureId);
    if (doc) change(doc);
  };
  return {
    setHidden: (pictureId, markId, hidden) => on(pictureId, (doc) => setHidden(doc, markId, hidden)),
    setMarkState: (pictureId, markId, state) =>
      on(pictureId, (doc) =>
        setAnswer(doc, markId, state === 'open' ? null : { state, words: '', about: [] }),
      ),
    setAllowsSketch(pictureId, allowed) {
      const doc = isReference(pictureId) ? null : painting(pictureId);
      if (doc) setAllowsSketch(doc, allowed);
    },
  };
}
