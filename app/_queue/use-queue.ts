'use client';
/** What waits, fetched anew whenever the page comes back into sight. In the flow: /api/queue -> [use-queue] -> queue. */
import { useCallback, useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchQueue } from '#app/_api/own-time.ts';
import type { QueueView } from '#server/core/contract/own-time.ts';

interface QueueNow {
  queue: QueueView | null;
  /** Why it could not be fetched; what was there before stays. */
  trouble: string | null;
  refresh(): Promise<void>;
}

export function useQueue(): QueueNow {
  const [queue, setQueue] = useState<QueueView | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const refresh = useCallback(async () => {
    try {
      setQueue(await fetchQueue());
      setTrouble(null);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  }, []);
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') void refresh();
    };
    void refresh();
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, [refresh]);
  return { queue, trouble, refresh };
}
