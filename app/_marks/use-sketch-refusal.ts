'use client';
/** Why a picture may not be sketched over, in a sentence; null = it may. In the flow: live board -> [use-sketch-refusal]. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { markWords } from '#words/marks.ts';

const { sketch: words } = markWords;

export function useSketchRefusal(picture: PictureView | null): string | null {
  const { allowsSketch, board, may } = useBoardLive();
  if (!may.mark) return markWords.onlyLook;
  if (picture?.kind !== 'painting') return words.onlyPaintings;
  if (allowsSketch(picture.id)) return null;
  return picture.painter.id === board.me.id ? words.ownNotAllowed : words.notAllowed(picture.painter.name);
}
