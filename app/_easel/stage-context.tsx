'use client';
/**
 * What the layers over one picture know of it: its frame, and how to find a point of it under the hand.
 *
 * In the flow: stage -> [stage-context] -> outline, mark, corner and pointer layers.
 */
import { createContext, useContext } from 'react';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { Frame } from './frame.ts';

export interface StageInside {
  boardId: string;
  picture: PictureView;
  frame: Frame;
  /** Height / width of what is shown. */
  aspect: number;
  /** 0..1 of the upright original under a point of the browser's window. */
  pointAt(clientX: number, clientY: number): FractionPoint;
  /** One CSS pixel in 0..1 of what is shown, along x and y. */
  pixel(): { x: number; y: number };
  /** The picture's loaded copy, for the loupe. */
  image(): HTMLImageElement | null;
}

export const StageContext = createContext<StageInside | null>(null);

/** @throws Error outside a stage: a bug. */
export function useStage(): StageInside {
  const stage = useContext(StageContext);
  if (!stage) throw new Error('useStage is used outside a stage.');
  return stage;
}
