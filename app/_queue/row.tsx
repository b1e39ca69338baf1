'use client';
/**
 * One painting that waits: what it looks like, what was asked, what was said last time and whether it was tried.
 *
 * In the flow: queue -> [row] -> the board, opened on that painting.
 */
import { pictureAddress } from '#app/_api/client.ts';
import { buttonClass } from '#app/_ui/button.tsx';
import type { LastTime, QueueRow, SaidThen } from '#server/core/contract/own-time.ts';
import { pathWords } from '#words/path.ts';
import { calledBy, momentWords, queueWords, sinceWords } from '#words/queue.ts';
import { statesWords } from '#words/states.ts';
import { boardOn } from './board-on.ts';
import { LookedAt, Promised } from './promised.tsx';
import styles from './queue.module.css';

const { row: words, states } = queueWords;

interface RowProps {
  row: QueueRow;
  now: Date;
  meId: string;
  /** The row may stand elsewhere now, or be gone. */
  changed(): Promise<void>;
}

export function Row({ row, now, meId, changed }: RowProps) {
  const { ask, board, painting, intention, last, repeated } = row;
  const painter = ask.askedBy.name;
  const titleId = `ask-${ask.id}`;
  return (
    <article className={styles.row} aria-labelledby={titleId}>
      <Pictures row={row} />
      <div className={styles.body}>
        <div>
          <h3 id={titleId}>
            <a href={boardOn(board.id, painting.id)}>{words.of(painter, painting.caption)}</a>
          </h3>
          <p className={styles.quiet}>{words.on(board.title, painting.states)}</p>
        </div>
        <div>
          {queueWords.promise.waits(sinceWords(ask.askedAt, now), calledBy(ask.askedOf, meId))}{' '}
          <Promised boardId={board.id} {...{ ask, now, meId, changed }} />
        </div>
        {ask.words ? (
          <p>
            <span className={styles.label}>{words.asked}</span> {queueWords.quoted(ask.words)}
          </p>
        ) : null}
        {intention ? (
          <p>
            <span className={styles.label}>{words.about}</span> {intention}
          </p>
        ) : null}
        {last || row.news ? <Said last={last} now={now} /> : <p className={styles.quiet}>{words.nothing}</p>}
        {repeated.length > 0 ? (
          <ul className={styles.repeated}>
            {repeated.map((each) => (
              <li key={each.id}>{words.repeated(each)}</li>
            ))}
          </ul>
        ) : null}
        {last || row.news ? <News row={row} now={now} /> : null}
        {row.saidSince ? <p className={styles.strong}>{words.saidSince}</p> : null}
        <p>
          <a href={`/path?person=${encodeURIComponent(ask.askedBy.id)}`}>{pathWords.linkOf(painter)}</a>
          {painting.states > 1 ? (
            <>
              {' · '}
              <a href={`/boards/${board.id}/paintings/${painting.id}`}>{statesWords.link}</a>
            </>
          ) : null}
        </p>
        <p className={styles.acts}>
          <a
            className={buttonClass('main')}
            href={boardOn(board.id, painting.id)}
            aria-label={words.openThis(painter)}
          >
            {words.open}
          </a>
          <LookedAt boardId={board.id} ask={ask} changed={changed} />
        </p>
      </div>
    </article>
  );
}

function Pictures({ row: { ask, board, painting, referenceId } }: { row: QueueRow }) {
  return (
    <a className={styles.pictures} href={boardOn(board.id, painting.id)} tabIndex={-1}>
      {/* biome-ignore lint/performance/noImgElement: our own rendition; Next's image part would shift its colours. */}
      <img
        src={pictureAddress(board.id, painting.id, 640)}
        alt={words.picture(ask.askedBy.name)}
        loading="lazy"
      />
      {referenceId ? (
        // biome-ignore lint/performance/noImgElement: as above.
        <img src={pictureAddress(board.id, referenceId, 640)} alt={words.reference} loading="lazy" />
      ) : null}
    </a>
  );
}

function Said({ last, now }: { last: LastTime | null; now: Date }) {
  if (!last) return <p className={styles.quiet}>{words.nothingLast}</p>;
  const said = [...last.cards, ...last.remarks];
  return (
    <div>
      <p className={styles.label}>{words.last(momentWords(last.at, now), last.sameState)}</p>
      <ul className={styles.said}>
        {said.map((each) => (
          <li key={each.key}>
            <span>{saidWords(each)}</span> <span className={styles.state}>{states[each.state]}</span>
            {each.answer ? <span className={styles.quiet}> {queueWords.quoted(each.answer)}</span> : null}
            {each.went ? <span> {words.went(each.went)}</span> : null}
          </li>
        ))}
      </ul>
    </div>
  );
}

function saidWords({ where, words: said }: SaidThen): string {
  return where ? `${where}: ${said}` : said;
}

function News({ row: { news }, now }: { row: QueueRow; now: Date }) {
  if (!news) return <p className={styles.quiet}>{words.never}</p>;
  const when = momentWords(news.lookedAt, now);
  const came = words.newsOf(news);
  return (
    <p className={came ? undefined : styles.quiet}>{came ? words.news(when, came) : words.noNews(when)}</p>
  );
}
