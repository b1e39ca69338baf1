/**
 * Which kept frame of the photograph a painting is made after: `frame` of its own `painting/<pictureId>` room.
 *
 * In the flow: board or plan page -> [frame-of-painting] -> measuring inside the frame. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { putEntry, readEntries } from '../document.ts';
import { LiveId } from '../layout.ts';

const CropOf = z.literal('crop');

/** Whether an entry of `frame` is well formed. */
export function frameFits(key: string, value: unknown): boolean {
  return CropOf.safeParse(key).success && LiveId.safeParse(value).success;
}

/** Id of the frame, or null where the painting is after the whole photograph. The frame itself may be gone. */
export function readFrameId(painting: Y.Doc): string | null {
  return readEntries(painting, 'frame', CropOf, LiveId).get('crop') ?? null;
}

/** @param cropId null = after the whole photograph. */
export function setFrameId(painting: Y.Doc, cropId: string | null): void {
  putEntry(painting, 'frame', 'crop', cropId);
}
