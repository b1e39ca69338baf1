'use client';
/** Turns values on and off, and the panel of all ways of looking. In the flow: tray, keys, panels -> look state. */
import { useCallback } from 'react';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { type LookPanelName, useLooking } from './look-state.tsx';

/** The panel that is open, or null. The tools of looking bring their own. */
export function useOpenPanel(): LookPanelName | 'patch' | 'guess' | null {
  const { tool } = useTools();
  const { panel } = useLooking();
  return tool === 'patch' || tool === 'guess' ? tool : panel;
}

/** On, the panel of the cuts comes with the values; off, it goes with them. */
export function useValuesSwitch(): (shown: boolean) => void {
  const { setValuesShown, setPanel, panel } = useLooking();
  return useCallback(
    (shown) => {
      setValuesShown(shown);
      if (shown) setPanel('values');
      else if (panel === 'values') setPanel(null);
    },
    [setValuesShown, setPanel, panel],
  );
}

/** Opens the panel, or closes it when it is open. A tool that has a panel of its own is laid down. */
export function useWaysSwitch(): () => void {
  const { tool, setTool } = useTools();
  const { setPanel } = useLooking();
  const open = useOpenPanel();
  return useCallback(() => {
    if (tool === 'patch' || tool === 'guess') setTool('look');
    setPanel(open === 'ways' ? null : 'ways');
  }, [tool, setTool, setPanel, open]);
}
