'use client';
/**
 * The hand that draws a new outline: clicks, one freehand go, or the crosshair moved by keys.
 *
 * In the flow: gestures and keys -> [use-draft-hand] -> the draft in easel-state -> `finishDraft`.
 */
import { useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import type { Frame } from './frame.ts';
import { type Hand, type HandPoint, pixelsApart, reachPx } from './hand.ts';
import { closedRidge, insidePicture, simplified } from './outline-edit.ts';
import { outlineTrouble } from './outline-trouble.ts';

/** Freehand is kept within this many screen pixels. */
const TIDY_PX = 1.6;

/** Begins, feeds, ends and drops the outline that is being drawn. */
export function useDraft() {
  const { planeId } = useTools();
  const { planes, write } = useBoardLive();
  const { draft, setDraft, way, setSentence } = useEasel();
  const plane = planes.find(({ id }) => id === (draft?.planeId ?? planeId));

  const outlineOf = (drawn: OutlineDraft): Outline =>
    drawn.way === 'ridge' ? closedRidge(drawn.points, plane?.kind ?? 'land') : drawn.points;
  return {
    draft,
    plane,
    /** The draft on this picture with these points; begins one where there is none. */
    put(pictureId: string, points: FractionPoint[]): OutlineDraft | null {
      if (!plane) return null;
      const begun = draft?.pictureId === pictureId ? draft : { pictureId, planeId: plane.id, way };
      const next = { ...begun, points };
      setDraft(next);
      setSentence(null);
      return next;
    },
    takeBack() {
      if (!draft) return;
      const points = draft.points.slice(0, -1);
      setDraft(points.length > 0 ? { ...draft, points } : null);
    },
    giveUp() {
      setDraft(null);
      setSentence(null);
    },
    /** Stores the outline, or says why it cannot be one; the points then stay. */
    finish(drawn: OutlineDraft | null = draft) {
      if (!drawn || !plane) return;
      if (drawn.way === 'ridge' && drawn.points.length < 2) return setSentence(words.outline.short);
      const outline = outlineOf(drawn);
      const trouble = outlineTrouble(plane.name, outline);
      setSentence(trouble);
      if (trouble !== null) return setDraft(drawn);
      write.setOutline(drawn.pictureId, drawn.planeId, outline);
      setDraft(null);
    },
  };
}

export function useDraftHand(picture: PictureView, frame: Frame): Hand {
  const { planeId, tool } = useTools();
  const { may } = useBoardLive();
  const { setSentence } = useEasel();
  const { draft, plane, put, finish, takeBack, giveUp } = useDraft();
  const going = useRef<{ base: FractionPoint[]; line: FractionPoint[]; drawn: OutlineDraft | null }>({
    base: [],
    line: [],
    drawn: null,
  });
  const here = draft?.pictureId === picture.id ? draft : null;
  const allowed = picture.kind === 'reference' ? may.setup : may.painting(picture.id);
  const look: Hand = { cursor: 'grab', crosshair: false, keysHint: words.easel.lookKeys };
  if (tool !== 'outline') return look;
  if (!allowed) return { ...look, tap: () => setSentence(words.outline.onlyLook) };
  if (!planeId || !plane) return { ...look, tap: () => setSentence(words.outline.choose) };

  const points = here?.points ?? [];
  const first = points[0];
  const closes = (at: HandPoint) =>
    first !== undefined && points.length > 2 && pixelsApart(first, at.point, at.pixel) < reachPx(at.touch);
  const keys: Record<string, (point: FractionPoint) => void> = {
    ' ': (point) => put(picture.id, [...points, insidePicture(point)]),
    enter: () => finish(here),
    backspace: takeBack,
    escape: giveUp,
  };
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: words.outline.keys,
    tap(at, twice) {
      if (here && (twice || closes(at))) finish(here);
      else put(picture.id, [...points, insidePicture(at.point)]);
    },
    drag: {
      takes: () => true,
      start(at) {
        const line = [insidePicture(at.point)];
        going.current = { base: points, line, drawn: put(picture.id, [...points, ...line]) };
      },
      move(at) {
        const { base, line } = going.current;
        line.push(insidePicture(at.point));
        const tidy = simplified(line, TIDY_PX * at.pixel.x, frame.size.height / frame.size.width);
        going.current.drawn = put(picture.id, [...base, ...tidy]);
      },
      end() {
        const { drawn } = going.current;
        if (drawn && isWhole(drawn)) finish(drawn);
      },
      cancel() {
        put(picture.id, going.current.base);
      },
    },
    key(key, point) {
      const act = keys[key.toLowerCase()];
      act?.(point);
      return act !== undefined;
    },
  };
}

/** Whether a line drawn in one go needs nothing more: from side to side, or round and back to its start. */
export function isWhole({ way, points }: Pick<OutlineDraft, 'way' | 'points'>): boolean {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return false;
  if (way === 'ridge') return Math.abs(last[0] - first[0]) > 0.85;
  return points.length > 5 && Math.hypot(last[0] - first[0], last[1] - first[1]) < 0.03;
}
