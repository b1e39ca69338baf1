'use client';
/**
 * The painter's intention stands before any reading: where there is one, cards and readings stay folded until it was
 * opened past once in this browser; where there is none, a calm line asks its painter for it, who may skip that.
 *
 * In the flow: talk -> [intention-first] -> critique. IO: remembers in this browser what was read, and what was skipped.
 */
import { type ReactNode, useCallback, useState, useSyncExternalStore } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { classWords } from '#words/class.ts';
import styles from './talk.module.css';

const { intentionFirst: words } = classWords;
const PREFIX = 'veilstep-intention/';

export function IntentionFirst({ children }: { children: ReactNode }) {
  const { board } = useBoardLive();
  const { paintingId } = useTools();
  const painting = board.pictures.find(({ id }) => id === paintingId);
  if (!painting) return children;
  return (
    <First key={painting.id} pictureId={painting.id} mine={painting.painter.id === board.me.id}>
      {children}
    </First>
  );
}

function First({ pictureId, mine, children }: { pictureId: string; mine: boolean; children: ReactNode }) {
  const { intentionOf, focusOf, may } = useBoardLive();
  const [read, remember] = useRemembered(pictureId);
  const said = intentionOf(pictureId).trim() !== '' || focusOf(pictureId) !== null;
  if (said && !mine && !read) {
    return (
      <div className={styles.part}>
        <p className={styles.note}>{words.note}</p>
        <span>
          <Button onClick={remember}>{words.open}</Button>
        </span>
      </div>
    );
  }
  const asks = !said && mine && !read && may.intention(pictureId);
  return (
    <>
      {asks ? (
        <p className={styles.note}>
          {words.ask}{' '}
          <button type="button" className={styles.word} onClick={remember}>
            {words.skip}
          </button>
        </p>
      ) : null}
      {children}
    </>
  );
}

/** Whether this painting was gone past already; true while the page is drawn on the server, where nothing is known. */
function useRemembered(pictureId: string): [boolean, () => void] {
  const [now, setNow] = useState(false);
  const kept = useSyncExternalStore(
    () => () => {},
    () => isKept(pictureId),
    () => true,
  );
  const remember = useCallback(() => {
    setNow(true);
    try {
      localStorage.setItem(PREFIX + pictureId, 'read');
    } catch {
      // Storage may be switched off; it then lasts as long as the page.
    }
  }, [pictureId]);
  return [now || kept, remember];
}

function isKept(pictureId: string): boolean {
  try {
    return localStorage.getItem(PREFIX + pictureId) !== null;
  } catch {
    return false;
  }
}
