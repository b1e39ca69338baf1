/**
 * Writing that changes how many planes there are: one split in two, two made one.
 *
 * In the flow: outline tool -> [part-writers] -> core/live writers -> the rooms. Each is one step of this person. IO:
 * randomness, for ids.
 */
import { uuidv4 } from 'lib0/random';
import type { Outline } from '#server/core/contract/setup.ts';
import { edit } from '#server/core/live/document.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane, readPlanes, removePlane } from '#server/core/live/planes.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import type { PlaneWriters } from './board-live-types.ts';
import type { Documents } from './documents.ts';

export function partWriters(documents: Documents): Pick<PlaneWriters, 'splitPlane' | 'mergePlanes'> {
  const { setup, painting, isReference, together } = documents;
  const put = (pictureId: string, planeId: string, outline: Outline) => {
    const doc = isReference(pictureId) ? setup() : painting(pictureId);
    if (!doc) return;
    if (isReference(pictureId)) putReferenceOutline(doc, pictureId, planeId, outline);
    else putPaintingOutline(doc, planeId, outline);
  };
  return {
    splitPlane(pictureId, planeId, name, outline) {
      const doc = setup();
      const planes = doc ? readPlanes(doc) : [];
      const at = planes.findIndex(({ id }) => id === planeId);
      const plane = planes[at];
      if (!doc || !plane) return null;
      checkOutline(name, outline);
      const id = uuidv4();
      together(() =>
        edit(doc, () => {
          addPlane(doc, { id, name, kind: plane.kind, tilt: plane.tilt }, at + 1);
          put(pictureId, id, outline);
        }),
      );
      return id;
    },
    mergePlanes(keptId, goneId, outlines) {
      const doc = setup();
      if (!doc) return;
      const kept = readPlanes(doc).find(({ id }) => id === keptId);
      for (const outline of outlines.values()) checkOutline(kept?.name ?? '', outline);
      if (!kept) return;
      together(() =>
        edit(doc, () => {
          for (const [pictureId, outline] of outlines) put(pictureId, keptId, outline);
          removePlane(doc, goneId);
        }),
      );
    },
  };
}
