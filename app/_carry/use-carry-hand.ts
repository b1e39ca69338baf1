'use client';
/**
 * The hand that places what is carried: drags all of it or one plane, pulls corners, and the same by keys.
 *
 * In the flow: gestures, keys -> [use-carry-hand] -> carry-desk. While the hand moves nothing is fitted.
 */
import { useRef } from 'react';
import { type Hand, type HandPoint, pixelsApart, reachPx } from '#app/_easel/hand.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';
import { carryWords as words } from '#words/carry.ts';
import { useCarryDesk } from './carry-desk.tsx';
import type { CarryDesk } from './carry-desk-types.ts';
import {
  allChanged,
  boundsOf,
  boundsOfAll,
  type Change,
  cornerPulled,
  cornersOf,
  type Laid,
  planeChanged,
  shiftedBy,
  sizedBy,
} from './placing.ts';

/** One press of an arrow key, in widths of the painting, and with Shift; one press of a bracket. */
const NUDGE = 0.002;
const NUDGE_FAR = 0.02;
const SIZE = 1.01;
const ARROWS: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const MIDDLE: FractionPoint = [0.5, 0.5];

/** The corners of what the hand would move, in 0..1 of the squared painting. */
export function handlesOf({ laid, carried, inHand }: CarryDesk): FractionPoint[] {
  if (!laid) return [];
  if (inHand === null) return cornersOf(boundsOfAll(laid.placement));
  const outline = carried?.planes.find(({ id }) => id === inHand)?.outline;
  const bounds = outline && boundsOf(outline);
  return bounds ? cornersOf(bounds) : [];
}

/** Where a plane is sized about. */
function middleOf({ carried, inHand }: CarryDesk): FractionPoint {
  const outline = carried?.planes.find(({ id }) => id === inHand)?.outline;
  const bounds = outline && boundsOf(outline);
  return bounds ? [(bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2] : MIDDLE;
}

function changed(laid: Laid, planeId: string | null, about: FractionPoint, change: Change): Laid {
  return planeId === null ? allChanged(laid, change) : planeChanged(laid, planeId, about, change);
}

/** The change that a key makes; null when it makes none. */
function changeOf(key: string, far: boolean, about: FractionPoint): Change | null {
  const arrow = ARROWS[key];
  const step = far ? NUDGE_FAR : NUDGE;
  if (arrow) return shiftedBy(arrow[0] * step, arrow[1] * step);
  if (key === ']') return sizedBy(SIZE, about);
  return key === '[' ? sizedBy(1 / SIZE, about) : null;
}

/** What a key does to what is carried. @returns Whether it was taken. */
export function useCarryKeys(): (key: string, far: boolean) => boolean {
  const desk = useCarryDesk();
  const acts: Record<string, () => void> = { Escape: desk.leave, Enter: desk.accept };
  return (key, far) => {
    const { laid, inHand, placing } = desk;
    if (!placing) return false;
    const act = acts[key];
    const about = inHand === null ? MIDDLE : middleOf(desk);
    const change = act ? null : changeOf(key, far, about);
    act?.();
    if (change && laid) desk.lay(changed(laid, inHand, about, change), false);
    return act !== undefined || (change !== null && laid !== null);
  };
}

interface Pull {
  laid: Laid;
  from: FractionPoint;
  /** Which corner is pulled; −1 = everything is shifted. */
  corner: number;
  corners: readonly FractionPoint[];
  about: FractionPoint;
}

/** Corner under the hand, or −1. */
function cornerUnder(corners: readonly FractionPoint[], point: FractionPoint, at: HandPoint): number {
  const away = corners.map((corner) => pixelsApart(corner, point, at.pixel));
  const nearest = away.indexOf(Math.min(...away));
  return (away[nearest] ?? Number.POSITIVE_INFINITY) <= reachPx(at.touch) ? nearest : -1;
}

export function useCarryHand(picture: PictureView): Hand {
  const desk = useCarryDesk();
  const press = useCarryKeys();
  const pull = useRef<Pull | null>(null);
  const { wish, laid, inHand, carried } = desk;
  const mine = desk.placing && wish?.toId === picture.id;
  const still: Hand = { cursor: 'default', crosshair: false, keysHint: mine ? words.keys : '' };
  if (!mine || !wish) return still;
  const laidAt = ({ laid: before, from, corner, corners, about }: Pull, to: FractionPoint): Laid => {
    if (corner < 0) return changed(before, inHand, about, shiftedBy(to[0] - from[0], to[1] - from[1]));
    const change = cornerPulled(corners, corner, to, inHand !== null);
    return change ? changed(before, inHand, about, change) : before;
  };
  return {
    ...still,
    cursor: 'move',
    key: (key, _crosshair, shift) => press(key, shift),
    tap({ point }) {
      const places = planePlaces(
        (carried?.planes ?? []).map(({ id, outline }) => ({ planeId: id, outline: [...outline] })),
      );
      const under = places.planeAt(wish.onPainting(point));
      desk.take(under === inHand ? null : under);
    },
    drag: {
      takes: () => laid !== null,
      start(at) {
        if (!laid) return;
        const point = wish.onPainting(at.point);
        const corners = handlesOf(desk);
        const corner = cornerUnder(corners, point, at);
        pull.current = { laid, from: point, corner, corners, about: middleOf(desk) };
      },
      move(at) {
        if (pull.current) desk.lay(laidAt(pull.current, wish.onPainting(at.point)), true);
      },
      end() {
        pull.current = null;
        if (laid) desk.lay(laid, false);
      },
      cancel() {
        if (pull.current) desk.lay(pull.current.laid, false);
        pull.current = null;
      },
    },
  };
}
