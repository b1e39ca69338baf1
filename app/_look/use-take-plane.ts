'use client';
/**
 * Takes a whole plane into the exercise of guessing: its middle lightness, as this screen shows it.
 *
 * In the flow: outlines + pixels -> [use-take-plane] -> spot, guess panel.
 */
import { useCallback, useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { stepOfLightness } from '#server/core/look/nine-steps.ts';
import { CODES_PER_L, countCodes } from '#server/core/look/value-counts.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';
import { useLooking } from './look-state.tsx';
import { useShownWish } from './use-guess-hand.ts';

/** Median of counted codes, L*; null when nothing was counted. */
export function medianOfCodes(codes: Uint8Array): number | null {
  const counts = countCodes(codes);
  const half = codes.length / 2;
  let before = 0;
  for (const [code, count] of counts.entries()) {
    before += count;
    if (count > 0 && before >= half) return code / CODES_PER_L;
  }
  return null;
}

export interface TakePlane {
  /** Planes outlined on that picture, far to near. */
  planes: readonly PlaneView[];
  take(planeId: string): void;
}

export function useTakePlane(pictureId: string | null): TakePlane {
  const { planes, outlinesOf } = useBoardLive();
  const { setSpot, line } = useLooking();
  const wishNow = useShownWish(pictureId);
  const outlines = pictureId ? outlinesOf(pictureId) : null;
  const drawn = useMemo(
    () =>
      planes.flatMap((plane) => {
        const outline = outlines?.get(plane.id);
        return outline ? [{ plane, planeId: plane.id, outline }] : [];
      }),
    [planes, outlines],
  );
  const take = useCallback(
    (planeId: string) => {
      const at = drawn.findIndex((one) => one.planeId === planeId);
      const [plane, point] = [drawn[at]?.plane, planePlaces(drawn).badges.get(planeId)];
      const wish = wishNow();
      if (!wish || !plane || !point) return;
      void line.pixels(wish).then(
        ({ lit, codes }) => {
          const labels = drawLabelMap(
            lit.widthPx,
            lit.heightPx,
            drawn.map(({ outline }) => outline),
          );
          const middle = medianOfCodes(codes.filter((_, pixel) => labels[pixel] === at));
          if (middle === null) return;
          setSpot({ pictureId: wish.pictureId, point, shown: stepOfLightness(middle), plane: plane.name });
        },
        () => undefined,
      ); // Without its pixels a plane cannot be taken; a tapped spot says so.
    },
    [drawn, wishNow, line, setSpot],
  );
  return { planes: useMemo(() => drawn.map(({ plane }) => plane), [drawn]), take };
}
