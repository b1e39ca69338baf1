'use client';
/**
 * The plans in two to five values of what is chosen: their cuts as they were moved, and how one moves them.
 *
 * In the flow: value picture + setup room -> [use-value-plans] -> values panel. Cuts follow the hand on this screen and are
 * written when it rests, so that one pull is one step.
 */
import { useMemo, useState } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import { readValues, setValueCount, setValueCuts, type ValuePlan } from '#server/core/live/plan/values.ts';
import { VALUE_NUMBERS, type ValueNumber } from '#server/core/look/value-numbers.ts';
import { type PlannedValues, plannedValues, type ValuePicture } from '#server/core/look/value-plan.ts';

const plans = new PerDocument((doc, id) => readValues(doc, id));
const NOTHING: ValuePlan = { count: null, cuts: new Map() };

/** Cuts under the hand, or moved by somebody who may not write. */
interface Pulled {
  id: string;
  cuts: ReadonlyMap<ValueNumber, readonly number[]>;
}

export interface ValuePlans {
  /** The number that was settled on, or null. */
  settled: ValueNumber | null;
  settle(count: ValueNumber | null): void;
  /** Null until the values are there. */
  byNumber: ReadonlyMap<ValueNumber, PlannedValues> | null;
  /** Whether cuts of that number were moved. */
  moved(count: ValueNumber): boolean;
  pull(count: ValueNumber, cuts: readonly number[]): void;
  /** The hand rests: what it pulled is kept. */
  rest(): void;
  afresh(count: ValueNumber): void;
}

/** @param id Of the photograph or of the frame. */
export function useValuePlans(id: string, picture: ValuePicture | null): ValuePlans {
  const doc = useRoomDocument('setup');
  const { may } = useBoardLive();
  const kept = doc ? plans.of(doc, id) : NOTHING;
  const [own, setOwn] = useState<Pulled>({ id, cuts: new Map() });
  const pulled = own.id === id ? own.cuts : NOTHING.cuts;
  const byNumber = useMemo(() => {
    if (!picture) return null;
    return new Map(
      VALUE_NUMBERS.map((count) => {
        const cuts = pulled.get(count) ?? kept.cuts.get(count) ?? null;
        return [count, plannedValues(picture, count, cuts)] as const;
      }),
    );
  }, [picture, pulled, kept]);
  return {
    settled: kept.count,
    settle: (count) => doc && setValueCount(doc, id, count),
    byNumber,
    moved: (count) => pulled.has(count) || kept.cuts.has(count),
    pull: (count, cuts) => setOwn({ id, cuts: new Map([...pulled, [count, cuts]]) }),
    rest() {
      if (!doc || !may.setup || pulled.size === 0) return;
      for (const [count, cuts] of pulled) setValueCuts(doc, id, count, cuts);
      setOwn({ id, cuts: new Map() });
    },
    afresh(count) {
      setOwn({ id, cuts: new Map([...pulled].filter(([number]) => number !== count)) });
      if (doc && may.setup && kept.cuts.has(count)) setValueCuts(doc, id, count, null);
    },
  };
}
