'use client';
/** Where planes may be looked for on the easel as it stands. In the flow: live board, tools -> [use-find-targets]. */
import { useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { type FindTarget, findTargets } from './find-target.ts';

export function useFindTargets(): FindTarget[] {
  const { board, planes, may } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const { pictures } = board;
  const count = planes.length;
  return useMemo(() => {
    const picture = (id: string | null) => pictures.find((each) => each.id === id) ?? null;
    return findTargets({
      reference: picture(referenceId),
      painting: picture(paintingId),
      planes: count,
      may,
    });
  }, [pictures, referenceId, paintingId, count, may]);
}
