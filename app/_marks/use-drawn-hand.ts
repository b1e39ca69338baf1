'use client';
/**
 * The hand that draws a mark: a line, an arrow, a loop or a stroke of a sketch; in one go, point by point, or by keys.
 *
 * In the flow: gestures and keys -> [use-drawn-hand] -> growing-store, then a mark in the marks room.
 */
import { useEasel } from '#app/_easel/easel-state.tsx';
import { type Hand, type HandPoint, pixelsApart, reachPx } from '#app/_easel/hand.ts';
import { insidePicture } from '#app/_easel/outline-edit.ts';
import { type StrokePoint, thinned } from '#app/_easel/stroke-points.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { MARK_POINTS } from '#server/core/live/mark-kinds.ts';
import type { Mark } from '#server/core/live/marks.ts';
import { markWords as words } from '#words/marks.ts';
import type { Growing } from './growing-store.ts';
import { useMarkDesk } from './mark-desk.tsx';

type Drawn = Growing['kind'];

interface DrawnHand {
  pictureId: string;
  kind: Drawn;
  /** Why this person may not draw this here, or null. */
  refusal: string | null;
  keep(points: StrokePoint[]): void;
}

/** The line that grows, and what the hand does to it. */
interface Line {
  /** The points so far; none while nothing grows. */
  points(): Mark['points'];
  put(points: Mark['points'], drawn: boolean): void;
  finish(): void;
  giveUp(): void;
  hover(point: FractionPoint | null): void;
}

function useLine({ pictureId, kind, keep }: DrawnHand): Line {
  const { growing, paint } = useMarkDesk();
  const { setSentence } = useEasel();
  const now = () => {
    const last = growing.get();
    return last?.pictureId === pictureId && last.kind === kind ? last : null;
  };
  const points = () => now()?.points ?? [];
  const giveUp = () => growing.set(null);
  const finish = () => {
    const made = kind === 'arrow' ? points() : thinned(points());
    giveUp();
    if (made.length === 0) return;
    if (made.length < MARK_POINTS[kind][0]) return setSentence(words.tooShort);
    setSentence(null);
    keep(made);
  };
  const put: Line['put'] = (next, drawn) => {
    const back = () => put(points().slice(0, -1), false);
    const ofSketch = kind === 'sketch' ? paint : null;
    const shown = {
      pictureId,
      kind,
      points: next,
      ahead: null,
      drawn,
      paint: ofSketch,
      finish,
      back,
      giveUp,
    };
    growing.set(next.length === 0 ? null : shown);
  };
  const hover: Line['hover'] = (point) => {
    const last = now();
    if (last) growing.set({ ...last, ahead: point && insidePicture(point) });
  };
  return { points, put, finish, giveUp, hover };
}

export function useDrawnHand(use: DrawnHand): Hand {
  const { kind, refusal } = use;
  const { setSentence } = useEasel();
  const { points, put, finish, giveUp, hover } = useLine(use);
  if (refusal !== null) return { ...REFUSED, keysHint: refusal, tap: () => setSentence(refusal) };
  /** A point is set. An arrow is done with its second. */
  const add = (point: StrokePoint) => {
    put([...points(), point], false);
    if (kind === 'arrow' && points().length >= 2) finish();
  };
  const closes = (at: HandPoint) => {
    const [first] = points();
    if (kind !== 'outline' || !first || points().length < 3) return false;
    return pixelsApart([first[0], first[1]], at.point, at.pixel) < reachPx(at.touch);
  };
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: words.keysOf[kind],
    tap(at, twice) {
      if ((twice && kind !== 'arrow') || closes(at)) finish();
      else add(pointOf(at));
    },
    drag: {
      takes: () => true,
      start: (at) => put([...points(), pointOf(at)], true),
      move: (at) => put([...(kind === 'arrow' ? points().slice(0, 1) : points()), pointOf(at)], true),
      end: finish,
      cancel: giveUp,
    },
    hover,
    key(key, point) {
      if (key === ' ' || (key === 'Enter' && kind === 'arrow')) add(insidePicture(point));
      else if (points().length === 0) return false;
      else if (key === 'Enter') finish();
      else if (key === 'Escape') giveUp();
      else if (key === 'Backspace') put(points().slice(0, -1), false);
      else return false;
      return true;
    },
  };
}

const REFUSED: Pick<Hand, 'cursor' | 'crosshair'> = { cursor: 'default', crosshair: false };

/** With the pen's pressure, where there is any. */
function pointOf({ point, pressure }: { point: FractionPoint; pressure: number }): StrokePoint {
  const [x, y] = insidePicture(point);
  return pressure === 0.5 ? [x, y] : [x, y, Math.min(1, Math.max(0, pressure))];
}
