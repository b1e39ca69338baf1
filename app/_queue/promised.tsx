'use client';
/** The promised day of a look: said, given, changed, taken back; and that the look was given. In the flow: row, board -> [promised] -> server. */
import { type FormEvent, useId, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { answerAsk, promiseDay } from '#app/_api/own-time.ts';
import { Button, type ButtonWeight } from '#app/_ui/button.tsx';
import type { AskView } from '#server/core/contract/own-time.ts';
import { dayAfter, dayOf, suggestedDay } from '#server/core/own-time/days.ts';
import { calledBy, dayWords, queueWords } from '#words/queue.ts';
import styles from './promised.module.css';

const { promise: words } = queueWords;

interface PromisedProps {
  boardId: string;
  ask: AskView;
  now: Date;
  /** Person id of who reads it. */
  meId: string;
  changed(): Promise<void>;
}

/** What is promised, in words, and a way to promise a day or another one. */
export function Promised({ boardId, ask, now, meId, changed }: PromisedProps) {
  const [choosing, setChoosing] = useState(false);
  const today = dayOf(now);
  return (
    <>
      <span>{promisedWords(ask, today, meId)}</span>{' '}
      {choosing ? (
        <DayForm {...{ boardId, ask, today, changed }} close={() => setChoosing(false)} />
      ) : (
        <button type="button" className={styles.word} onClick={() => setChoosing(true)}>
          {ask.promisedFor === null ? words.give : words.other}
        </button>
      )}
    </>
  );
}

function promisedWords({ promisedFor, promisedBy }: AskView, today: string, meId: string): string {
  if (promisedFor === null) return words.none;
  const by = calledBy(promisedBy, meId);
  const day = dayWords(promisedFor, today);
  return promisedFor < today ? words.passed(day, by) : words.promised(day, by);
}

interface DayFormProps extends Omit<PromisedProps, 'now' | 'meId'> {
  today: string;
  close(): void;
}

function DayForm({ boardId, ask, today, changed, close }: DayFormProps) {
  const standing = ask.promisedFor !== null && ask.promisedFor >= today ? ask.promisedFor : null;
  const [day, setDay] = useState(standing ?? suggestedDay(today));
  const { busy, trouble, run } = useRun(changed);
  const id = useId();
  const keep = (next: string | null) =>
    void run(async () => {
      await promiseDay(boardId, ask.id, next);
      close();
    });
  return (
    <form
      className={styles.form}
      onSubmit={(event: FormEvent) => {
        event.preventDefault();
        keep(day);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <label htmlFor={id}>{words.day}</label>
      <input
        id={id}
        type="date"
        required
        // biome-ignore lint/a11y/noAutofocus: the person just asked to choose a day.
        autoFocus
        min={today}
        max={dayAfter(today, 366)}
        value={day}
        aria-describedby={`${id}-usual`}
        onChange={(event) => setDay(event.target.value)}
      />
      <Button type="submit" busy={busy}>
        {words.keep}
      </Button>
      {ask.promisedFor === null ? null : (
        <Button weight="word" disabled={busy} onClick={() => keep(null)}>
          {words.takeBack}
        </Button>
      )}
      <Button weight="word" onClick={close}>
        {queueWords.cancel}
      </Button>
      <span id={`${id}-usual`} className={styles.usual}>
        {words.usual}
      </span>
      <span role="alert">{trouble}</span>
    </form>
  );
}

interface LookedAtProps extends Omit<PromisedProps, 'now' | 'meId'> {
  weight?: ButtonWeight;
}

/** Says that the look was given. */
export function LookedAt({ boardId, ask, changed, weight = 'quiet' }: LookedAtProps) {
  const { busy, trouble, run } = useRun(changed);
  return (
    <>
      <Button
        weight={weight}
        busy={busy}
        busyWord={words.answering}
        onClick={() => void run(() => answerAsk(boardId, ask.id))}
      >
        {words.answered}
      </Button>
      <span role="alert">{trouble}</span>
    </>
  );
}

/** Runs a call to the server and then looks again, also where it was refused: somebody may have been faster. */
function useRun(changed: () => Promise<void>) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const run = async (act: () => Promise<unknown>) => {
    setBusy(true);
    setTrouble(null);
    try {
      await act();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    await changed();
    setBusy(false);
  };
  return { busy, trouble, run };
}
