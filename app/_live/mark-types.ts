/**
 * Marks as the screen has them, and what can be written about them.
 *
 * In the flow: marks document -> mark-reader -> [these] -> pictures and talk. Coordinates are 0..1 of the upright
 * original. Types only.
 */
import type { MarkKind, MarkPaint, MarkPatch, MarkState } from '#server/core/live/layout.ts';
import type { Sight } from '#server/core/live/mark-sight.ts';
import type { Mark } from '#server/core/live/marks.ts';

export interface MarkView extends Mark {
  /** Running number on its picture, 1 = the oldest; null for replies and for the later strokes of a sketch. */
  number: number | null;
  /** Name of the author, from the people of the board. */
  authorName: string;
  /** True when this person may change or delete it. */
  mine: boolean;
  /** Hidden by the painter, or kept for its author alone; what is not for this person never gets here. */
  sight: Exclude<Sight, 'away'>;
}

/** Somebody who nods at a remark. */
export interface Nod {
  id: string;
  name: string;
}

export interface NewMark {
  pictureId: string;
  kind: Exclude<MarkKind, 'reply'>;
  points: Mark['points'];
  text: string;
  /** The plane it stands on, or null. */
  planeId: string | null;
  /** Of a sketch. */
  paint?: MarkPaint;
  /** Of a sketch: the first stroke of the layer it belongs to; left out = the first of a new one. */
  layerId?: string | null;
  /** Of a sample of colour. */
  patch?: MarkPatch;
}

export interface MarkWriters {
  /** @returns Its id. @throws Problem `live-malformed`. */
  addMark(mark: NewMark): string;
  addReply(parent: Pick<Mark, 'id' | 'pictureId'>, text: string): string;
  rewriteMark(markId: string, text: string): void;
  setMarkPlane(markId: string, planeId: string | null): void;
  deleteMark(markId: string): void;
  /** This person's own nod. */
  setNod(markId: string, nods: boolean): void;
}

/** What the painter of a picture, a teacher and the host say of the remarks on it. */
export interface RemarkWriters {
  setHidden(pictureId: string, markId: string, hidden: boolean): void;
  setMarkState(pictureId: string, markId: string, state: MarkState): void;
  /** The painter alone: whether others may sketch over this painting. */
  setAllowsSketch(pictureId: string, allowed: boolean): void;
}
