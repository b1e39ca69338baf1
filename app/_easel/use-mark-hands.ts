'use client';
/**
 * The hands that mark a picture: one sets pins, one draws lines.
 *
 * In the flow: gestures and keys -> [use-mark-hands] -> a pin waiting for its words, or a stroke in the marks room.
 */
import { useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { useEasel } from './easel-state.tsx';
import type { Hand, HandPoint } from './hand.ts';
import { insidePicture } from './outline-edit.ts';
import { type StrokePoint, thinned } from './stroke-points.ts';

export function useLookHand(): Hand {
  return { cursor: 'grab', crosshair: false, keysHint: words.easel.lookKeys };
}

export function usePinHand(picture: PictureView): Hand {
  const { may } = useBoardLive();
  const { setPin, setSentence } = useEasel();
  const { setMarkId } = useTools();
  const set = (point: FractionPoint) => {
    if (!may.mark) return setSentence(words.mark.onlyLook);
    setMarkId(null);
    setPin({ pictureId: picture.id, point: insidePicture(point) });
  };
  return {
    cursor: may.mark ? 'crosshair' : 'default',
    crosshair: true,
    keysHint: words.mark.pinKeys,
    tap: (at) => set(at.point),
    key(key, point) {
      if (key !== ' ' && key !== 'Enter') return false;
      set(point);
      return true;
    },
  };
}

/** The hand that draws; `growing` is the line under it, 0..1 of the upright original. */
export function useDrawHand(picture: PictureView): { hand: Hand; growing: readonly StrokePoint[] } {
  const { may, write } = useBoardLive();
  const { setSentence } = useEasel();
  const { setMarkId } = useTools();
  const line = useRef<StrokePoint[]>([]);
  const [growing, setGrowing] = useState<readonly StrokePoint[]>([]);
  const grow = (point: StrokePoint) => {
    line.current = [...line.current, point];
    setGrowing(line.current);
  };
  const clear = () => {
    line.current = [];
    setGrowing([]);
  };
  const keep = () => {
    const points = thinned(line.current);
    clear();
    if (points.length >= 2) setMarkId(write.addStroke({ pictureId: picture.id, points, text: '' }));
  };
  const pointOf = ({ point, pressure }: HandPoint): StrokePoint => {
    const [x, y] = insidePicture(point);
    return pressure === 0.5 ? [x, y] : [x, y, pressure];
  };
  const refuse = () => setSentence(words.mark.onlyLook);
  const hand: Hand = {
    cursor: may.mark ? 'crosshair' : 'default',
    crosshair: true,
    keysHint: words.mark.drawKeys,
    ...(may.mark
      ? {
          drag: {
            takes: () => true,
            start: (at) => grow(pointOf(at)),
            move: (at) => grow(pointOf(at)),
            end: keep,
            cancel: clear,
          },
        }
      : { tap: refuse }),
    key(key, point) {
      if (!may.mark) return false;
      if (key === ' ') grow(insidePicture(point));
      else if (key === 'Enter' && line.current.length > 0) keep();
      else if (key === 'Escape' && line.current.length > 0) clear();
      else return false;
      return true;
    },
  };
  return { hand, growing };
}
