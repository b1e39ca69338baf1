'use client';
/** A painter's own asking: none yet, waiting, promised, answered. In the flow: ask-part -> [painter-asks] -> server. */
import { type FormEvent, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { askForLook, withdrawAsk } from '#app/_api/own-time.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import { queueWords, sinceWords } from '#app/_words/en-queue.ts';
import type { AskView } from '#server/core/contract/own-time.ts';
import { ASK_LIMIT } from '#server/core/contract/own-time-limits.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { answeredWords, promisedWords } from './ask-words.ts';
import styles from './asks.module.css';

const { ask: words } = queueWords;

interface PainterAsksProps {
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

function AskForm({ painting, ask, changed, close }: PainterAsksProps & { close(): void }) {
  const { board } = useBoardLive();
  const before = ask !== null && ask.answeredAt === null ? ask : null;
  const [of, setOf] = useState(before?.askedOf?.id ?? '');
  const [line, setLine] = useState(before?.words ?? '');
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const teachers = board.members.filter(({ id, role }) => may(role, 'ask.answer') && id !== board.me.id);
  const send = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    try {
      await askForLook(board.id, { picture: painting.id, of: of === '' ? null : of, words: line });
      await changed();
      close();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setBusy(false);
    }
  };
  const name = teachers.find(({ id }) => id === of)?.name ?? null;
  return (
    <form
      className={styles.form}
      onSubmit={send}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <ChoiceField label={words.of} value={of} onChange={(event) => setOf(event.target.value)}>
        <option value="">{words.any}</option>
        {teachers.map((teacher) => (
          <option key={teacher.id} value={teacher.id}>
            {teacher.name}
          </option>
        ))}
      </ChoiceField>
      <TextField
        label={words.words}
        value={line}
        maxLength={ASK_LIMIT}
        trouble={trouble}
        onChange={(event) => setLine(event.target.value)}
      />
      <p className={styles.acts}>
        <Button weight="main" type="submit" busy={busy} busyWord={words.sending}>
          {before ? words.keep : words.send(name)}
        </Button>
        <Button weight="word" onClick={close}>
          {queueWords.cancel}
        </Button>
      </p>
    </form>
  );
}
