'use client';
/**
 * Wires a stage's pointers, wheel and keys to the view and to what the hand holds.
 *
 * In the flow: DOM events -> [use-stage-hands] -> gestures -> view-store, hand. IO: listens to one stage.
 */
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { Frame } from './frame.ts';
import { type At, Gestures, type GestureTarget } from './gestures.ts';
import type { Hand, HandPoint } from './hand.ts';
import type { Placed } from './use-placement.ts';
import { keyStep, middleOf, type ViewStore } from './view-store.ts';
import { panned, toFraction, WHOLE, zoomedAt } from './view-transform.ts';

const CROSSHAIR_PX = 14;
const CROSSHAIR_FINE_PX = 2;
const WHEEL_ZOOM = 0.0016;
const PINCH_WHEEL_ZOOM = 0.01;

interface Hands {
  views: ViewStore;
  placed: Placed;
  frame: Frame;
  handNow(): Hand;
  swipe(towards: 'left' | 'right'): void;
  /** The hand over the picture, for the others to see; null when it leaves. */
  seen(point: FractionPoint | null): void;
}

export function useStageHands(hands: Hands) {
  const now = useRef(hands);
  now.current = hands;
  const [gestures] = useState(() => new Gestures(targetOf(() => now.current)));
  const crosshair = useCrosshair(now);
  useWheel(now);

  const at = (event: PointerEvent<HTMLElement>): At => {
    const box = event.currentTarget.getBoundingClientRect();
    return {
      x: event.clientX - box.left,
      y: event.clientY - box.top,
      pressure: event.pointerType === 'pen' ? event.pressure : 0.5,
      touch: event.pointerType === 'touch',
      shift: event.shiftKey,
    };
  };
  return {
    crosshair: crosshair.place,
    onKeyDown: crosshair.onKeyDown,
    onBlur: crosshair.hide,
    onPointerDown(event: PointerEvent<HTMLElement>) {
      if (event.button > 1) return;
      crosshair.hide();
      event.currentTarget.setPointerCapture(event.pointerId);
      gestures.down(event.pointerId, at(event), event.button === 1);
    },
    onPointerMove(event: PointerEvent<HTMLElement>) {
      const place = at(event);
      const point = originalAt(now.current, place.x, place.y);
      now.current.seen(point);
      if (event.buttons === 0) now.current.handNow().hover?.(point, event.shiftKey);
      gestures.move(event.pointerId, place);
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) =>
      gestures.up(event.pointerId, at(event), event.timeStamp),
    onPointerCancel: (event: PointerEvent<HTMLElement>) => gestures.cancel(event.pointerId),
    onPointerLeave() {
      now.current.seen(null);
      now.current.handNow().hover?.(null, false);
    },
  };
}

function originalAt({ placed, frame }: Hands, x: number, y: number): FractionPoint {
  return frame.original(toFraction(placed.placement(), x, y));
}

function targetOf(now: () => Hands): GestureTarget {
  const point = ({ x, y, pressure, touch, shift = false }: At): HandPoint => {
    const { width, height } = now().placed.placement();
    const pixel = { x: 1 / width, y: 1 / height };
    return { point: originalAt(now(), x, y), pressure, touch, straight: shift, pixel };
  };
  const view = (step: (hands: Hands) => ReturnType<ViewStore['get']>) => now().views.set(step(now()));
  return {
    takesDrag: (start) => now().handNow().drag?.takes(point(start)) ?? false,
    tap: (at, twice) => now().handNow().tap?.(point(at), twice),
    dragStart: (at) => now().handNow().drag?.start(point(at)),
    dragMove: (at) => now().handNow().drag?.move(point(at)),
    dragEnd: () => now().handNow().drag?.end(),
    dragCancel: () => now().handNow().drag?.cancel(),
    pan: (dx, dy) =>
      view(({ views, placed, frame }) => panned(views.get(), placed.windowSize(), frame.size, dx, dy)),
    zoom: (factor, x, y) =>
      view(({ views, placed, frame }) =>
        zoomedAt(views.get(), placed.windowSize(), frame.size, { factor, x, y }),
      ),
    swipe: (towards) => {
      if (now().views.get().zoom <= 1) now().swipe(towards);
    },
  };
}

/** The wheel zooms where the hand is. Turned back at the whole picture, it scrolls the page as usual. */
function useWheel(now: { current: Hands }): void {
  useEffect(() => {
    const stage = now.current.placed.stage.current;
    if (!stage) return;
    const turn = (event: WheelEvent) => {
      const { views, placed, frame } = now.current;
      if (views.get().zoom <= 1 && event.deltaY > 0 && !event.ctrlKey) return;
      event.preventDefault();
      const box = stage.getBoundingClientRect();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      const factor = Math.exp(-event.deltaY * lines * (event.ctrlKey ? PINCH_WHEEL_ZOOM : WHEEL_ZOOM));
      const at = { factor, x: event.clientX - box.left, y: event.clientY - box.top };
      views.set(zoomedAt(views.get(), placed.windowSize(), frame.size, at));
    };
    stage.addEventListener('wheel', turn, { passive: false });
    return () => stage.removeEventListener('wheel', turn);
  }, [now]);
}

const ARROWS: Record<string, [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** A place on the picture that the arrow keys move, for tools that need one; else arrows move the picture. */
function useCrosshair(now: { current: Hands }) {
  const [place, setPlace] = useState<FractionPoint | null>(null);
  const moveBy = (key: string, px: number) => {
    const arrow = ARROWS[key];
    if (!arrow) return false;
    const { placed, views } = now.current;
    const { width, height } = placed.placement();
    const view = views.get();
    const [x, y] = place ?? [view.middleX, view.middleY];
    const held = (share: number) => Math.min(1, Math.max(0, share));
    const next: FractionPoint = [held(x + (arrow[0] * px) / width), held(y + (arrow[1] * px) / height)];
    setPlace(next);
    if (view.zoom > 1) views.set({ ...view, middleX: next[0], middleY: next[1] });
    const original = now.current.frame.original(next);
    now.current.seen(original);
    now.current.handNow().hover?.(original, false);
    return true;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return;
    const { frame, views } = now.current;
    const hand = now.current.handNow();
    const taken =
      hand.key?.(
        event.key,
        frame.original(place ?? [views.get().middleX, views.get().middleY]),
        event.shiftKey,
      ) ||
      (hand.crosshair && moveBy(event.key, event.shiftKey ? CROSSHAIR_FINE_PX : CROSSHAIR_PX)) ||
      moveView(now.current, event.key);
    if (taken) event.preventDefault();
  };
  return { place, onKeyDown, hide: () => setPlace(null) };
}

function moveView({ views, placed, frame }: Hands, key: string): boolean {
  const step = keyStep(key);
  if (step === null) return false;
  const window = placed.windowSize();
  if (step === 'whole') views.set(WHOLE);
  else if (step.factor !== 1) {
    views.set(zoomedAt(views.get(), window, frame.size, { factor: step.factor, ...middleOf(window) }));
  } else views.set(panned(views.get(), window, frame.size, step.dx, step.dy));
  return true;
}
