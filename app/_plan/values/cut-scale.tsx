'use client';
/** The grey scale with the cuts of a plan, and over it how much of the picture lies where. In the flow: values-panel -> [cut-scale]. */
import { useEffect, useRef } from 'react';
import { GreyScale } from '#app/_look/grey-scale.tsx';
import { Heights } from '#app/_look/heights.tsx';
import { LEAST_APART, withMovedCut } from '#server/core/look/value-groups.ts';
import type { ValueNumber } from '#server/core/look/value-numbers.ts';
import type { PlannedValues } from '#server/core/look/value-plan.ts';
import { lookWords } from '#words/look.ts';
import { valueWords as words } from '#words/plan-values.ts';
import type { ValuePlans } from './use-value-plans.ts';
import styles from './values.module.css';

/** Keys that come faster than this are one step, milliseconds. */
const REST_MS = 600;

interface CutScaleProps {
  count: ValueNumber;
  plans: ValuePlans;
  plan: PlannedValues;
  counts: Uint32Array | null;
}

export function CutScale({ count, plans, plan: { cuts }, counts }: CutScaleProps) {
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const rest = useRef(plans.rest);
  useEffect(() => {
    rest.current = plans.rest;
  });
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      rest.current();
    },
    [],
  );
  const restSoon = (afterMs: number) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => rest.current(), afterMs);
  };
  const names = lookWords.values.names[count];
  const handles = cuts.map((at, index) => ({
    at,
    label: words.cut(names[index] ?? '', names[index + 1] ?? ''),
    text: words.cutAt(at),
    least: (cuts[index - 1] ?? 0) + LEAST_APART,
    most: (cuts[index + 1] ?? 100) - LEAST_APART,
  }));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame.
    <div
      role="group"
      aria-label={words.cuts}
      className={styles.scale}
      onPointerUp={() => restSoon(0)}
      onKeyUp={() => restSoon(REST_MS)}
    >
      <Heights counts={counts} />
      <GreyScale
        handles={handles}
        step={1}
        onMove={(index, lightness) => plans.pull(count, withMovedCut(cuts, index, lightness))}
      />
    </div>
  );
}
