'use client';
/**
 * The pixels, values and cuts of a picture for the looking tools, worked out when they are first wanted.
 *
 * In the flow: what is asked of a picture -> [use-look-pixels] -> value map, scales, patches.
 */
import { useEffect, useMemo, useState } from 'react';
import { startingCuts } from '#server/core/look/starting-cuts.ts';
import { type ValueGroup, valueGroups } from '#server/core/look/value-groups.ts';
import type { LookPixels } from './look-pixels.ts';
import { useLooking, useMovedCuts } from './look-state.tsx';
import { LEAST_SQUINT, type LookHow, useLookWish, useSquint } from './use-squint.ts';

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
