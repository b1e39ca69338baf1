'use client';
/**
 * The hand that marks where the eye should come to rest on a painting: one tap, and the hand is free again.
 *
 * In the flow: gestures and keys -> [use-focus-hand] -> `focus` in the painting's room, in 0..1 of the upright
 * original.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { critiqueWords } from '#words/critique.ts';
import { useEasel } from './easel-state.tsx';
import type { Hand } from './hand.ts';
import { insidePicture } from './outline-edit.ts';

const { focus: words } = critiqueWords;

export function useFocusHand(picture: PictureView): Hand {
  const { may, write } = useBoardLive();
  const { setTool } = useTools();
  const { setSentence } = useEasel();
  const isPainting = picture.kind === 'painting';
  const allowed = isPainting && may.intention(picture.id);
  const set = (point: FractionPoint) => {
    if (!allowed) return setSentence(isPainting ? words.onlyLook : words.onlyPainting);
    write.setFocus(picture.id, insidePicture(point));
    setTool('look');
  };
  return {
    cursor: allowed ? 'crosshair' : 'default',
    crosshair: true,
    keysHint: words.keys,
    tap: (at) => set(at.point),
    key(key, point) {
      if (key === 'Escape') setTool('look');
      else if (key === ' ' || key === 'Enter') set(point);
      else return false;
      return true;
    },
  };
}
