'use client';
/**
 * In the list of boards: what came to each since this person last looked.
 *
 * In the flow: /api/since, once a page -> [NewsOfBoards] -> a line under each title. IO: HTTP.
 */
import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';
import { fetchNewsOfBoards } from '#app/_api/own-time.ts';
import { useNow } from '#app/_queue/use-now.ts';
import type { NewsLine } from '#server/core/contract/own-time.ts';
import { momentWords, newsWords, queueWords } from '#words/queue.ts';
import styles from './since.module.css';

const NewsContext = createContext<Record<string, NewsLine>>({});

export function NewsOfBoards({ children }: { children: ReactNode }) {
  const [lines, setLines] = useState<Record<string, NewsLine>>({});
  useEffect(() => {
    let here = true;
    fetchNewsOfBoards().then(
      (found) => here && setLines(found),
      // The list of boards is whole without it.
      () => undefined,
    );
    return () => {
      here = false;
    };
  }, []);
  return <NewsContext value={lines}>{children}</NewsContext>;
}

/** Nothing where nothing came. */
export function BoardNewsLine({ boardId }: { boardId: string }) {
  const line = useContext(NewsContext)[boardId];
  const now = useNow();
  if (!line || !now) return null;
  return (
    <p className={styles.fresh}>
      {queueWords.since.line(momentWords(line.lookedAt, now), newsWords(line.pictures))}
    </p>
  );
}
