'use client';
/** What was asked for on a board, fetched anew whenever its pictures, people or askings change. IO: HTTP. */
import { useCallback, useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchAsks } from '#app/_api/own-time.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { AskView } from '#server/core/contract/own-time.ts';

export function useAsks() {
  const { board, boardChanged } = useBoardLive();
  const boardId = board.id;
  /** Null until they have come. */
  const [asks, setAsks] = useState<readonly AskView[] | null>(null);
  const refresh = useCallback(async () => {
    try {
      setAsks(await fetchAsks(boardId));
    } catch (thrown) {
      // Without an answer what was there stays; the line's own state says so.
      sentenceOf(thrown);
    }
  }, [boardId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the server's word that something changed.
  useEffect(() => {
    void refresh();
  }, [refresh, boardChanged]);
  return { asks, refresh };
}
