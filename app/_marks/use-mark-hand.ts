'use client';
/**
 * The hand that marks a picture, as the chosen kind of mark wants it.
 *
 * In the flow: gestures and keys -> [use-mark-hand] -> a place waiting for its words, or a mark in the marks room.
 */
import { useEasel } from '#app/_easel/easel-state.tsx';
import type { Hand } from '#app/_easel/hand.ts';
import { insidePicture } from '#app/_easel/outline-edit.ts';
import type { StrokePoint } from '#app/_easel/stroke-points.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { NewMark } from '#app/_live/mark-types.ts';
import { useTrust } from '#app/_look/use-trust.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { markPlace } from '#server/core/live/mark-place.ts';
import { markWords as words } from '#words/marks.ts';
import { type HandKind, useMarkDesk } from './mark-desk.tsx';
import { useDrawnHand } from './use-drawn-hand.ts';
import { usePlaneAt } from './use-plane-at.ts';
import { useSample } from './use-sample.ts';
import { useSketchRefusal } from './use-sketch-refusal.ts';

/** Puts a mark with the plane under it onto the board. @returns Its id. */
function useAdd(pictureId: string) {
  const { write } = useBoardLive();
  const planeAt = usePlaneAt();
  return (mark: Omit<NewMark, 'pictureId' | 'planeId' | 'text'>) => {
    const place = markPlace(mark.kind, mark.points);
    return write.addMark({ ...mark, pictureId, text: '', planeId: place && planeAt(pictureId, place) });
  };
}

export function useMarkHand(picture: PictureView): Hand {
  const { may } = useBoardLive();
  const { kind, taking } = useMarkDesk();
  const placed = usePlacedHand(picture.id, kind);
  const sample = useSampleHand(picture.id);
  const pick = usePickHand(picture.id);
  const drawn = useDrawing(picture, kind);
  if (taking) return pick;
  if (kind === 'pin' || kind === 'text') return placed;
  if (kind === 'patch') return may.mark ? sample : placed;
  return drawn;
}

/** Sets a place, and the bar asks for its words. */
function usePlacedHand(pictureId: string, kind: HandKind): Hand {
  const { may } = useBoardLive();
  const { setPin, setSentence } = useEasel();
  const { setMarkId } = useTools();
  const set = (point: FractionPoint) => {
    if (!may.mark) return setSentence(words.onlyLook);
    setMarkId(null);
    setPin({ pictureId, point: insidePicture(point), kind: kind === 'text' ? 'text' : 'pin' });
  };
  return tapHand(may.mark, words.keysOf[kind], set);
}

/** A colour with its reading, on the board at once. */
function useSampleHand(pictureId: string): Hand {
  const { setSentence } = useEasel();
  const { setMarkId } = useTools();
  const trustOf = useTrust();
  const add = useAdd(pictureId);
  const sample = useSample(pictureId, false, setSentence);
  return tapHand(true, words.keysOf.patch, (at) => {
    const point = insidePicture(at);
    sample(point, ({ lab }) => {
      const figure = (amount: number) => Math.round(amount * 100) / 100;
      const kept = { L: Math.min(100, Math.max(0, figure(lab.L))), a: figure(lab.a), b: figure(lab.b) };
      setMarkId(add({ kind: 'patch', points: [point], patch: { lab: kept, trust: trustOf(pictureId) } }));
    });
  });
}

/** A colour to paint with. */
function usePickHand(pictureId: string): Hand {
  const { setSentence } = useEasel();
  const { setPaint, setTaking } = useMarkDesk();
  const sample = useSample(pictureId, true, setSentence);
  const hand = tapHand(true, words.sketch.takingKeys, (point) => {
    sample(insidePicture(point), ({ hex }) => {
      setPaint((paint) => ({ ...paint, hex }));
      setTaking(false);
    });
  });
  return {
    ...hand,
    key(key, point, shift) {
      if (key !== 'Escape') return hand.key?.(key, point, shift) ?? false;
      setTaking(false);
      return true;
    },
  };
}

function useDrawing(picture: PictureView, kind: HandKind): Hand {
  const { may, marks } = useBoardLive();
  const { setMarkId } = useTools();
  const { paint, layer, setLayer } = useMarkDesk();
  const add = useAdd(picture.id);
  const sketchRefusal = useSketchRefusal(picture);
  const drawn = kind === 'arrow' || kind === 'outline' || kind === 'sketch' ? kind : 'stroke';
  const keep = (points: StrokePoint[]) => {
    if (drawn !== 'sketch') return setMarkId(add({ kind: drawn, points }));
    const joins = layer?.pictureId === picture.id && marks.some(({ id }) => id === layer.id);
    const id = add({ kind: 'sketch', points, paint, layerId: joins ? layer.id : null });
    if (joins) return;
    setLayer({ pictureId: picture.id, id });
    setMarkId(id);
  };
  const refusal = may.mark ? (drawn === 'sketch' ? sketchRefusal : null) : words.onlyLook;
  return useDrawnHand({ pictureId: picture.id, kind: drawn, refusal, keep });
}

function tapHand(allowed: boolean, keysHint: string, act: (point: FractionPoint) => void): Hand {
  return {
    cursor: allowed ? 'crosshair' : 'default',
    crosshair: true,
    keysHint,
    tap: (at) => act(at.point),
    key(key, point) {
      if (key !== ' ' && key !== 'Enter') return false;
      act(point);
      return true;
    },
  };
}
