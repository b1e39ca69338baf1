'use client';
/** Whether who runs the class has put the marks away on every screen. In the flow: class room -> [use-quieted] -> easel. */
import { useRoomDocument } from '#app/_live/board-live.tsx';
import { readClass } from '#server/core/class/state.ts';

export function useQuieted(): boolean {
  const doc = useRoomDocument('class');
  return doc !== null && readClass(doc).quiet;
}
