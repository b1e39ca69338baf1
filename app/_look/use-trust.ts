'use client';
/** How far the light of a picture can be trusted. In the flow: measures -> [use-trust] -> patches, values. */
import { useCallback } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { Trust } from '#server/core/look/trust.ts';

/** A reference is taken as it is; a painting by the grade of its photo, and as C while there is none. */
export function useTrust(): (pictureId: string) => Trust {
  const { board } = useBoardLive();
  const { paintingId } = useTools();
  const { document } = useBoardMeasures();
  const grade = document?.capture.grade ?? 'C';
  return useCallback(
    (pictureId) => {
      if (board.pictures.some(({ id, kind }) => id === pictureId && kind === 'reference')) return 'exact';
      return pictureId === paintingId ? grade : 'C';
    },
    [board.pictures, paintingId, grade],
  );
}
