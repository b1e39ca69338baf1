'use client';
/**
 * A part of the page whose script comes only when it is first shown, so that the board itself opens sooner.
 *
 * When the script cannot be fetched (the line is down), the part says so and offers another try; nothing else on the
 * page is disturbed. Once a page is at rest it fetches the other parts one by one (`useRestWhenIdle`), so that a first
 * press need not wait for the line, and works without one. IO: loads scripts.
 */
import { type ComponentType, useCallback, useEffect, useState } from 'react';
import { words } from '#words/shell.ts';
import { Button } from './button.tsx';
import { Notice } from './notice.tsx';
import { REST_MARK } from './rest-mark.ts';

/** Parts that nobody has asked for yet. */
const rest: (() => Promise<unknown>)[] = [];

/** So long after it has loaded, a page still fetches pictures and opens its rooms. */
const REST_AFTER_MS = 1000;
/** On a busy device a part does not wait longer than this for an idle moment: the line may be gone by then. */
const IDLE_WITHIN_MS = 500;

/**
 * @param load For example `() => import('./table.tsx').then(({ MeasureTable }) => MeasureTable)`.
 * @param order `first` for what must work should the line go in the first seconds: fetched before the others.
 */
export function late<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  order?: 'first',
): ComponentType<Props> {
  let loaded: ComponentType<Props> | null = null;
  const fetchOnce = async () => {
    loaded ??= await load();
    return loaded;
  };
  if (order === 'first') rest.unshift(fetchOnce);
  else rest.push(fetchOnce);
  // biome-ignore lint/correctness/noComponentHookFactories: called once a part, at the head of a module.
  return function Late(props: Props) {
    const [Part, setPart] = useState<{ part: ComponentType<Props> } | null>(loaded && { part: loaded });
    const [failed, setFailed] = useState(false);
    const fetchPart = useCallback(() => {
      setFailed(false);
      fetchOnce().then(
        (part) => setPart({ part }),
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

/** For a page as a whole: fetches what it has not shown yet, a part at a time, whenever the browser has nothing to do. */
export function useRestWhenIdle(): void {
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let left = false;
    const next = () => {
      const fetchNext = left ? undefined : rest.shift();
      fetchNext?.().then(
        () => whenIdle(next),
        () => {
          // Without a line it is fetched when it is asked for, or with the others once the line is back.
          rest.unshift(fetchNext);
          window.addEventListener('online', next, { once: true });
        },
      );
    };
    const begin = () => {
      timer = setTimeout(() => {
        performance.mark(REST_MARK);
        whenIdle(next);
      }, REST_AFTER_MS);
    };
    if (document.readyState === 'complete') begin();
    else window.addEventListener('load', begin, { once: true });
    return () => {
      left = true;
      clearTimeout(timer);
      window.removeEventListener('load', begin);
      window.removeEventListener('online', next);
    };
  }, []);
}

/** Some browsers do not say when they are idle; a pause stands in for it. */
function whenIdle(act: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(act, { timeout: IDLE_WITHIN_MS });
  else setTimeout(act, 200);
}

/** True from the first time on that `now` was: what was shown once stays, with whatever was typed into it. */
export function useEver(now: boolean): boolean {
  const [ever, setEver] = useState(now);
  if (now && !ever) setEver(true);
  return ever || now;
}
