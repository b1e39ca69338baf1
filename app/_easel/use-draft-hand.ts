'use client';
/**
 * The hand that draws a line: clicks that follow the edge, one freehand go, or the crosshair moved by keys.
 *
 * In the flow: gestures and keys -> [use-draft-hand] -> the draft in easel-state -> use-draft. While it hovers, the line to
 * the hand is shown; a finger shows it by dragging and sets it by lifting.
 */
import { useRef } from 'react';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import type { Frame } from './frame.ts';
import { type Hand, type HandPoint, pixelsApart, reachPx } from './hand.ts';
import { insidePicture, simplified } from './outline-edit.ts';
import { useDraft } from './use-draft.ts';
import { type Follow, useFollow } from './use-follow.ts';
import { useMayOutline } from './use-may-outline.ts';

/** Freehand is kept within this many screen pixels. */
const TIDY_PX = 1.6;

/** A line on its way: the draft before it, the line itself, the draft with it. */
interface Going {
  base: FractionPoint[];
  baseStops: FractionPoint[];
  line: FractionPoint[];
  drawn: OutlineDraft | null;
  /** A fingertip that looks for its next stop. */
  seeking: boolean;
}

type Drafting = ReturnType<typeof useDraft>;
type Drag = NonNullable<Hand['drag']>;

/** Whether a stop closes the line that it began with. */
function closes({ points }: OutlineDraft, at: HandPoint): boolean {
  const [first] = points;
  return (
    first !== undefined && points.length > 2 && pixelsApart(first, at.point, at.pixel) < reachPx(at.touch)
  );
}

/** The line with its first point at its end as well: one that splits may go all the way round. */
const closed = (draft: OutlineDraft): OutlineDraft =>
  draft.way === 'split' ? { ...draft, points: [...draft.points, ...draft.points.slice(0, 1)] } : draft;

interface Drawing {
  picture: PictureView;
  here: OutlineDraft | null;
  drafting: Drafting;
  follow: Follow;
}

/** Another stop: with the line that is shown to it, else straight at once and bent onto the edge a moment later. */
function setStop(
  { picture, here, drafting, follow }: Drawing,
  point: FractionPoint,
  straight: boolean,
): void {
  const [points, stops] = [here?.points ?? [], here?.stops ?? []];
  const [last, next] = [points.at(-1), insidePicture(point)];
  const shown = last && !straight ? follow.shown(last, next) : null;
  drafting.put(picture.id, [...points, ...(shown?.slice(1, -1) ?? []), next], [...stops, next]);
  if (last && !straight && !shown) void follow.bend(last, next);
  follow.hide();
}

/** Freehand with mouse and pen; a fingertip looks for its next stop while lines follow the edge. */
function useDraftDrag(drawing: Drawing, aspect: number): Drag {
  const { following } = useEasel();
  const going = useRef<Going>({ base: [], baseStops: [], line: [], drawn: null, seeking: false });
  const { picture, here, drafting, follow } = drawing;
  return {
    takes: () => true,
    start(at) {
      const line = [insidePicture(at.point)];
      const [base, baseStops] = [here?.points ?? [], here?.stops ?? []];
      const seeking = at.touch && following;
      const drawn = seeking ? null : drafting.put(picture.id, [...base, ...line], [...baseStops, ...line]);
      going.current = { base, baseStops, line, drawn, seeking };
    },
    move(at) {
      const { base, baseStops, line, seeking } = going.current;
      line.push(insidePicture(at.point));
      if (seeking) return follow.show(base.at(-1), insidePicture(at.point), at.straight, true);
      const tidy = simplified(line, TIDY_PX * at.pixel.x, aspect);
      going.current.drawn = drafting.put(picture.id, [...base, ...tidy], [...baseStops, ...tidy.slice(-1)]);
    },
    end() {
      const { base, drawn, line, seeking } = going.current;
      const lifted = line.at(-1);
      if (seeking && lifted) setStop(drawing, lifted, false);
      // A line across a plane that was drawn in one go is all there is to say.
      if (drawn && (isWhole(drawn) || (drawn.way === 'split' && base.length === 0))) drafting.finish(drawn);
    },
    cancel() {
      const { base, baseStops, seeking } = going.current;
      follow.hide();
      if (!seeking) drafting.put(picture.id, base, baseStops);
    },
  };
}

export function useDraftHand(picture: PictureView, frame: Frame): Hand {
  const { planeId, tool } = useTools();
  const { setSentence } = useEasel();
  const drafting = useDraft();
  const { draft, plane, finish, takeBack, giveUp } = drafting;
  const follow = useFollow(picture.id);
  const here = draft?.pictureId === picture.id ? draft : null;
  const drawing: Drawing = { picture, here, drafting, follow };
  const drag = useDraftDrag(drawing, frame.size.height / frame.size.width);
  const allowed = useMayOutline(picture);
  const look: Hand = { cursor: 'grab', crosshair: false, keysHint: words.easel.lookKeys };
  if (tool !== 'outline') return look;
  if (!allowed) return { ...look, tap: () => setSentence(words.outline.onlyLook) };
  if (!planeId || !plane) return { ...look, tap: () => setSentence(words.outline.choose) };

  const last = here?.points.at(-1);
  const keys: Record<string, (point: FractionPoint, shift: boolean) => void> = {
    ' ': (point, shift) => setStop(drawing, point, shift),
    enter: () => finish(here),
    backspace: takeBack,
    escape: giveUp,
  };
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: here?.way === 'split' ? words.outline.splitKeys : words.outline.keys,
    tap(at, twice) {
      if (here && closes(here, at)) finish(closed(here));
      else if (here && twice) finish(here);
      else setStop(drawing, at.point, at.straight);
    },
    hover(point, straight) {
      if (!point) follow.hide();
      else if (last) follow.show(last, insidePicture(point), straight, false);
    },
    drag,
    key(key, point, shift) {
      const act = keys[key.toLowerCase()];
      act?.(point, shift);
      return act !== undefined;
    },
  };
}

/** Whether a line drawn in one go needs nothing more: from side to side, or round and back to its start. */
export function isWhole({ way, points }: Pick<OutlineDraft, 'way' | 'points'>): boolean {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || way === 'split') return false;
  if (way === 'ridge') return Math.abs(last[0] - first[0]) > 0.85;
  return points.length > 5 && Math.hypot(last[0] - first[0], last[1] - first[1]) < 0.03;
}
