'use client';
/**
 * The parts of the plan and their panels, each fetched when it is first shown.
 *
 * In the flow: plan-screen -> [parts] -> frames, weight, values, rearrange, ladder.
 */
import type { ComponentType } from 'react';
import { late } from '#app/_ui/late.tsx';
import { PLAN_PARTS, type PlanPart } from './plan-choice.tsx';

const PANELS: Partial<Record<PlanPart, ComponentType>> = {
  weight: late(() => import('./weight/weight-panel.tsx').then((module) => module.WeightPanel)),
  ladder: late(() => import('./ladder/ladder-panel.tsx').then((module) => module.LadderPanel)),
  frames: late(() => import('./frames/frames-panel.tsx').then((module) => module.FramesPanel)),
  values: late(() => import('./values/values-panel.tsx').then((module) => module.ValuesPanel)),
  rearrange: late(() => import('./rearrange/rearrange-panel.tsx').then((module) => module.RearrangePanel)),
};

/** Parts that have a panel, in the order in which one settles them. */
export const SETTLED: readonly PlanPart[] = PLAN_PARTS.filter((part) => PANELS[part]);

export function PanelOf({ part }: { part: PlanPart }) {
  const Panel = PANELS[part];
  return Panel ? <Panel /> : null;
}
