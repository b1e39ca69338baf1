'use client';
/**
 * The hand that chooses a spot whose value is guessed. What it finds is the value this screen shows.
 *
 * In the flow: gestures and keys -> [use-guess-hand] -> spot, guess panel.
 */
import { useCallback } from 'react';
import type { Hand } from '#app/_easel/hand.ts';
import { insidePicture } from '#app/_easel/outline-edit.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { stepOfLightness } from '#server/core/look/nine-steps.ts';
import { patchAt } from '#server/core/look/patch.ts';
import { lookWords } from '#words/look.ts';
import type { LookWish } from './look-line.ts';
import { useLooking } from './look-state.tsx';
import { LEAST_SQUINT, useLookWish } from './use-squint.ts';

/** What to ask for so that the answer is what this screen shows at that moment. */
export function useShownWish(pictureId: string | null): () => LookWish | null {
  const { rightedNow } = useLooking();
  const righted = useLookWish(pictureId, { squint: LEAST_SQUINT });
  const posted = useLookWish(pictureId, { squint: LEAST_SQUINT, asPosted: true });
  return useCallback(
    () => (pictureId && rightedNow.get(pictureId) ? righted : posted),
    [rightedNow, pictureId, righted, posted],
  );
}

/** Takes a spot of a picture into the exercise. @param say A sentence when it cannot. */
export function useTakeSpot(pictureId: string | null, say: (sentence: string | null) => void) {
  const { setSpot, line } = useLooking();
  const wishNow = useShownWish(pictureId);
  return useCallback(
    (point: FractionPoint) => {
      const wish = wishNow();
      if (!wish) return;
      line.pixels(wish).then(
        ({ lit }) => {
          const patch = patchAt(lit, point);
          if (!patch) return;
          setSpot({ pictureId: wish.pictureId, point, shown: stepOfLightness(patch.lab.L), plane: null });
          say(null);
        },
        () => say(lookWords.unavailable),
      );
    },
    [wishNow, line, setSpot, say],
  );
}

/** @param say Shows a sentence under the pictures, or takes it away. */
export function useGuessHand(pictureId: string, say: (sentence: string | null) => void): Hand {
  const take = useTakeSpot(pictureId, say);
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: lookWords.guess.keys,
    tap: ({ point }) => take(insidePicture(point)),
    key(key, point) {
      if (key !== ' ' && key !== 'Enter') return false;
      take(insidePicture(point));
      return true;
    },
  };
}
