'use client';
/**
 * The measured document of the painting on the easel, fetched once for ladder, talk and photo alike.
 *
 * In the flow: result number (live) -> use-measures -> [BoardMeasuresProvider] -> useBoardMeasures. IO: HTTP.
 */
import { createContext, type ReactNode, useContext, useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { planeIdOfColumn } from '#server/core/live/plane-id-of-column.ts';
import { type MeasuresShown, useMeasures } from './use-measures.ts';

export interface BoardMeasures extends MeasuresShown {
  /** Ids of the live planes by column of `document.planes`; null where a plane was renamed or deleted since. */
  planeIds: readonly (string | null)[];
}

const MeasuresContext = createContext<BoardMeasures | null>(null);

/** @throws Error outside `BoardMeasuresProvider`: a bug. */
export function useBoardMeasures(): BoardMeasures {
  const measures = useContext(MeasuresContext);
  if (!measures) throw new Error('useBoardMeasures is used outside BoardMeasuresProvider.');
  return measures;
}

/** Stands inside the live board and the tools: the painting on the easel is the one that is fetched. */
export function BoardMeasuresProvider({ boardId, children }: { boardId: string; children: ReactNode }) {
  const live = useBoardLive();
  const { paintingId: shownId } = useTools();
  // While a class keeps figures back there is nothing to ask for.
  const paintingId = live.class.veiled ? null : shownId;
  const number = paintingId ? live.resultNumber(paintingId) : null;
  const doing = paintingId ? live.pendingOf(paintingId) : null;
  const { document, pending, trouble, again } = useMeasures(boardId, paintingId, number, live.planes.length);
  const { planes } = live;
  const measures = useMemo<BoardMeasures>(() => {
    const planeIds = (document?.planes ?? []).map(({ name }, at) => planeIdOfColumn(planes, name, at));
    return { document, pending: doing ?? pending, trouble, again, planeIds };
  }, [document, doing, pending, trouble, again, planes]);
  return <MeasuresContext value={measures}>{children}</MeasuresContext>;
}
