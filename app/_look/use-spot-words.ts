'use client';
/** Where a point is, in words: which picture, which plane. In the flow: live board -> [use-spot-words] -> panels. */
import { useCallback } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';
import { lookWords } from '#words/look.ts';

/** @returns For example `Reference, Massif`. */
export function useSpotWords(): (pictureId: string, point: FractionPoint) => string {
  const { board, planes, outlinesOf } = useBoardLive();
  return useCallback(
    (pictureId, point) => {
      const kind = board.pictures.find(({ id }) => id === pictureId)?.kind ?? 'painting';
      const outlines = outlinesOf(pictureId);
      const drawn = planes.flatMap(({ id }) => {
        const outline = outlines.get(id);
        return outline ? [{ planeId: id, outline }] : [];
      });
      const planeId = planePlaces(drawn).planeAt(point);
      const plane = planes.find(({ id }) => id === planeId)?.name ?? null;
      return lookWords.patch.where(lookWords.patch.sides[kind], plane);
    },
    [board.pictures, planes, outlinesOf],
  );
}
