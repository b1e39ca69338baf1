'use client';
/**
 * What waits for this person: what was promised for days gone by first, then by promised day, then what waits without
 * one; what somebody else was asked for by name comes last.
 *
 * In the flow: use-queue -> [queue] -> rows. Place and words tell how long it waits, never a colour.
 */
import Link from 'next/link';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { QueueRow } from '#server/core/contract/own-time.ts';
import { dayOf } from '#server/core/own-time/days.ts';
import { queueWords } from '#words/queue.ts';
import styles from './queue.module.css';
import { Row } from './row.tsx';
import { useNow } from './use-now.ts';
import { useQueue } from './use-queue.ts';

const { page: words } = queueWords;

const GROUPS = ['passed', 'today', 'promised', 'open', 'others'] as const;

function groupOf({ ask, forMe }: QueueRow, today: string): (typeof GROUPS)[number] {
  if (!forMe) return 'others';
  if (ask.promisedFor === null) return 'open';
  if (ask.promisedFor === today) return 'today';
  return ask.promisedFor < today ? 'passed' : 'promised';
}

export function Queue() {
  const { queue, trouble, refresh } = useQueue();
  const now = useNow();
  const rows = queue?.rows ?? [];
  return (
    <>
      <div className={styles.head}>
        <h1>{words.title}</h1>
        {rows.length > 0 ? <p className={styles.lead}>{words.lead}</p> : null}
      </div>
      {trouble ? (
        <Notice trouble sentence={trouble}>
          <Button onClick={() => void refresh()}>{words.again}</Button>
        </Notice>
      ) : null}
      {queue === null || now === null ? (
        trouble ? null : (
          <p role="status">{words.loading}</p>
        )
      ) : rows.length === 0 ? (
        <Nothing teaches={queue.teaches} />
      ) : (
        GROUPS.map((group) => {
          const those = rows.filter((row) => groupOf(row, dayOf(now)) === group);
          return those.length === 0 ? null : (
            <section key={group} className={styles.group} aria-labelledby={`waits-${group}`}>
              <h2 id={`waits-${group}`}>{words[group]}</h2>
              <ol className={styles.rows}>
                {those.map((row) => (
                  <li key={row.ask.id}>
                    <Row row={row} now={now} meId={queue.meId} changed={refresh} />
                  </li>
                ))}
              </ol>
            </section>
          );
        })
      )}
    </>
  );
}

function Nothing({ teaches }: { teaches: boolean }) {
  return (
    <div className={styles.nothing}>
      {teaches ? <p className={styles.lead}>{words.none}</p> : null}
      <p>{teaches ? words.noneHow : words.notTeacher}</p>
      <p>
        <Link href="/">{words.back}</Link>
      </p>
    </div>
  );
}
