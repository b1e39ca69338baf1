/**
 * Writing many planes or outlines at once: a set that was chosen, or outlines for the planes that are there.
 *
 * In the flow: proposals -> [set-writers] -> core/live writers -> the rooms. All of it is one step of this person, in
 * one transaction a room, so that nobody sees half of it. IO: randomness, for ids.
 */
import { uuidv4 } from 'lib0/random';
import type * as Y from 'yjs';
import type { Outline } from '#server/core/contract/setup.ts';
import { edit } from '#server/core/live/document.ts';
import { outlineKey } from '#server/core/live/layout.ts';
import { putPaintingOutline, putReferenceOutline, readPaintingOutlines } from '#server/core/live/outlines.ts';
import { readPlanes, replacePlanes } from '#server/core/live/planes.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import type { PlaneWriters } from './board-live-types.ts';
import { forgetMove } from './crossed-moves.ts';
import type { Documents } from './documents.ts';

export function setWriters(documents: Documents): Pick<PlaneWriters, 'takePlanes' | 'layOutlines'> {
  const { setup, together } = documents;
  const lay = (pictureId: string, outlines: ReadonlyMap<string, Outline>) => {
    const names = new Map(readPlanes(setupOf(documents)).map(({ id, name }) => [id, name]));
    for (const [id, outline] of outlines) checkOutline(names.get(id) ?? id, outline);
    if (documents.isReference(pictureId)) layOnReference(setupOf(documents), pictureId, outlines);
    else layOnPainting(documents, pictureId, outlines);
  };
  return {
    takePlanes(pictureId, planes) {
      const named = planes.map((plane) => ({ ...plane, id: uuidv4() }));
      const doc = setup();
      if (!doc) return [];
      for (const { name, outline } of named) checkOutline(name, outline);
      together(() =>
        edit(doc, () => {
          replacePlanes(doc, named, uuidv4());
          lay(pictureId, new Map(named.map(({ id, outline }) => [id, outline])));
        }),
      );
      return named.map(({ id }) => id);
    },
    layOutlines(pictureId, outlines) {
      if (setup()) lay(pictureId, outlines);
    },
  };
}

function setupOf({ setup }: Documents): Y.Doc {
  const doc = setup();
  if (!doc) throw new Error('Planes are written before their room is open.');
  return doc;
}

function layOnReference(doc: Y.Doc, pictureId: string, outlines: ReadonlyMap<string, Outline>): void {
  edit(doc, () => {
    for (const [planeId, outline] of outlines) {
      putReferenceOutline(doc, pictureId, planeId, outline);
      forgetMove(doc.getMap('outlines'), outlineKey(pictureId, planeId));
    }
  });
}

/** A painting's room takes sixty outlines; from this many on, those of planes that are gone make room. */
const CROWDED = 40;

function layOnPainting(
  documents: Documents,
  pictureId: string,
  outlines: ReadonlyMap<string, Outline>,
): void {
  const doc = documents.painting(pictureId);
  if (!doc) return;
  const planes = new Set(readPlanes(setupOf(documents)).map(({ id }) => id));
  edit(doc, () => {
    const stored = [...readPaintingOutlines(doc).keys()];
    for (const planeId of stored.length > CROWDED ? stored : []) {
      if (!planes.has(planeId)) putPaintingOutline(doc, planeId, null);
    }
    for (const [planeId, outline] of outlines) {
      putPaintingOutline(doc, planeId, outline);
      forgetMove(doc.getMap('outlines'), planeId);
    }
  });
}
