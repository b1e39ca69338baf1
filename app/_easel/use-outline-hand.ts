'use client';
/**
 * The hand with the outline tool: draws a new outline point by point or in one go, or pulls at one that is there.
 *
 * In the flow: gestures and keys -> [use-outline-hand] -> outline-edit -> live document. While an outline is
 * pulled, it is held for the others and worked on as a copy; it is stored whole when let go.
 */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { outlineHold } from '#app/_live/presence.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import { useEasel } from './easel-state.tsx';
import type { Frame } from './frame.ts';
import { type Hand, type HandPoint, pixelsApart, reachPx } from './hand.ts';
import { movedOutline, nearestEdge, withPointMoved, withPointNear } from './outline-edit.ts';
import { outlineTrouble } from './outline-trouble.ts';
import { reapplied } from './reapplied.ts';
import { type Pulled, useBentAlong } from './use-bent-along.ts';
import { useDraftHand } from './use-draft-hand.ts';
import { useHeldDrag } from './use-held-drag.ts';
import { useMayOutline } from './use-may-outline.ts';
import { usePaintHand } from './use-paint-hand.ts';

export interface OutlineHand {
  hand: Hand;
  pulled: (Pulled & { hand: FractionPoint; touch: boolean }) | null;
  /** Index of the chosen point of the outline in hand. */
  chosenPoint: number;
  choosePoint(at: number): void;
  /** Stores an outline that was changed by key. */
  keep(planeId: string, before: Outline, outline: Outline): void;
}

/** @param badge Where the chosen plane's number stands, 0..1 of the original: pulled, it moves the whole outline. */
export function useOutlineHand(picture: PictureView, frame: Frame, badge: FractionPoint | null): OutlineHand {
  const { planeId, outlining } = useTools();
  const { outlinesOf, planes, write, heldBy } = useBoardLive();
  const { draft, setSentence, setMoving } = useEasel();
  const [chosenPoint, choosePoint] = useState(0);
  const drafting = useDraftHand(picture, frame);
  const painting = usePaintHand(picture);
  const outline = planeId ? outlinesOf(picture.id).get(planeId) : undefined;
  const planeName = planes.find(({ id }) => id === planeId)?.name ?? '';
  const what = outlineHold(picture.id, planeId ?? '');
  const allowed = useMayOutline(picture);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another plane or picture starts at its first point.
  useEffect(() => choosePoint(0), [planeId, picture.id]);

  const keep = (id: string, before: Outline, mine: Outline) => {
    const next = reapplied(before, mine, outlinesOf(picture.id).get(id) ?? before);
    const trouble = outlineTrouble(planeName, next);
    setSentence(trouble);
    if (trouble === null) write.setOutline(picture.id, id, next);
  };
  const bentAlong = useBentAlong(picture, planeName);
  const { held, drag } = useHeldDrag<Pulled>({
    what,
    heldSentence: words.outline.heldBy,
    takes: (at) => outline !== undefined && (onBadge(badge, at) || nearestPoint(outline, at) !== null),
    begin(at) {
      if (!planeId || !outline) return null;
      const near = nearestPoint(outline, at);
      if (near !== null) choosePoint(near);
      return { planeId, before: outline, now: outline, at: near, straight: at.straight };
    },
    moved(pulled, from, to) {
      const [dx, dy] = [to.point[0] - from.point[0], to.point[1] - from.point[1]];
      const { at } = pulled;
      const now = at === null ? movedOutline(pulled.now, dx, dy) : withPointMoved(pulled.now, at, dx, dy);
      setSentence(outlineTrouble(planeName, now));
      return { ...pulled, now, straight: to.straight };
    },
    async keep(pulled) {
      const next = await bentAlong(pulled);
      keep(pulled.planeId, pulled.before, next);
    },
  });
  const copy = held?.copy;
  useEffect(() => {
    if (!copy) return;
    setMoving({ pictureId: picture.id, outlines: new Map([[copy.planeId, copy.now]]) });
    return () => setMoving(null);
  }, [copy, picture.id, setMoving]);
  const other = { pulled: null, chosenPoint, choosePoint, keep };
  if (draft?.pictureId === picture.id || !planeId || !allowed) return { hand: drafting, ...other };
  if (outlining === 'add' || (outlining === 'away' && outline)) return { hand: painting, ...other };
  if (!outline || outlining === 'split') return { hand: drafting, ...other };
  const tap = (at: HandPoint, twice: boolean) => {
    const holder = heldBy(what);
    if (holder) return setSentence(words.outline.heldBy(holder));
    const near = nearestPoint(outline, at);
    if (near !== null) return choosePoint(near);
    const aspect = frame.size.height / frame.size.width;
    if (!twice || nearestEdge(outline, at.point, aspect).distance > reachPx(at.touch) * at.pixel.x) return;
    const more = withPointNear(outline, at.point, aspect);
    keep(planeId, outline, more.outline);
    choosePoint(more.at);
  };
  const hand: Hand = { cursor: 'default', crosshair: false, keysHint: words.easel.lookKeys, tap, drag };
  const pulled = held && { ...held.copy, hand: held.hand.point, touch: held.hand.touch };
  return { hand, pulled, chosenPoint, choosePoint, keep };
}

function onBadge(badge: FractionPoint | null, at: HandPoint): boolean {
  return badge !== null && pixelsApart(badge, at.point, at.pixel) < reachPx(at.touch) + 4;
}

/** The point of the outline under the hand, or null. */
function nearestPoint(outline: Outline, at: HandPoint): number | null {
  let [best, bestPx]: [number | null, number] = [null, reachPx(at.touch)];
  outline.forEach((point, index) => {
    const px = pixelsApart(point, at.point, at.pixel);
    if (px <= bestPx) [best, bestPx] = [index, px];
  });
  return best;
}
