'use client';
/**
 * What who runs the class reaches for now and then: hold, let everybody mark, come back last, end; and the beginning of a
 * class. Closing and quieting marks stands with looking together. In the flow: [run-controls] -> class room.
 */
import { useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { late } from '#app/_ui/late.tsx';
import type { LiveNow } from '#server/core/class/shapes.ts';
import { toCome } from '#server/core/class/state.ts';
import { classWords } from '#words/class.ts';
import styles from './class.module.css';
import { type RunClass, useRun } from './use-run.ts';

const StartClass = late(() => import('./start-class.tsx').then((module) => module.StartClass));
const { run: words } = classWords;

export function RunControls() {
  const { now } = useBoardLive().class.state;
  const run = useRun();
  if (!run) return null;
  return now ? <DuringTurn run={run} now={now} /> : <Begin />;
}

function DuringTurn({ run, now }: { run: RunClass; now: LiveNow }) {
  const { state } = useBoardLive().class;
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>{words.title}</h2>
      <div className={styles.acts}>
        {now.step === 'priorities' && !now.opened ? <Button onClick={run.letIn}>{words.letIn}</Button> : null}
        <Button onClick={() => run.hold(!now.paused)}>{now.paused ? words.goOn : words.hold}</Button>
        <Button onClick={run.skip} disabled={toCome(state).length === 0}>
          {words.skip}
        </Button>
        <Button onClick={run.nextTurn}>{words.nextTurn}</Button>
        <Button onClick={run.stop}>{words.stop}</Button>
      </div>
    </div>
  );
}

function Begin() {
  const { paintings } = useBoardLive().class;
  const [open, setOpen] = useState(false);
  if (paintings.length === 0) return null;
  return (
    <div className={styles.part}>
      <span>
        <Button onClick={() => setOpen(true)}>{classWords.start.open}</Button>
      </span>
      <Dialog open={open} onClose={() => setOpen(false)} title={classWords.start.title} wide>
        <StartClass onBegun={() => setOpen(false)} />
      </Dialog>
    </div>
  );
}
