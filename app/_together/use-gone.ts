'use client';
/** Notices that somebody left the board for good, and not that one's own line is down. In the flow: presence -> [use-gone]. */
import { useEffect, useRef } from 'react';
import { usePresenceLine } from '#app/_live/board-live.tsx';

/** When one's own line goes, everybody seems gone for a moment; and a page that is loaded again comes back. */
const SURE_MS = 1500;

/** @param personId Null = nobody is waited for. @param gone Called once. */
export function useGone(personId: string | null, gone: () => void): void {
  const line = usePresenceLine();
  const act = useRef(gone);
  act.current = gone;
  useEffect(() => {
    if (personId === null) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const here = () => line.presentNow().some(({ person }) => person.id === personId);
    const ask = () => {
      timer = undefined;
      if (here()) return;
      if (line.connection() === 'connected') act.current();
      else timer = setTimeout(ask, SURE_MS);
    };
    const look = () => {
      if (!here()) timer ??= setTimeout(ask, SURE_MS);
    };
    const stop = line.subscribePresence(look);
    look();
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [line, personId]);
}
