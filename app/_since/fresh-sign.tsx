'use client';
/** The quiet sign at a remark that came since this person last looked. In the flow: since-state -> [fresh-sign] -> remark. */
import type { MarkView } from '#app/_live/mark-types.ts';
import { queueWords } from '#words/queue.ts';
import styles from './since.module.css';
import { useSince } from './since-state.tsx';

const { since: words } = queueWords;

export function FreshSign({ mark, replies }: { mark: MarkView; replies: readonly MarkView[] }) {
  const { isFresh } = useSince();
  if (isFresh(mark.id)) return <p className={styles.fresh}>{words.fresh}</p>;
  return replies.some(({ id }) => isFresh(id)) ? <p className={styles.fresh}>{words.freshAnswer}</p> : null;
}
