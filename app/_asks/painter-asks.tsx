'use client';
/** A painter's own asking: none yet, waiting, promised, answered. In the flow: ask-part -> [painter-asks] -> server. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { withdrawAsk } from '#app/_api/own-time.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { late } from '#app/_ui/late.tsx';
import type { AskView } from '#server/core/contract/own-time.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { queueWords, sinceWords } from '#words/queue.ts';
import { answeredWords, promisedWords } from './ask-words.ts';
import styles from './asks.module.css';

const AskForm = late(() => import('./ask-form.tsx').then((module) => module.AskForm));
const { ask: words } = queueWords;

export interface PainterAsksProps {
  painting: PictureView;
  ask: AskView | null;
  now: Date;
  changed(): Promise<void>;
}

export function PainterAsks(props: PainterAsksProps) {
  const { ask, now } = props;
  const [writing, setWriting] = useState(false);
  const waits = ask !== null && ask.answeredAt === null;
  if (writing) return <AskForm {...props} close={() => setWriting(false)} />;
  return (
    <>
      {ask ? <p>{waits ? mineWords(ask, now) : answeredWords(ask, now)}</p> : null}
      {waits ? (
        <>
          {ask.words ? <p className={styles.words}>{ask.words}</p> : null}
          <p className={styles.strong}>{promisedWords(ask, now)}</p>
          <p className={styles.quiet}>{words.goesOn}</p>
          <Waiting {...props} ask={ask} change={() => setWriting(true)} />
        </>
      ) : (
        <p>
          <Button onClick={() => setWriting(true)}>{ask ? words.beginAgain : words.begin}</Button>
        </p>
      )}
    </>
  );
}

function mineWords({ askedAt, askedOf }: AskView, now: Date): string {
  return words.mine(sinceWords(askedAt, now), askedOf?.name ?? null);
}

function Waiting({ ask, changed, change }: PainterAsksProps & { ask: AskView; change(): void }) {
  const { board } = useBoardLive();
  const [trouble, setTrouble] = useState<string | null>(null);
  const withdraw = async () => {
    try {
      await withdrawAsk(board.id, ask.id);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    await changed();
  };
  return (
    <p className={styles.acts}>
      <button type="button" className={styles.word} onClick={change}>
        {words.change}
      </button>
      <button type="button" className={styles.word} onClick={() => void withdraw()}>
        {words.withdraw}
      </button>
      <span role="alert">{trouble}</span>
    </p>
  );
}
