'use client';
/** Under the pictures of a board without planes: that they can be found. In the flow: easel bar -> [find-offer] -> desk. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { proposeWords as words } from '#words/propose.ts';
import styles from './propose.module.css';
import { useProposeDesk } from './propose-desk.tsx';
import { useFindTargets } from './use-find-targets.ts';

export function FindOffer() {
  const { planes, ready } = useBoardLive();
  const { ask, choosing } = useProposeDesk();
  const targets = useFindTargets();
  if (!ready || planes.length > 0 || targets.length === 0 || choosing) return null;
  return (
    <div className={styles.offer}>
      <Button weight="main" aria-keyshortcuts="F" onClick={ask}>
        {words.find}
      </Button>
      <p>{words.offer}</p>
    </div>
  );
}
