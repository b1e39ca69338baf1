'use client';
/**
 * What everybody saw first in a painting, once it is revealed. In the flow: 101 or the end of the silent look -> HTTP ->
 * [impressions]. IO: HTTP.
 */
import { useEffect, useState } from 'react';
import { fetchImpressions, Refused } from '#app/_api/client.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { ImpressionView } from '#server/core/contract/impressions.ts';
import { classWords } from '#words/class.ts';
import styles from './class.module.css';

const { impression: words } = classWords;

/** @param open Whether they lie open at first; later they fold. */
export function Impressions({ pictureId, open }: { pictureId: string; open: boolean }) {
  const { board, boardChanged } = useBoardLive();
  const [fetched, setFetched] = useState<{ pictureId: string; list: ImpressionView[] } | null>(null);
  const [trouble, setTrouble] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the server says by `boardChanged` that there is more to read.
  useEffect(() => {
    let current = true;
    fetchImpressions(board.id, pictureId).then(
      (list) => {
        if (!current) return;
        setFetched({ pictureId, list });
        setTrouble(false);
      },
      (thrown) => {
        if (!(thrown instanceof Refused)) throw thrown;
        if (current) setTrouble(true);
      },
    );
    return () => {
      current = false;
    };
  }, [board.id, pictureId, boardChanged]);
  const list = fetched?.pictureId === pictureId ? fetched.list : null;
  if (list === null) return trouble ? <p className={styles.note}>{words.trouble}</p> : null;
  return (
    <details className={styles.fold} open={open} key={String(open)}>
      <summary className={styles.title}>{words.all}</summary>
      {list.length === 0 ? <p className={styles.note}>{words.none}</p> : null}
      <ul className={styles.impressions}>
        {list.map(({ person, text }) => (
          <li key={person.id}>
            <p className={styles.words}>{text}</p>
            <p className={styles.note}>{person.id === board.me.id ? words.mine : person.name}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
