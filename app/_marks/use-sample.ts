'use client';
/**
 * Takes the colour at a place of a picture: for a mark, or to paint a sketch with.
 *
 * In the flow: tap or key -> [use-sample] -> patch. The pixels are asked for when the first one is taken.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useLooking } from '#app/_look/look-state.tsx';
import { LEAST_SQUINT, useLookWish } from '#app/_look/use-squint.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { type Patch, patchAt } from '#server/core/look/patch.ts';
import { markWords as words } from '#words/marks.ts';

const AS_IT_IS = { squint: LEAST_SQUINT };
/** A colour to paint with is the colour on the screen, in whatever light it was posted. */
const AS_POSTED = { squint: LEAST_SQUINT, asPosted: true };

/** @param say Shows a sentence under the pictures, or takes it away. */
export function useSample(pictureId: string, asPosted: boolean, say: (sentence: string | null) => void) {
  const { ready } = useBoardLive();
  const { line } = useLooking();
  const wish = useLookWish(ready ? pictureId : null, asPosted ? AS_POSTED : AS_IT_IS);
  return (point: FractionPoint, take: (patch: Patch) => void) => {
    if (!wish) return;
    line.pixels(wish).then(
      ({ lit }) => {
        const patch = patchAt(lit, point);
        if (patch) take(patch);
        say(null);
      },
      () => say(words.colourGone),
    );
  };
}
