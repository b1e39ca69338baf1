'use client';
/**
 * The hand that picks the colour of the air: one tap where the sky meets the farthest ridge, and the hand is free again.
 *
 * In the flow: gestures and keys -> [use-air-hand] -> mean of a small disc of the lossless copy, in the light of the
 * photo's cards -> `air` in the setup room.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useLooking } from '#app/_look/look-state.tsx';
import { LEAST_SQUINT, useLookWish } from '#app/_look/use-squint.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { patchAt } from '#server/core/look/patch.ts';
import { airWords } from '#words/air.ts';
import { useEasel } from './easel-state.tsx';
import type { Hand } from './hand.ts';

const AS_IT_IS = { squint: LEAST_SQUINT };
const { colour: words } = airWords;

export function useAirHand(picture: PictureView): Hand {
  const { may, write } = useBoardLive();
  const { setTool } = useTools();
  const { setSentence } = useEasel();
  const { line } = useLooking();
  const wish = useLookWish(picture.id, AS_IT_IS);
  const pick = (point: FractionPoint) => {
    if (!may.setup) return setSentence(words.onlyLook);
    if (!wish) return;
    line.pixels(wish).then(
      ({ lit }) => {
        const patch = patchAt(lit, point);
        setSentence(patch ? null : words.outside);
        if (!patch) return;
        write.setAir(picture.id, patch.lab);
        setTool('look');
      },
      () => setSentence(words.unavailable),
    );
  };
  return {
    cursor: may.setup ? 'crosshair' : 'default',
    crosshair: true,
    keysHint: words.keys,
    tap: (at) => pick(at.point),
    key(key, point) {
      if (key === 'Escape') setTool('look');
      else if (key === ' ' || key === 'Enter') pick(point);
      else return false;
      return true;
    },
  };
}
