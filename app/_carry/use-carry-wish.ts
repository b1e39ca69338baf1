'use client';
/**
 * What is to be carried: from which picture to which, with the outlines as they stand.
 *
 * In the flow: live board, choices -> [use-carry-wish] -> carry-desk.
 */
import { useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import type { PlaneToCarry } from '#server/core/planes/carry/lay-planes.ts';
import { isProblem } from '#server/core/problem.ts';
import { type FractionMapper, fractionMapper } from '#server/core/rectify/fraction-mapper.ts';
import { type CarrySource, carrySources, firstSource } from './carry-sources.ts';

export interface CarryWish {
  /** Changes whenever anything of it does. */
  key: string;
  fromId: string;
  toId: string;
  from: Pick<LivePhoto, 'corners' | 'size'>;
  to: Pick<LivePhoto, 'corners' | 'size'>;
  /** Far to near, 0..1 of the upright picture that they come from. */
  planes: readonly PlaneToCarry[];
  /** The same in 0..1 of that picture squared. */
  squared: readonly PlaneToCarry[];
  /** From 0..1 of the squared painting to 0..1 of its upright photo. */
  original: (point: FractionPoint) => FractionPoint;
  /** And back. */
  onPainting: (point: FractionPoint) => FractionPoint;
}

export interface CarryChoices {
  sources: readonly CarrySource[];
  sourceId: string | null;
  /** Null while there is nothing to carry. */
  wish: CarryWish | null;
  /** Planes of the source that the painting lacks. */
  missing: readonly string[];
}

/** Corners that nothing can be squared by leave the picture as it came; the worker says why. */
function mapperOf(photo: LivePhoto): FractionMapper {
  try {
    return fractionMapper(photo);
  } catch (thrown) {
    if (isProblem(thrown)) return fractionMapper(undefined);
    throw thrown;
  }
}

const squaringOf = ({ corners, size }: LivePhoto): CarryWish['from'] => ({
  ...(corners ? { corners } : {}),
  ...(size ? { size } : {}),
});

/** @param wantedId The picture that was chosen; null = the likeliest. */
export function useCarryWish(wantedId: string | null): CarryChoices {
  const { board, planes, outlinesOf, photoOf } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const sources = useMemo(
    () => (paintingId ? carrySources(board.pictures, paintingId) : []),
    [board.pictures, paintingId],
  );
  const chosen = sources.find(({ pictureId }) => pictureId === wantedId)?.pictureId;
  const sourceId = chosen ?? firstSource(sources, referenceId, (id) => outlinesOf(id).size);
  const there = sourceId ? outlinesOf(sourceId) : null;
  const here = paintingId ? outlinesOf(paintingId) : null;
  const isPainting = board.pictures.some(({ id, kind }) => id === sourceId && kind === 'painting');
  const from = sourceId && isPainting ? photoOf(sourceId) : null;
  const to = paintingId ? photoOf(paintingId) : null;
  const wish = useMemo<CarryWish | null>(() => {
    if (!sourceId || !paintingId || !there || !to) return null;
    const own = planes.flatMap(({ id, name }): PlaneToCarry[] => {
      const outline = there.get(id);
      return outline ? [{ id, name, outline }] : [];
    });
    if (own.length === 0) return null;
    const [squaring, squaringTo] = [squaringOf(from ?? {}), squaringOf(to)];
    const { toSquared } = mapperOf(squaring);
    const painted = mapperOf(squaringTo);
    return {
      key: JSON.stringify([sourceId, paintingId, own, squaring, squaringTo]),
      ...{ fromId: sourceId, toId: paintingId, from: squaring, to: squaringTo, planes: own },
      squared: own.map((plane) => ({ ...plane, outline: plane.outline.map(toSquared) })),
      original: painted.toOriginal,
      onPainting: painted.toSquared,
    };
  }, [sourceId, paintingId, planes, there, from, to]);
  const missing = useMemo(
    () => planes.flatMap(({ id }) => (there?.has(id) && !here?.has(id) ? [id] : [])),
    [planes, there, here],
  );
  return { sources, sourceId, wish, missing };
}
