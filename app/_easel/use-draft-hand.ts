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
import { useFollow, withoutLastStop } from './use-follow.ts';

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
    /** The draft on this picture with these points; begins one where there is none. @param stops Set by the hand. */
    put(pictureId: string, points: FractionPoint[], stops: FractionPoint[]): OutlineDraft | null {
      if (!plane) return null;
      const begun = draft?.pictureId === pictureId ? draft : { pictureId, planeId: plane.id, way };
      const next = { ...begun, points, stops };
      setDraft(next);
      setSentence(null);
      return next;
    },
    takeBack() {
      if (draft) setDraft(withoutLastStop(draft));
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

/** A freehand line on its way: the draft before it, the line itself, the draft with it. */
interface Going {
  base: FractionPoint[];
  baseStops: FractionPoint[];
  line: FractionPoint[];
  drawn: OutlineDraft | null;
}

export function useDraftHand(picture: PictureView, frame: Frame): Hand {
  const { planeId, tool } = useTools();
  const { may } = useBoardLive();
  const { setSentence } = useEasel();
  const { draft, plane, put, finish, takeBack, giveUp } = useDraft();
  const aspect = frame.size.height / frame.size.width;
  const follow = useFollow(picture.id, aspect);
  const going = useRef<Going>({ base: [], baseStops: [], line: [], drawn: null });
  const here = draft?.pictureId === picture.id ? draft : null;
  const allowed = picture.kind === 'reference' ? may.setup : may.painting(picture.id);
  const look: Hand = { cursor: 'grab', crosshair: false, keysHint: words.easel.lookKeys };
  if (tool !== 'outline') return look;
  if (!allowed) return { ...look, tap: () => setSentence(words.outline.onlyLook) };
  if (!planeId || !plane) return { ...look, tap: () => setSentence(words.outline.choose) };

  const points = here?.points ?? [];
  const stops = here?.stops ?? [];
  const first = points[0];
  const closes = (at: HandPoint) =>
    first !== undefined && points.length > 2 && pixelsApart(first, at.point, at.pixel) < reachPx(at.touch);
  /** Another click: a straight stretch at once, which then bends onto the ridge. */
  const set = (point: FractionPoint, straight = false) => {
    const [last, next] = [points.at(-1), insidePicture(point)];
    put(picture.id, [...points, next], [...stops, next]);
    if (last && !straight) void follow(last, next);
  };
  const keys: Record<string, (point: FractionPoint) => void> = {
    ' ': (point) => set(point),
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
      else set(at.point, at.straight);
    },
    drag: {
      takes: () => true,
      start(at) {
        const line = [insidePicture(at.point)];
        const drawn = put(picture.id, [...points, ...line], [...stops, ...line]);
        going.current = { base: points, baseStops: stops, line, drawn };
      },
      move(at) {
        const { base, baseStops, line } = going.current;
        line.push(insidePicture(at.point));
        const tidy = simplified(line, TIDY_PX * at.pixel.x, aspect);
        going.current.drawn = put(picture.id, [...base, ...tidy], [...baseStops, ...tidy.slice(-1)]);
      },
      end() {
        const { drawn } = going.current;
        if (drawn && isWhole(drawn)) finish(drawn);
      },
      cancel() {
        put(picture.id, going.current.base, going.current.baseStops);
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
