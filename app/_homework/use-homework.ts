'use client';
/** Homework of a board, fetched anew whenever its pictures, people or homework change. IO: HTTP. */
import { useCallback, useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchHomework } from '#app/_api/homework.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { HomeworkView } from '#server/core/contract/homework.ts';

export function useHomework() {
  const { board, boardChanged } = useBoardLive();
  const boardId = board.id;
  /** Null until it has come. */
  const [homework, setHomework] = useState<readonly HomeworkView[] | null>(null);
  const refresh = useCallback(async () => {
    try {
      setHomework(await fetchHomework(boardId));
    } catch (thrown) {
      // Without an answer what was there stays; the line's own state says so.
      sentenceOf(thrown);
    }
  }, [boardId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the server's word that something changed.
  useEffect(() => {
    void refresh();
  }, [refresh, boardChanged]);
  return { homework, refresh };
}
