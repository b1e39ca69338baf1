'use client';
/**
 * Half size and mirror, as they touch the view: half shows the whole picture at half its fitting size, mirroring keeps
 * the same part of the picture before the eye.
 *
 * In the flow: look state -> [use-view-as-looked] -> view-store.
 */
import { useEffect, useRef } from 'react';
import { useLooking } from '#app/_look/look-state.tsx';
import { useTogether } from '#app/_together/together.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { useEasel } from './easel-state.tsx';
import { HALF_SIZE, WHOLE } from './view-transform.ts';

export function useViewAsLooked(): void {
  const { views } = useEasel();
  const { half, setHalf, mirrored } = useLooking();
  const { hand } = useTools();
  const { following } = useTogether();
  useEffect(() => {
    hand.quietly(() => {
      if (half) views.set({ ...WHOLE, zoom: HALF_SIZE });
      else if (views.get().zoom < 1) views.set(WHOLE);
    });
  }, [half, views, hand]);
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
    // Whom one looks with tells what to see, mirrored or not.
    if (following) return;
    const view = views.get();
    hand.quietly(() => views.set({ ...view, middleX: 1 - view.middleX }));
  }, [mirrored, following, views, hand]);
}
