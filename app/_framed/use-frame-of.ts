'use client';
/**
 * The kept frame that a painting is made after, and the frames it could be.
 *
 * In the flow: painting's room + setup room -> [use-frame-of] -> chooser, ladder's head, preview. No IO of its own.
 */
import { usePaintingRoom, useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import { type KeptCrop, readCrops } from '#server/core/live/plan/crops.ts';
import { readFrameId, setFrameId } from '#server/core/live/plan/frame-of-painting.ts';

const crops = new PerDocument((doc) => readCrops(doc));
const NONE: readonly KeptCrop[] = [];

export interface FrameOf {
  /** False until the painting's room is there. */
  readonly known: boolean;
  /** All frames of the board, in the order in which they were kept. */
  readonly frames: readonly KeptCrop[];
  /** The one it is made after, or null: then the whole photograph. */
  readonly frame: KeptCrop | null;
  set(cropId: string | null): void;
}

export function useFrameOf(paintingId: string | null): FrameOf {
  usePaintingRoom(paintingId);
  const painting = useRoomDocument(paintingId ? `painting/${paintingId}` : null);
  const setup = useRoomDocument('setup');
  const frames = setup ? crops.of(setup) : NONE;
  const cropId = painting ? readFrameId(painting) : null;
  return {
    known: painting !== null,
    frames,
    frame: frames.find(({ id }) => id === cropId) ?? null,
    set: (id) => {
      if (painting) setFrameId(painting, id);
    },
  };
}
