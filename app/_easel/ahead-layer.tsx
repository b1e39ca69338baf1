'use client';
/**
 * What lies ahead of the hand on one picture: the line to it, patches that would change planes, the place a finger covers.
 *
 * In the flow: ahead-store -> [ahead-layer] -> screen. Redrawn with every move of the hand, and nothing else with it.
 */
import { useSyncExternalStore } from 'react';
import styles from './ahead.module.css';
import { useEasel } from './easel-state.tsx';
import { Loupe } from './loupe.tsx';
import { BOX, closedPath, openPath } from './shape-path.ts';
import { useStage } from './stage-context.tsx';

const nothing = () => null;

export function AheadLayer() {
  const { ahead: store } = useEasel();
  const { picture, aspect, frame } = useStage();
  const ahead = useSyncExternalStore(store.subscribe, store.get, nothing);
  if (ahead?.pictureId !== picture.id) return null;
  const { line, shape, away, finger } = ahead;
  const path = line ? openPath(line.map(frame.shown), aspect) : '';
  return (
    <>
      <svg
        className={styles.ahead}
        viewBox={`0 0 ${BOX} ${BOX * aspect}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {shape.map((ring, at) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no other name than their place.
            key={at}
            className={styles.patch}
            data-away={away || undefined}
            d={closedPath(ring.map(frame.shown), aspect)}
          />
        ))}
        {path ? (
          <>
            <path className={styles.casing} d={path} />
            <path className={styles.core} d={path} data-ahead="" />
          </>
        ) : null}
      </svg>
      {finger ? <Loupe point={finger} {...(line ? { lines: [line] } : {})} /> : null}
    </>
  );
}
