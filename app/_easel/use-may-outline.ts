'use client';
/** Whether this person may draw outlines on a picture. In the flow: permissions -> [use-may-outline] -> hands. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';

export function useMayOutline(picture: PictureView): boolean {
  const { may } = useBoardLive();
  return picture.kind === 'reference' ? may.setup : may.painting(picture.id);
}
