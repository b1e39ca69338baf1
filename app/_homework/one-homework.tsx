'use client';
/**
 * One piece of homework: what there is to try and till when, whether it is in, a slot to post it, what whoever set it may
 * do with it.
 *
 * In the flow: homework -> [one-homework] -> server.
 */
import { useState } from 'react';
import { changeHomework, takeHomeworkBack } from '#app/_api/homework.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { type HomeworkView, MOST_HOMEWORK_DAYS } from '#server/core/contract/homework.ts';
import { dayAfter, dayOf } from '#server/core/own-time/days.ts';
import { may } from '#server/core/permissions/may.ts';
import { homeworkWords as words } from '#words/homework.ts';
import { dayWords, sinceWords } from '#words/queue.ts';
import { AnswerSlot } from './answer-slot.tsx';
import styles from './homework.module.css';
import { useAct } from './use-act.ts';

interface OneHomeworkProps {
  homework: HomeworkView;
  now: Date;
  changed(): Promise<void>;
}

export function OneHomework({ homework, now, changed }: OneHomeworkProps) {
  const { board } = useBoardLive();
  const { painter, setBy, answer, closedAt, check } = homework;
  const mine = painter.id === board.me.id;
  const own = mine && setBy.id === board.me.id;
  return (
    <div className={styles.one}>
      <p className={styles.words}>{homework.words}</p>
      {check ? (
        <p>
          <span className={styles.label}>{words.checkLabel}</span> {check}
        </p>
      ) : null}
      <p className={styles.quiet}>
        <Till homework={homework} now={now} /> {setBy.id === board.me.id ? words.mine : words.by(setBy.name)}
      </p>
      {answer ? <IsIn pictureId={answer.pictureId} when={sinceWords(answer.at, now)} /> : null}
      {answer || closedAt || mine ? null : <p className={styles.quiet}>{words.notIn}</p>}
      {closedAt ? <p className={styles.quiet}>{words.closed}</p> : null}
      {mine && !closedAt && may(board.role, 'homework.answer', 'own') && may(board.role, 'painting.post') ? (
        <AnswerSlot boardId={board.id} homework={homework} changed={changed} />
      ) : null}
      {may(board.role, 'homework.change', own ? 'own' : 'other') ? (
        <Changes homework={homework} now={now} changed={changed} />
      ) : null}
    </div>
  );
}

/** For which day; once it has passed, that it may take its time. */
function Till({ homework: { dueOn, answer }, now }: Pick<OneHomeworkProps, 'homework' | 'now'>) {
  const today = dayOf(now);
  const day = dayWords(dueOn, today);
  return dueOn < today && !answer ? words.passed(day) : words.forDay(day);
}

function IsIn({ pictureId, when }: { pictureId: string; when: string }) {
  const { setPaintingId, setSide } = useTools();
  return (
    <p>
      {words.isIn(when)}{' '}
      <button
        type="button"
        className={styles.word}
        onClick={() => {
          setPaintingId(pictureId);
          setSide('painting');
        }}
      >
        {words.see}
      </button>
    </p>
  );
}

function Changes({ homework, now, changed }: OneHomeworkProps) {
  const { board } = useBoardLive();
  const { id, closedAt } = homework;
  const [moving, setMoving] = useState(false);
  const { busy, trouble, act } = useAct(changed);
  const close = (closed: boolean) => void act(() => changeHomework(board.id, id, { closed }));
  if (moving) return <Move {...{ homework, now, changed }} close={() => setMoving(false)} />;
  const tools: [string, () => void, boolean][] = [
    [words.move, () => setMoving(true), closedAt === null],
    [words.close, () => close(true), closedAt === null],
    [words.open, () => close(false), closedAt !== null],
    [words.takeBack, () => void act(() => takeHomeworkBack(board.id, id)), true],
  ];
  return (
    <p className={styles.acts}>
      {tools.map(([word, doing, offered]) =>
        offered ? (
          <button key={word} type="button" className={styles.word} disabled={busy} onClick={doing}>
            {word}
          </button>
        ) : null,
      )}
      <span role="alert">{trouble}</span>
    </p>
  );
}

/** Days compare as text. */
function notBefore(day: string, today: string): string {
  if (day < today) return today;
  return day;
}

function Move({ homework, now, changed, close }: OneHomeworkProps & { close(): void }) {
  const { board } = useBoardLive();
  const today = dayOf(now);
  const [day, setDay] = useState(notBefore(homework.dueOn, today));
  const { busy, trouble, act } = useAct(changed);
  return (
    <form
      className={styles.acts}
      onSubmit={async (event) => {
        event.preventDefault();
        if (await act(() => changeHomework(board.id, homework.id, { dueOn: day }))) close();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <input
        type="date"
        required
        // biome-ignore lint/a11y/noAutofocus: the person just asked to choose a day.
        autoFocus
        aria-label={words.day}
        className={styles.day}
        min={today}
        max={dayAfter(today, MOST_HOMEWORK_DAYS)}
        value={day}
        onChange={(event) => setDay(event.target.value)}
      />
      <Button type="submit" busy={busy}>
        {words.keepDay}
      </Button>
      <Button weight="word" onClick={close}>
        {words.cancel}
      </Button>
      <span role="alert">{trouble}</span>
    </form>
  );
}
