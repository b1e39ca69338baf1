'use client';
/** The plane under a point of a picture, for a mark that is made there. In the flow: live outlines -> [use-plane-at] -> hands. */
import { useCallback } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';

/** @returns Id of the plane seen at a point of the upright original, or null. */
export function usePlaneAt(): (pictureId: string, point: FractionPoint) => string | null {
  const { planes, outlinesOf } = useBoardLive();
  return useCallback(
    (pictureId, point) => {
      const outlines = outlinesOf(pictureId);
      const drawn = planes.flatMap(({ id }) => {
        const outline = outlines.get(id);
        return outline ? [{ planeId: id, outline }] : [];
      });
      return planePlaces(drawn).planeAt(point);
    },
    [planes, outlinesOf],
  );
}
