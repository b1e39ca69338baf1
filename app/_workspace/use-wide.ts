'use client';
/** Whether the screen is wide enough for the talk to stand at the side. IO: listens to the window's width. */
import { useSyncExternalStore } from 'react';

/** As in `workspace.module.css`. */
const WIDE = '(min-width: 1000px)';

function subscribe(onChange: () => void): () => void {
  const query = window.matchMedia(WIDE);
  query.addEventListener('change', onChange);
  return () => query.removeEventListener('change', onChange);
}

/** true while the page is drawn on the server, where no width is known. */
export function useWide(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => window.matchMedia(WIDE).matches,
    () => true,
  );
}
