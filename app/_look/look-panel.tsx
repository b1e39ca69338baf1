'use client';
/**
 * What stands in the ladder's place while one looks: ways of looking, values, patches, or a guess.
 *
 * In the flow: workspace -> [look panel] -> one panel. Another tool of the hand brings the ladder back.
 */
import { useEffect, useState } from 'react';
import { useTools } from '#app/_workspace/tools.tsx';
import { GuessPanel } from './guess-panel.tsx';
import { useLooking } from './look-state.tsx';
import { PatchPanel } from './patch-panel.tsx';
import { ScreenCheck } from './screen-check.tsx';
import { useOpenPanel } from './use-panel-switches.ts';
import { ValuesPanel } from './values-panel.tsx';
import { WaysPanel } from './ways-panel.tsx';

const PANELS = { ways: WaysPanel, values: ValuesPanel, patch: PatchPanel, guess: GuessPanel };

/** @param className Of the place it takes. */
export function LookPanel({ className }: { className: string | undefined }) {
  const open = useOpenPanel();
  useGivesWay();
  const Panel = open ? PANELS[open] : null;
  return (
    <>
      {Panel ? (
        <div className={className} id="panel-looking">
          <Panel />
        </div>
      ) : null}
      <ScreenCheck />
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
