'use client';
/**
 * How far the eyes are closed just now, and what to ask of a picture looked at so. Apart from the values, whose
 * arithmetic comes when they are first shown: to squint must take no time.
 *
 * In the flow: live photo + strength of squinting -> [use-squint] -> squinted picture, use-look-pixels, hands.
 */
import { useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { isBlurred } from '#app/_workspace/looking.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { LookWish } from './look-line.ts';
import { SQUINT_SHARES, useLooking } from './look-state.tsx';

/** Softening before grouping while nobody squints: brush marks and leaves join, shapes stay. */
export const LEAST_SQUINT = 0.004;
const UNCORRECTED = {};

/** How far the eyes are closed just now, as sigma in shares of the long side; null = open. */
export function useSquint(): number | null {
  const { squint } = useTools();
  const { closed } = useLooking();
  return isBlurred(squint) ? (SQUINT_SHARES[closed] ?? SQUINT_SHARES[0]) : null;
}

export interface LookHow {
  /** Sigma of the softening, share of the long side. */
  squint: number;
  /** The painting alone, squared; else the photo in its own frame. */
  squared?: boolean;
  /** In the light it was posted in, whatever cards there are. */
  asPosted?: boolean;
}

/** What to ask the line for. @param pictureId Null = nothing. */
export function useLookWish(
  pictureId: string | null,
  { squint, squared = false, asPosted = false }: LookHow,
): LookWish | null {
  const { board, photoOf } = useBoardLive();
  const isPainting = board.pictures.some(({ id, kind }) => id === pictureId && kind === 'painting');
  const photo = pictureId && isPainting && !asPosted ? photoOf(pictureId) : UNCORRECTED;
  return useMemo(
    () => (pictureId ? { boardId: board.id, pictureId, as: { photo, squared, squint } } : null),
    [board.id, pictureId, photo, squared, squint],
  );
}
