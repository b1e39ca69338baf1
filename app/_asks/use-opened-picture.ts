'use client';
/** Puts the picture on the easel that the address names, where somebody came from what waits. IO: the address. */
import { useEffect } from 'react';
import { PICTURE_PART } from '#app/_queue/board-on.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';

export function useOpenedPicture(): void {
  const { setPaintingId, setSide } = useTools();
  // biome-ignore lint/correctness/useExhaustiveDependencies: only on arrival; afterwards the person's own choice stands.
  useEffect(() => {
    const wanted = new URLSearchParams(location.search).get(PICTURE_PART);
    if (!wanted) return;
    setPaintingId(wanted);
    setSide('painting');
  }, []);
}
