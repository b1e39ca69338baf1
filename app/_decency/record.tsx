/** What was done to others, and what was deleted by itself, newest first. */

import { dateTime } from '#app/_words/figures.ts';
import type { RecordView } from '#server/core/contract/decency.ts';
import { decencyWords } from '#words/decency.ts';
import styles from './decency.module.css';

const { record: words } = decencyWords;

export function Record({ record: { audit, deletions } }: { record: RecordView }) {
  return (
    <>
      <section className={styles.part}>
        <h2>{words.title}</h2>
        <p className={styles.quiet}>{audit.length === 0 ? words.none : words.note}</p>
        <ul className={styles.record}>
          {audit.map(({ id, at, sentence }) => (
            <li key={id}>
              <time dateTime={at}>{dateTime(at)}</time>
              {sentence}
            </li>
          ))}
        </ul>
      </section>
      <section className={styles.part}>
        <h2>{words.deletedTitle}</h2>
        {deletions.length === 0 ? <p className={styles.quiet}>{words.deletedNone}</p> : null}
        <ul className={styles.record}>
          {deletions.map(({ id, at, boardTitle, pictures, remarks, whole, reason }) => (
            <li key={id}>
              <time dateTime={at}>{dateTime(at)}</time>
              {words.deleted(boardTitle, pictures, remarks, whole)}: {words.reason[reason]}.
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
