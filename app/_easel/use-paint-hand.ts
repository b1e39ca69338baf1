'use client';
/**
 * The hand that adds to a plane or takes away from it by painting over it: patches that hang together light up under it,
 * and the outlines of all planes concerned follow at once.
 *
 * In the flow: gestures and keys -> [use-paint-hand] -> outline worker -> moving outlines, live document. While it paints,
 * the chosen outline is held for the others; all of a stroke is one step.
 */
import { useEffect, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { outlineHold } from '#app/_live/presence.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import type { Edited } from '#server/core/planes/edit/regions.ts';
import { words } from '#words/easel.ts';
import { useEasel } from './easel-state.tsx';
import type { Hand } from './hand.ts';
import { Newest } from './newest.ts';
import type { Painted } from './outline-line.ts';
import { troubleOf } from './outline-trouble.ts';

/** Patches in a picture, about: larger ones where all of it is seen, smaller ones once it is looked at closely. */
const PATCHES = 1100;
const SMALL_PATCHES = 4400;
const CLOSE_ZOOM = 2.2;

interface Stroke {
  trail: FractionPoint[];
  wanted: number;
  planeId: string;
  asked: Asked | null;
}

/** What was asked of a stroke last, and the answer, which may be on its way. */
interface Asked {
  length: number;
  way: 'add' | 'away';
  plane: number;
  rings: readonly (Outline | null)[];
  answer: Promise<Painted>;
}

/** Whether an answer holds for the stroke and the outlines as they are now. */
function stillHolds(asked: Asked | null, now: Omit<Asked, 'answer'>): asked is Asked {
  if (!asked || asked.length !== now.length || asked.way !== now.way || asked.plane !== now.plane)
    return false;
  return asked.rings.length === now.rings.length && now.rings.every((ring, at) => ring === asked.rings[at]);
}

/** What a stroke comes to, as the outlines stand now. */
function useStrokes(picture: PictureView) {
  const { outlining } = useTools();
  const { planes, outlinesOf, write, heldBy } = useBoardLive();
  const { outlineLine, setSentence } = useEasel();
  const way: 'add' | 'away' = outlining === 'away' ? 'away' : 'add';
  const byPlane = ({ rings }: Edited): ReadonlyMap<string, Outline> =>
    new Map([...rings].flatMap(([at, ring]) => (planes[at] ? [[planes[at].id, [...ring]] as const] : [])));
  /** Why nothing can be stored, or null. */
  const troubleWith = ({ planeId }: Stroke, { edited }: Painted): string | null => {
    if ('trouble' in edited) {
      const own = planes.find(({ id }) => id === planeId)?.name ?? '';
      return words.outline.painting[edited.trouble](planes[edited.plane]?.name ?? '', own, way);
    }
    const concerned = [...edited.rings.keys()].map((at) => planes[at]?.id ?? '');
    const holder = concerned.map((id) => heldBy(outlineHold(picture.id, id))).find(Boolean);
    return holder ? words.outline.heldBy(holder) : null;
  };
  return {
    byPlane,
    way,
    /** The answer of the last look is the answer to the end of the stroke, unless something changed meanwhile. */
    ask(stroke: Stroke): Promise<Painted> {
      const { trail, planeId, wanted, asked } = stroke;
      const outlines = outlinesOf(picture.id);
      const rings = planes.map(({ id }) => outlines.get(id) ?? null);
      const plane = planes.findIndex(({ id }) => id === planeId);
      const now = { length: trail.length, way, plane, rings };
      if (stillHolds(asked, now)) return asked.answer;
      const answer = outlineLine.paint(picture.id, rings, { plane, way, trail: [...trail], wanted });
      stroke.asked = { ...now, answer };
      // What failed is asked again.
      answer.catch(() => {
        stroke.asked = null;
      });
      return answer;
    },
    /** Stores the outlines, or says why nothing came of it. */
    store(stroke: Stroke, answer: Painted | null): void {
      const trouble = answer ? troubleWith(stroke, answer) : words.outline.paintUnavailable;
      setSentence(trouble);
      if (trouble !== null || !answer || 'trouble' in answer.edited) return;
      const outlines = byPlane(answer.edited);
      setSentence(troubleOf(() => write.layOutlines(picture.id, outlines)));
    },
  };
}

export function usePaintHand(picture: PictureView): Hand {
  const strokes = useStrokes(picture);
  const { tool, outlining, setTool } = useTools();
  const { outlineLine, views } = useEasel();
  const paints = tool === 'outline' && (outlining === 'add' || outlining === 'away');
  useEffect(() => {
    // The patches are there by the time the hand is.
    if (paints) outlineLine.under(picture.id, PATCHES, []).catch(() => undefined);
  }, [paints, outlineLine, picture.id]);
  const wanted = () => (views.get().zoom >= CLOSE_ZOOM ? SMALL_PATCHES : PATCHES);
  const { begin, preview, end, cancel, painting, show, newest } = useStroke(picture, strokes, wanted);
  const once = (point: FractionPoint) => {
    if (begin(point)) end();
  };
  const hover = (point: FractionPoint | null) => {
    newest.forget();
    if (painting()) return;
    if (!point) return show([]);
    newest.run(async () => {
      const shape = await outlineLine.under(picture.id, wanted(), [point]);
      if (!painting()) show(shape);
    });
  };
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: words.outline.paintKeys[strokes.way],
    tap: (at) => once(at.point),
    hover,
    drag: {
      takes: () => true,
      start(at) {
        if (begin(at.point)) preview();
      },
      move(at) {
        painting()?.trail.push(at.point);
        preview();
      },
      end,
      cancel,
    },
    key(key, point) {
      if (key === ' ' || key === 'Enter') once(point);
      else if (key === 'Escape') setTool('look');
      else return false;
      return true;
    },
  };
}

