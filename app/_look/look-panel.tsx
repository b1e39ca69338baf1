'use client';
/**
 * What stands in the ladder's place while one looks: ways of looking, values, patches, or a guess.
 *
 * In the flow: workspace -> [look panel] -> one panel. Another tool of the hand brings the ladder back.
 */
import { useEffect, useState } from 'react';
import { late, useEver } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { useLooking } from './look-state.tsx';
import { useOpenPanel } from './use-panel-switches.ts';

const ScreenCheck = late(() => import('./screen-check.tsx').then((module) => module.ScreenCheck));

const PANELS = {
  ways: late(() => import('./ways-panel.tsx').then((module) => module.WaysPanel)),
  values: late(() => import('./values-panel.tsx').then((module) => module.ValuesPanel)),
  patch: late(() => import('./patch-panel.tsx').then((module) => module.PatchPanel)),
  guess: late(() => import('./guess-panel.tsx').then((module) => module.GuessPanel)),
};

/** @param className Of the place it takes. */
export function LookPanel({ className }: { className: string | undefined }) {
  const open = useOpenPanel();
  const checkAsked = useEver(useLooking().checkOpen);
  useGivesWay();
  const Panel = open ? PANELS[open] : null;
  return (
    <>
      {Panel ? (
        <div className={className} id="panel-looking">
          <Panel />
        </div>
      ) : null}
      {checkAsked ? <ScreenCheck /> : null}
    </>
  );
}

/** Whoever takes a tool that marks or outlines wants to see what goes with it. */
function useGivesWay(): void {
  const { tool } = useTools();
  const { setPanel, setSpot } = useLooking();
  const [before, setBefore] = useState(tool);
  useEffect(() => {
    if (tool === before) return;
    setBefore(tool);
    if (tool !== 'look' && tool !== 'patch' && tool !== 'guess') setPanel(null);
    if (tool !== 'guess') setSpot(null);
  }, [tool, before, setPanel, setSpot]);
}
