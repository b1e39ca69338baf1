'use client';
/**
 * The states of one painting, fetched again while something of them is still being worked out. In the flow: api ->
 * [use-states] -> time line, last state on the board. IO: HTTP.
 */
import { useCallback, useEffect, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { fetchStates } from '#app/_api/states.ts';
import type { StatesView } from '#server/core/contract/states.ts';

/** Between two looks, milliseconds, and how many looks a page takes without being asked. */
const AGAIN_MS = 1500;
const MOST_LOOKS = 60;

export interface StatesNow {
  view: StatesView | null;
  /** Why they could not be fetched; what was there before stays. */
  trouble: string | null;
  refresh(): Promise<void>;
}

const unfinished = ({ states, steps }: StatesView) =>
  steps.some(({ pending }) => pending) || states.some(({ pending }) => pending !== null);

/** @param changes Anything that changes when the board's own figures do. */
export function useStates(boardId: string, pictureId: string, changes: unknown = null): StatesNow {
  const [view, setView] = useState<StatesView | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [looks, setLooks] = useState(0);
  const refresh = useCallback(async () => {
    try {
      setView(await fetchStates(boardId, pictureId));
      setTrouble(null);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    setLooks((count) => count + 1);
  }, [boardId, pictureId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what changed is not read, it only asks for another look.
  useEffect(() => {
    void refresh();
  }, [refresh, changes]);
  const waits = view !== null && unfinished(view) && looks < MOST_LOOKS;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the next wait begins when the look before has ended.
  useEffect(() => {
    if (!waits) return;
    const timer = setTimeout(() => void refresh(), AGAIN_MS);
    return () => clearTimeout(timer);
  }, [waits, looks, refresh]);
  return { view, trouble, refresh };
}