/** One stroke from its beginning to what is kept of it. */
function useStroke(picture: PictureView, strokes: ReturnType<typeof useStrokes>, wanted: () => number) {
  const { planeId } = useTools();
  const { heldBy, hold, whenFree } = useBoardLive();
  const { ahead, setMoving, setSentence } = useEasel();
  const newest = useRef(new Newest());
  const stroke = useRef<Stroke | null>(null);
  const show = (shape: readonly Outline[]) =>
    ahead.set({ pictureId: picture.id, line: null, shape, away: strokes.way === 'away', finger: null });
  const clear = () => {
    // By then the hand may be painting again.
    if (stroke.current) return;
    newest.current.forget();
    ahead.set(null);
    setMoving(null);
    hold(null);
  };
  return {
    show,
    newest: newest.current,
    painting: () => stroke.current,
    begin(point: FractionPoint): boolean {
      if (!planeId) return false;
      const what = outlineHold(picture.id, planeId);
      const holder = heldBy(what);
      setSentence(holder ? words.outline.heldBy(holder) : null);
      if (holder) return false;
      hold(what);
      stroke.current = { trail: [point], wanted: wanted(), planeId, asked: null };
      return true;
    },
    preview() {
      const painted = stroke.current;
      if (!painted) return;
      newest.current.run(async () => {
        const { shape, edited } = await strokes.ask(painted);
        if (stroke.current !== painted) return;
        show(shape);
        const outlines = 'rings' in edited ? strokes.byPlane(edited) : null;
        setMoving(outlines && { pictureId: picture.id, outlines });
      });
    },
    end() {
      const painted = stroke.current;
      stroke.current = null;
      newest.current.forget();
      if (!painted) return;
      whenFree(outlineHold(picture.id, painted.planeId), async () => {
        const answer = await strokes.ask(painted).catch(() => null);
        clear();
        strokes.store(painted, answer);
      });
    },
    cancel() {
      stroke.current = null;
      clear();
    },
  };
}
