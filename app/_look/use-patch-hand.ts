'use client';
/**
 * The hand that takes patches of colour, and tells the scales what value lies under it.
 *
 * In the flow: gestures and keys -> [use-patch-hand] -> patches, hovered value.
 */
import { useEffect } from 'react';
import type { Hand } from '#app/_easel/hand.ts';
import { insidePicture } from '#app/_easel/outline-edit.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { stepOfLightness } from '#server/core/look/nine-steps.ts';
import { patchAt } from '#server/core/look/patch.ts';
import { lookWords } from '#words/look.ts';
import { useLooking } from './look-state.tsx';
import { useLookPixels } from './use-look-pixels.ts';
import { LEAST_SQUINT, useLookWish } from './use-squint.ts';

const AS_IT_IS = { squint: LEAST_SQUINT };

/** @param say Shows a sentence under the pictures, or takes it away. */
export function usePatchHand(pictureId: string, say: (sentence: string | null) => void): Hand {
  const { tool } = useTools();
  const { takePatch, hover, line } = useLooking();
  const { pixels } = useLookPixels(tool === 'patch' ? pictureId : null, AS_IT_IS);
  const wish = useLookWish(pictureId, AS_IT_IS);
  useEffect(() => {
    if (tool !== 'patch') hover.set(null);
  }, [tool, hover]);
  const take = (at: FractionPoint) => {
    const point = insidePicture(at);
    if (!wish) return;
    // Asked of the line, not of the state: a tap that comes before the pixels is not lost.
    line.pixels(wish).then(
      ({ lit }) => {
        const patch = patchAt(lit, point);
        if (patch) takePatch({ pictureId, point, patch });
        say(null);
      },
      () => say(lookWords.unavailable),
    );
  };
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: lookWords.patch.keys,
    tap: ({ point }) => take(point),
    hover(point) {
      const patch = point && pixels ? patchAt(pixels.lit, point) : null;
      hover.set(patch ? { pictureId, step: stepOfLightness(patch.lab.L) } : null);
    },
    key(key, point) {
      if (key !== ' ' && key !== 'Enter') return false;
      take(point);
      return true;
    },
  };
}
