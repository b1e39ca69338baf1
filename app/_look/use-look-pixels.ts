'use client';
/**
 * The pixels, values and cuts of a picture for the looking tools, worked out when they are first wanted.
 *
 * In the flow: live photo + strength of squinting -> [use-look-pixels] -> value map, scales, patches.
 */
import { useEffect, useMemo, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { isBlurred } from '#app/_workspace/looking.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { startingCuts } from '#server/core/look/starting-cuts.ts';
import { type ValueGroup, valueGroups } from '#server/core/look/value-groups.ts';
import type { LookWish } from './look-line.ts';
import type { LookPixels } from './look-pixels.ts';
import { SQUINT_SHARES, useLooking, useMovedCuts } from './look-state.tsx';

/** Softening before grouping while nobody squints: brush marks and leaves join, shapes stay. */
export const LEAST_SQUINT = 0.004;
const UNCORRECTED = {};

/** How far the eyes are closed just now, as sigma in shares of the long side; null = open. */
export function useSquint(): number | null {
  const { squint } = useTools();
  const { closed } = useLooking();
  return isBlurred(squint) ? (SQUINT_SHARES[closed] ?? SQUINT_SHARES[0]) : null;
}

export interface LookHow {
  /** Sigma of the softening, share of the long side. */
  squint: number;
  /** The painting alone, squared; else the photo in its own frame. */
  squared?: boolean;
  /** In the light it was posted in, whatever cards there are. */
  asPosted?: boolean;
}

/** What to ask the line for. @param pictureId Null = nothing. */
export function useLookWish(
  pictureId: string | null,
  { squint, squared = false, asPosted = false }: LookHow,
): LookWish | null {
  const { board, photoOf } = useBoardLive();
  const isPainting = board.pictures.some(({ id, kind }) => id === pictureId && kind === 'painting');
  const photo = pictureId && isPainting && !asPosted ? photoOf(pictureId) : UNCORRECTED;
  return useMemo(
    () => (pictureId ? { boardId: board.id, pictureId, as: { photo, squared, squint } } : null),
    [board.id, pictureId, photo, squared, squint],
  );
}

export interface LookShown {
  /** Null until they are there. */
  pixels: LookPixels | null;
  /** They could not be had. */
  failed: boolean;
}

const NOTHING: LookShown = { pixels: null, failed: false };

/** @param pictureId Null = nothing is wanted. */
export function useLookPixels(pictureId: string | null, how: LookHow): LookShown {
  const { line } = useLooking();
  const wish = useLookWish(pictureId, how);
  const [shown, setShown] = useState<LookShown & { pictureId: string | null }>({
    ...NOTHING,
    pictureId: null,
  });
  useEffect(() => {
    if (!wish) return;
    let wanted = true;
    const show = (answer: LookShown) => wanted && setShown({ ...answer, pictureId: wish.pictureId });
    line.pixels(wish).then(
      (pixels) => show({ pixels, failed: false }),
      () => show({ pixels: null, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, [line, wish]);
  return shown.pictureId === pictureId ? shown : NOTHING;
}

export interface ValuesOf {
  shown: LookShown;
  cuts: readonly number[];
  /** Darkest to lightest; null until the pixels are there. */
  groups: readonly ValueGroup[] | null;
  /** Under which the cuts are kept when they are moved. */
  key: string;
  moved: boolean;
}

/**
 * One picture in values.
 * @param leadId The picture whose starting cuts serve both when both are cut alike.
 */
export function useValuesOf(pictureId: string | null, leadId: string | null): ValuesOf {
  const { valuesShown, valueNumber, sameCuts } = useLooking();
  const { movedCuts } = useMovedCuts();
  const how = { squint: useSquint() ?? LEAST_SQUINT, squared: true };
  const shown = useLookPixels(valuesShown ? pictureId : null, how);
  const lead = useLookPixels(valuesShown && sameCuts ? leadId : null, how);
  const key = `${sameCuts ? 'both' : pictureId}/${valueNumber}`;
  const kept = movedCuts.get(key);
  const counts = (sameCuts ? lead : shown).pixels?.counts;
  const cuts = useMemo(
    () => kept ?? (counts ? startingCuts(counts, valueNumber) : []),
    [kept, counts, valueNumber],
  );
  const own = shown.pixels?.counts;
  const groups = useMemo(() => (own && cuts.length > 0 ? valueGroups(own, cuts) : null), [own, cuts]);
  return { shown, cuts, groups, key, moved: kept !== undefined };
}
