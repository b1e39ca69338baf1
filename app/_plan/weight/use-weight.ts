'use client';
/**
 * Weight and shapes of what is looked at: the photograph, a kept frame, or the picture as it was rearranged.
 *
 * In the flow: planes, frame, rearranged picture -> plan worker -> [use-weight] -> beam, list. IO: a worker.
 */
import { useEffect, useMemo, useState } from 'react';
import { losslessAddress } from '#app/_easel/picture-copies.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { WHOLE } from '#server/core/plan/in-frame.ts';
import { useKeptFrames } from '../kept-frames.ts';
import { PlanLine } from '../ladder/plan-line.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import type { LookedAt } from './look-at.ts';
import { useRearranged } from './rearranged.tsx';

export interface WeightShown {
  looked: LookedAt | null;
  /** Why nothing can be told, or null. */
  sentence: string | null;
  failed: boolean;
}

const NOT_YET: WeightShown = { looked: null, sentence: null, failed: false };

export function useWeight(): WeightShown {
  const { board, planes, outlinesOf, ready } = useBoardLive();
  const { picture } = usePlanChoice();
  const { chosen } = useKeptFrames();
  const { raster } = useRearranged();
  const [shown, setShown] = useState(NOT_YET);
  const [line, setLine] = useState<PlanLine | null>(null);
  const pictureId = picture?.id ?? null;
  const outlines = pictureId ? outlinesOf(pictureId) : null;
  const outlined = useMemo(
    () =>
      planes.flatMap(({ id, name, kind }) => {
        const outline = outlines?.get(id);
        return outline ? [{ name, kind, outline }] : [];
      }),
    [planes, outlines],
  );
  useEffect(() => {
    const opened = new PlanLine(
      (answer) => {
        if ('looked' in answer) setShown({ ...NOT_YET, looked: answer.looked });
        else if ('sentence' in answer) setShown({ ...NOT_YET, sentence: answer.sentence });
      },
      () => setShown({ ...NOT_YET, failed: true }),
    );
    setLine(opened);
    return () => opened.close();
  }, []);
  const box = chosen?.box ?? WHOLE;
  useEffect(() => {
    if (!line || !pictureId || !ready) return;
    const address = new URL(losslessAddress(board.id, pictureId), location.href).href;
    line.ask({ ask: 'weight', address, planes: outlined, focus: null, box, rearranged: raster });
  }, [line, board.id, pictureId, ready, outlined, box, raster]);
  return shown;
}
