/**
 * Everything this person can write on a board, put onto the right documents.
 *
 * In the flow: hands -> [writers] -> core/live writers -> the room. Ids and times are made here, since core has
 * neither. A write into a room that is not open changes nothing. IO: randomness and the clock.
 */
import { uuidv4 } from 'lib0/random';
import type * as Y from 'yjs';
import { Outline } from '#server/core/contract/setup.ts';
import { changeCard, clearCard, orderCards, setAnswer } from '#server/core/live/card-answers.ts';
import { edit } from '#server/core/live/document.ts';
import { outlineKey } from '#server/core/live/layout.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import {
  setCards,
  setCorners,
  setFocus,
  setMeant,
  setSize,
  writeIntention,
} from '#server/core/live/painting.ts';
import {
  addPlane,
  movePlane,
  removePlane,
  renamePlane,
  setPlaneKind,
  setPlaneTilt,
} from '#server/core/live/planes.ts';
import { setAir, setCondition, setUnreliable } from '#server/core/live/scene.ts';
import type {
  BoardWriters,
  CritiqueWriters,
  PaintingWriters,
  PlaneWriters,
  SceneWriters,
} from './board-live-types.ts';
import { mendWhenCrossed } from './crossed-moves.ts';
import type { Documents } from './documents.ts';
import { markWriters, remarkWriters } from './mark-writers.ts';
import { partWriters } from './part-writers.ts';
import { setWriters } from './set-writers.ts';

export function writersFor(documents: Documents): BoardWriters {
  return {
    ...planeWriters(documents),
    ...setWriters(documents),
    ...partWriters(documents),
    ...paintingWriters(documents),
    ...sceneWriters(documents),
    ...critiqueWriters(documents),
    ...markWriters(documents),
    ...remarkWriters(documents),
  };
}

function planeWriters({
  setup,
  painting,
  isReference,
}: Documents): Omit<PlaneWriters, 'takePlanes' | 'layOutlines' | 'splitPlane' | 'mergePlanes'> {
  const putOutline = (pictureId: string, planeId: string, outline: Outline | null) => {
    const doc = isReference(pictureId) ? setup() : painting(pictureId);
    if (!doc) return;
    const stored = doc.getMap('outlines');
    const key = isReference(pictureId) ? outlineKey(pictureId, planeId) : planeId;
    const before = Outline.safeParse(stored.get(key));
    if (isReference(pictureId)) putReferenceOutline(doc, pictureId, planeId, outline);
    else putPaintingOutline(doc, planeId, outline);
    if (!outline || !before.success) return;
    mendWhenCrossed(stored, key, before.data, (mended) => putOutline(pictureId, planeId, mended));
  };
  return {
    addPlane(plane, index) {
      const id = uuidv4();
      const doc = setup();
      if (doc) addPlane(doc, { id, tilt: null, ...plane }, index);
      return id;
    },
    changePlane(planeId, { name, kind, tilt }) {
      const doc = setup();
      if (!doc) return;
      edit(doc, () => {
        if (name !== undefined) renamePlane(doc, planeId, name);
        if (kind !== undefined) setPlaneKind(doc, planeId, kind);
        if (tilt !== undefined) setPlaneTilt(doc, planeId, tilt);
      });
    },
    movePlane(planeId, toIndex) {
      const doc = setup();
      if (doc) movePlane(doc, planeId, toIndex);
    },
    deletePlane(planeId) {
      const doc = setup();
      if (doc) removePlane(doc, planeId);
    },
    setOutline: putOutline,
    deleteOutline: (pictureId, planeId) => putOutline(pictureId, planeId, null),
  };
}

/** Runs a change on the document of a painting, if its room is open. */
function changing({ painting }: Documents) {
  return (pictureId: string, change: (doc: Y.Doc) => void) => {
    const doc = painting(pictureId);
    if (doc) change(doc);
  };
}

function paintingWriters(documents: Documents): PaintingWriters {
  const on = changing(documents);
  return {
    setCorners: (pictureId, corners) => on(pictureId, (doc) => setCorners(doc, corners)),
    setCards: (pictureId, cards) => on(pictureId, (doc) => setCards(doc, cards)),
    setSize: (pictureId, size) => on(pictureId, (doc) => setSize(doc, size)),
    writeIntention: (pictureId, text) => on(pictureId, (doc) => writeIntention(doc, text)),
  };
}

function sceneWriters({ setup }: Documents): SceneWriters {
  const on = (change: (doc: Y.Doc) => void) => {
    const doc = setup();
    if (doc) change(doc);
  };
  return {
    setCondition: (condition, holds) => on((doc) => setCondition(doc, condition, holds)),
    setAir: (pictureId, colour) => on((doc) => setAir(doc, pictureId, colour)),
    setUnreliable: (planeId, reason) => on((doc) => setUnreliable(doc, planeId, reason)),
  };
}

function critiqueWriters(documents: Documents): CritiqueWriters {
  const on = changing(documents);
  return {
    setFocus: (pictureId, point) => on(pictureId, (doc) => setFocus(doc, point)),
    setMeant: (pictureId, key, reason) => on(pictureId, (doc) => setMeant(doc, key, reason)),
    setAnswer: (pictureId, key, answer) => on(pictureId, (doc) => setAnswer(doc, key, answer)),
    changeCard: (pictureId, key, change) => on(pictureId, (doc) => changeCard(doc, key, change)),
    addCard(pictureId, card) {
      const key = `own-${uuidv4()}`;
      on(pictureId, (doc) => changeCard(doc, key, card));
      return key;
    },
    orderCards: (pictureId, orders) => on(pictureId, (doc) => orderCards(doc, orders)),
    clearCard: (pictureId, key) => on(pictureId, (doc) => clearCard(doc, key)),
  };
}
