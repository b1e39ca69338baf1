'use client';
/** Where a mark is, in words: which picture, which plane. In the flow: live board -> [use-place-words] -> talk. */
import { useCallback } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/board-live-types.ts';
import { words } from '#app/_words/en-easel.ts';

export function usePlaceWords(): (mark: MarkView) => string {
  const { board, planes } = useBoardLive();
  return useCallback(
    (mark) => {
      const kind = board.pictures.find(({ id }) => id === mark.pictureId)?.kind;
      const plane = planes.find(({ id }) => id === mark.planeId)?.name ?? null;
      return kind ? words.talk.where(words.talk.sides[kind], plane) : words.talk.elsewhere;
    },
    [board.pictures, planes],
  );
}
