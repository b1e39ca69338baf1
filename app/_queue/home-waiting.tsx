'use client';
/** On the page of boards: how much waits for this person and till when, and what they asked for themselves. In the flow: home page -> [home-waiting]. */
import Link from 'next/link';
import type { AskView, OwnAsk, WaitingView } from '#server/core/contract/own-time.ts';
import { dayOf } from '#server/core/own-time/days.ts';
import { dayWords, momentWords, queueWords, sinceWords } from '#words/queue.ts';
import { boardOn } from './board-on.ts';
import styles from './home-waiting.module.css';
import { useNow } from './use-now.ts';

const { home: words } = queueWords;

export function HomeWaiting({ waiting: { teaches, count, firstDay, own } }: { waiting: WaitingView }) {
  const now = useNow();
  // Where nothing waits nothing is said: the boards come first.
  const waits = teaches && count > 0;
  if (!now || (!waits && own.length === 0)) return null;
  return (
    <section className={styles.waiting} aria-label={words.label}>
      {waits ? (
        <p className={styles.line}>
          {`${words.waits(count)}, ${firstWords(count, firstDay, dayOf(now))}.`}{' '}
          <Link href="/queue">{words.open}</Link>
        </p>
      ) : null}
      {own.length > 0 ? (
        <ul>
          {own.map((each) => (
            <li key={each.ask.id}>
              <a href={boardOn(each.board.id, each.ask.pictureId)}>{ownWords(each, now)}</a>
            </li>
          ))}
        </ul>
      ) : null}
    </section>
  );
}

function firstWords(count: number, day: string | null, today: string): string {
  if (day === null) return words.noDay;
  const said = dayWords(day, today);
  if (day < today) return count === 1 ? words.passedOne(said) : words.passed(said);
  return count === 1 ? words.firstOne(said) : words.first(said);
}

function ownWords({ ask, board }: OwnAsk, now: Date): string {
  const { title } = board;
  if (ask.answeredAt !== null) return answered(ask, title, now);
  if (ask.promisedFor === null) return words.own.waiting(title, sinceWords(ask.askedAt, now));
  return words.own.promised(title, dayWords(ask.promisedFor, dayOf(now)));
}

function answered({ answeredAt, answeredBy }: AskView, title: string, now: Date): string {
  return words.own.answered(title, answeredBy?.name ?? '', momentWords(answeredAt ?? '', now));
}
