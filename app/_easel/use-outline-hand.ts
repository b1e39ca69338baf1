'use client';
/**
 * The hand with the outline tool: draws a new outline point by point or in one go, or pulls at one that is there.
 *
 * In the flow: gestures and keys -> [use-outline-hand] -> outline-edit -> live document. While an outline is
 * pulled, it is held for the others and worked on as a copy; it is stored whole when let go.
 */
import { useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { outlineHold } from '#app/_live/presence.ts';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { useEasel } from './easel-state.tsx';
import type { Frame } from './frame.ts';
import { type Hand, pixelsApart, reachPx } from './hand.ts';
import { movedOutline, nearestEdge, reapplied, withPointMoved, withPointNear } from './outline-edit.ts';
import { outlineTrouble } from './outline-trouble.ts';
import { useDraftHand } from './use-draft-hand.ts';

/** An outline under the hand, not stored yet. */
export interface Pulled {
  planeId: string;
  before: Outline;
  now: Outline;
  /** The pulled point, or null when the whole outline moves. */
  at: number | null;
  /** Where the hand is, for the loupe. */
  hand: FractionPoint;
  touch: boolean;
}

export interface OutlineHand {
  hand: Hand;
  pulled: Pulled | null;
  /** Index of the chosen point of the outline in hand. */
  chosenPoint: number;
  choosePoint(at: number): void;
  /** Stores an outline that was changed by key. */
  keep(planeId: string, before: Outline, outline: Outline): void;
}

export function useOutlineHand(picture: PictureView, frame: Frame, badge: FractionPoint | null): OutlineHand {
  const { planeId } = useTools();
  const { outlinesOf, planes, hold, heldBy, whenFree, write } = useBoardLive();
  const { draft, setSentence } = useEasel();
  const [pulled, setPulled] = useState<Pulled | null>(null);
  const [chosenPoint, choosePoint] = useState(0);
  const pulledNow = useRef<Pulled | null>(null);
  const drafting = useDraftHand(picture, frame);
  const outline = planeId ? outlinesOf(picture.id).get(planeId) : undefined;
  const planeName = planes.find(({ id }) => id === planeId)?.name ?? '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: another plane or picture starts at its first point.
  useEffect(() => choosePoint(0), [planeId, picture.id]);

  const pull = (next: Pulled | null) => {
    pulledNow.current = next;
    setPulled(next);
    if (next) setSentence(outlineTrouble(planeName, next.now));
  };
  const keep = (id: string, before: Outline, mine: Outline) => {
    const stored = outlinesOf(picture.id).get(id) ?? before;
    const next = reapplied(before, mine, stored);
    const trouble = outlineTrouble(planeName, next);
    setSentence(trouble);
    if (trouble === null) write.setOutline(picture.id, id, next);
  };
  const keepNow = useRef(keep);
  keepNow.current = keep;
  if (draft?.pictureId === picture.id || !planeId || !outline) {
    return { hand: drafting, pulled: null, chosenPoint, choosePoint, keep };
  }
  const holder = heldBy(outlineHold(picture.id, planeId));
  const nearest = (at: Parameters<NonNullable<Hand['tap']>>[0]) => nearestPoint(outline, at);
  const hand: Hand = {
    cursor: 'default',
    crosshair: false,
    keysHint: words.easel.lookKeys,
    tap(at, twice) {
      if (holder) return setSentence(words.outline.heldBy(holder));
      const near = nearest(at);
      if (near !== null) return choosePoint(near);
      const aspect = frame.size.height / frame.size.width;
      if (!twice || nearestEdge(outline, at.point, aspect).distance > reachPx(at.touch) * at.pixel.x) return;
      const more = withPointNear(outline, at.point, aspect);
      keep(planeId, outline, more.outline);
      choosePoint(more.at);
    },
    drag: {
      takes(at) {
        const onBadge = badge !== null && pixelsApart(badge, at.point, at.pixel) < reachPx(at.touch) + 4;
        return onBadge || nearest(at) !== null;
      },
      start(at) {
        if (holder) return setSentence(words.outline.heldBy(holder));
        const near = nearest(at);
        if (near !== null) choosePoint(near);
        hold(outlineHold(picture.id, planeId));
        pull({ planeId, before: outline, now: outline, at: near, hand: at.point, touch: at.touch });
      },
      move(at) {
        const last = pulledNow.current;
        if (!last) return;
        const [dx, dy] = [at.point[0] - last.hand[0], at.point[1] - last.hand[1]];
        const now =
          last.at === null ? movedOutline(last.now, dx, dy) : withPointMoved(last.now, last.at, dx, dy);
        pull({ ...last, now, hand: at.point });
      },
      end() {
        const last = pulledNow.current;
        if (!last) return;
        pulledNow.current = null;
        whenFree(outlineHold(picture.id, last.planeId), () => {
          keepNow.current(last.planeId, last.before, last.now);
          setPulled(null);
          hold(null);
        });
      },
      cancel() {
        pull(null);
        hold(null);
      },
    },
  };
  return { hand, pulled, chosenPoint, choosePoint, keep };
}

/** The point of the outline under the hand, or null. */
function nearestPoint(outline: Outline, at: Parameters<NonNullable<Hand['tap']>>[0]): number | null {
  let best: { at: number; px: number } | null = null;
  outline.forEach((point, index) => {
    const px = pixelsApart(point, at.point, at.pixel);
    if (px <= reachPx(at.touch) && (!best || px < best.px)) best = { at: index, px };
  });
  return (best as { at: number; px: number } | null)?.at ?? null; // assigned inside the loop, which types do not see
}
