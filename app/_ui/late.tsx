'use client';
/**
 * A part of the page whose script comes only when it is first shown, so that the board itself opens sooner.
 *
 * When the script cannot be fetched (the line is down), the part says so and offers another try; nothing else on the
 * page is disturbed. IO: loads a script.
 */
import { type ComponentType, useCallback, useEffect, useState } from 'react';
import { words } from '#app/_words/en.ts';
import { Button } from './button.tsx';
import { Notice } from './notice.tsx';

/** @param load For example `() => import('./table.tsx').then(({ MeasureTable }) => MeasureTable)`. */
export function late<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  let loaded: ComponentType<Props> | null = null;
  // biome-ignore lint/correctness/noComponentHookFactories: called once a part, at the head of a module.
  return function Late(props: Props) {
    const [Part, setPart] = useState<{ part: ComponentType<Props> } | null>(loaded && { part: loaded });
    const [failed, setFailed] = useState(false);
    const fetchPart = useCallback(() => {
      setFailed(false);
      load().then(
        (part) => {
          loaded = part;
          setPart({ part });
        },
        () => setFailed(true),
      );
    }, []);
    useEffect(() => {
      if (!loaded) fetchPart();
    }, [fetchPart]);
    if (Part) return <Part.part {...props} />;
    if (!failed) return null;
    return (
      <Notice trouble sentence={words.partMissing}>
        <Button onClick={fetchPart}>{words.tryAgain}</Button>
      </Notice>
    );
  };
}

/** True from the first time on that `now` was: what was shown once stays, with whatever was typed into it. */
export function useEver(now: boolean): boolean {
  const [ever, setEver] = useState(now);
  if (now && !ever) setEver(true);
  return ever || now;
}
