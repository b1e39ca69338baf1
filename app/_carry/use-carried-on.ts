'use client';
/** The planes of a picture that are drawn where they are being placed. In the flow: carry-desk -> [use-carried-on] -> easel picture. */
import { useMemo } from 'react';
import { useCarryDoor } from './carry-desk.tsx';

/** @returns Ids of planes, or null while none is carried onto this picture. */
export function useCarriedOn(pictureId: string): ReadonlySet<string> | null {
  const { work } = useCarryDoor();
  const carried = work?.placing && work.wish?.toId === pictureId ? work.carried : null;
  return useMemo(() => carried && new Set(carried.planes.map(({ id }) => id)), [carried]);
}
