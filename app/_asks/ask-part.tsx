'use client';
/**
 * The look that was asked for at the painting on the easel: its painter asks, reads the promise and withdraws; whoever
 * teaches promises a day and says that they have looked.
 *
 * In the flow: use-asks -> [ask-part] -> server.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useNow } from '#app/_queue/use-now.ts';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { AskView } from '#server/core/contract/own-time.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { statesOf } from '#server/core/own-time/states.ts';
import { may } from '#server/core/permissions/may.ts';
import { calledBy, queueWords, sinceWords } from '#words/queue.ts';
import { answeredWords, promisedWords } from './ask-words.ts';
import styles from './asks.module.css';
import { PainterAsks } from './painter-asks.tsx';
import { useAsks } from './use-asks.ts';

const LookedAt = late(() => import('#app/_queue/promised.tsx').then((module) => module.LookedAt));
const Promised = late(() => import('#app/_queue/promised.tsx').then((module) => module.Promised));
const { ask: words } = queueWords;

/** @param heading Class of the headings in the column that this stands in. */
export function AskPart({ heading }: { heading: string | undefined }) {
  const { board } = useBoardLive();
  const { paintingId } = useTools();
  const { asks, refresh } = useAsks();
  const now = useNow();
  const states = paintingId ? statesOf(board.pictures, paintingId) : [];
  const newest = states.at(-1);
  const ask = asks?.find(({ pictureId }) => states.some(({ id }) => id === pictureId)) ?? null;
  if (!newest || !now || !asks) return null;
  const mine = newest.painter.id === board.me.id && may(board.role, 'ask.make', 'own');
  if (!mine && !ask) return null;
  const part = { ask, now, changed: refresh };
  return (
    <section className={styles.part} aria-labelledby="ask-title">
      <h2 id="ask-title" className={heading}>
        {words.title}
      </h2>
      {mine ? (
        <PainterAsks key={newest.id} painting={newest} {...part} />
      ) : ask ? (
        <Theirs {...part} ask={ask} states={states} />
      ) : null}
    </section>
  );
}

interface TheirsProps {
  ask: AskView;
  states: readonly PictureView[];
  now: Date;
  changed(): Promise<void>;
}

/** Somebody else's asking: whoever teaches here answers it, a guardian reads it. */
function Theirs({ ask, states, now, changed }: TheirsProps) {
  const { board, marks } = useBoardLive();
  if (ask.answeredAt !== null)
    return (
      <>
        <p className={styles.quiet}>{answeredWords(ask, now)}</p>
        {/* Whoever goes through their queue is on the way to the next one. */}
        {may(board.role, 'ask.answer') ? (
          <p>
            <a href="/queue">{queueWords.home.open}</a>
          </p>
        ) : null}
      </>
    );
  const asked = Date.parse(ask.askedAt);
  const said = marks.some(({ author, at, pictureId }) => {
    return author === board.me.id && at >= asked && states.some(({ id }) => id === pictureId);
  });
  return (
    <>
      <p>
        {words.theirs(ask.askedBy.name, sinceWords(ask.askedAt, now), calledBy(ask.askedOf, board.me.id))}
      </p>
      {ask.words ? <p className={styles.words}>{ask.words}</p> : null}
      {may(board.role, 'ask.answer') ? (
        <>
          <div>
            <Promised boardId={board.id} meId={board.me.id} {...{ ask, now, changed }} />
          </div>
          {said ? <p className={styles.strong}>{queueWords.row.saidSince}</p> : null}
          <p>
            <LookedAt boardId={board.id} weight={said ? 'main' : 'quiet'} {...{ ask, changed }} />
          </p>
        </>
      ) : (
        <p>{promisedWords(ask, now)}</p>
      )}
    </>
  );
}
