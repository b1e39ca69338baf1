'use client';
/**
 * The frames that were kept of the chosen photograph, and the one that is looked at.
 *
 * In the flow: setup room -> [kept-frames] -> every part of the plan. No IO of its own.
 */
import { useMemo } from 'react';
import { useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import { type KeptCrop, readCrops } from '#server/core/live/plan/crops.ts';
import { usePlanChoice } from './plan-choice.tsx';

const crops = new PerDocument((doc) => readCrops(doc));
const NONE: readonly KeptCrop[] = [];

export function useKeptFrames(): { frames: readonly KeptCrop[]; chosen: KeptCrop | null } {
  const doc = useRoomDocument('setup');
  const { picture, frameId } = usePlanChoice();
  const all = doc ? crops.of(doc) : NONE;
  return useMemo(() => {
    const frames = all.filter(({ pictureId }) => pictureId === picture?.id);
    return { frames, chosen: frames.find(({ id }) => id === frameId) ?? null };
  }, [all, picture?.id, frameId]);
}
