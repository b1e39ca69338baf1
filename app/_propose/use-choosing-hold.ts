'use client';
/**
 * Says to the others that this person is choosing planes for a picture, while they do and for a little longer.
 *
 * In the flow: grouping choice -> [use-choosing-hold] -> presence.
 */
import { useCallback, useEffect, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { planesHold } from '#app/_live/presence.ts';

/** Whoever touched nothing for so long has turned to something else. */
const LINGER_MS = 20_000;

/** @returns To be called with each choice that is looked at. */
export function useChoosingHold(pictureId: string): () => void {
  const { hold, letGo } = useBoardLive();
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const what = planesHold(pictureId);
  const live = useRef({ hold, letGo });
  live.current = { hold, letGo };
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      live.current.letGo(what);
    },
    [what],
  );
  return useCallback(() => {
    clearTimeout(timer.current);
    live.current.hold(what);
    timer.current = setTimeout(() => live.current.letGo(what), LINGER_MS);
  }, [what]);
}
