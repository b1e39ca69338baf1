'use client';
/**
 * Half size and mirror, as they touch the view: half shows the whole picture at half its fitting size, mirroring keeps
 * the same part of the picture before the eye.
 *
 * In the flow: look state -> [use-view-as-looked] -> view-store.
 */
import { useEffect, useRef } from 'react';
import { useLooking } from '#app/_look/look-state.tsx';
import { useEasel } from './easel-state.tsx';
import { WHOLE } from './view-transform.ts';

const HALF = 0.5;

export function useViewAsLooked(): void {
  const { views } = useEasel();
  const { half, setHalf, mirrored } = useLooking();
  useEffect(() => {
    if (half) views.set({ ...WHOLE, zoom: HALF });
    else if (views.get().zoom < 1) views.set(WHOLE);
  }, [half, views]);
  // Whoever zooms or pans to the whole has left half size.
  useEffect(() => {
    if (!half) return;
    return views.subscribe(() => {
      if (views.get().zoom >= 1) setHalf(false);
    });
  }, [half, setHalf, views]);

  const before = useRef(mirrored);
  useEffect(() => {
    if (before.current === mirrored) return;
    before.current = mirrored;
    const view = views.get();
    views.set({ ...view, middleX: 1 - view.middleX });
  }, [mirrored, views]);
}
