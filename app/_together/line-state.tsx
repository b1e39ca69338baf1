'use client';
/**
 * The state of the line, while there is something to say: down since when, what waits to be sent, catching up.
 *
 * In the flow: live board -> [line-state] -> the row under the header. A short drop is not worth a word. Those who
 * listen hear once that the line went and once that it is back; what waits they can read beside it.
 */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { timeOfDay } from '#app/_words/figures.ts';
import { togetherWords } from '#words/together.ts';
import styles from './line-state.module.css';

const words = togetherWords.line;
/** A line that is back sooner is not spoken of. */
const PATIENCE_MS = 2000;
/** How long it is said that the line is back. */
const BACK_MS = 4000;

export function LineState() {
  const { connection, offlineSince, waiting } = useBoardLive();
  const down = useLasting(connection === 'offline' || connection === 'catching-up');
  const back = useJustOver(down);
  const remarks = waiting.filter((entry) => entry.startsWith('marks/')).length;
  const since = offlineSince === null ? '' : timeOfDay(offlineSince);
  return (
    <>
      <p className="unseen" role="status">
        {down ? words.downSaid : back ? words.backSaid : ''}
      </p>
      {down ? (
        <p className={styles.line}>
          {connection === 'catching-up' ? (
            words.catchingUp
          ) : (
            <>
              <span>{words.down(since)}</span> <span>{words.waiting(remarks, waiting.length - remarks)}</span>
            </>
          )}
        </p>
      ) : null}
    </>
  );
}

/** True once `state` has held for a while; false as soon as it is over. */
function useLasting(state: boolean): boolean {
  const [lasting, setLasting] = useState(false);
  useEffect(() => {
    if (!state) {
      setLasting(false);
      return;
    }
    const timer = setTimeout(() => setLasting(true), PATIENCE_MS);
    return () => clearTimeout(timer);
  }, [state]);
  return lasting && state;
}

/** True for a moment after `state` was true. */
function useJustOver(state: boolean): boolean {
  const [was, setWas] = useState(false);
  useEffect(() => {
    if (state) {
      setWas(true);
      return;
    }
    const timer = setTimeout(() => setWas(false), BACK_MS);
    return () => clearTimeout(timer);
  }, [state]);
  return was && !state;
}
