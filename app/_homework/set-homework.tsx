'use client';
/** Setting homework: from a card or in free words, for a day, with what is posted for it. In the flow: homework -> [set-homework] -> server. */
import { type FormEvent, useState } from 'react';
import { setHomework } from '#app/_api/homework.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import {
  ANSWERS_AS,
  type AnswerAs,
  HOMEWORK_CHECK_LIMIT,
  HOMEWORK_LIMIT,
  MOST_HOMEWORK_DAYS,
} from '#server/core/contract/homework.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { ShownCard } from '#server/core/live/show-cards.ts';
import { dayAfter, dayOf } from '#server/core/own-time/days.ts';
import { homeworkWords as words } from '#words/homework.ts';
import styles from './homework.module.css';
import { useAct } from './use-act.ts';

interface SetHomeworkProps {
  painting: PictureView;
  cards: readonly ShownCard[];
  /** Whether it is one's own painting. */
  mine: boolean;
  now: Date;
  changed(): Promise<void>;
}

export function SetHomework(props: SetHomeworkProps) {
  const [setting, setSetting] = useState(false);
  if (setting) return <HomeworkForm {...props} close={() => setSetting(false)} />;
  return (
    <p>
      <Button onClick={() => setSetting(true)}>{props.mine ? words.setMine : words.set}</Button>
    </p>
  );
}

/** The next state is usually posted within a week (common practice, no source). */
const USUAL_DAYS = 7;
const OWN = 'own-words';

const said = ({ where, words: { what } }: ShownCard) => `${where}: ${what}`;

function HomeworkForm({ painting, cards, now, changed, close }: SetHomeworkProps & { close(): void }) {
  const { board } = useBoardLive();
  const today = dayOf(now);
  const [from, setFrom] = useState(cards[0]?.key ?? OWN);
  const card = cards.find(({ key }) => key === from);
  const [own, setOwn] = useState('');
  const [check, setCheck] = useState('');
  const [day, setDay] = useState(dayAfter(today, USUAL_DAYS));
  const [chosenAs, setChosenAs] = useState<AnswerAs | null>(null);
  // What a card asks for is done on the painting itself; an exercise mostly beside it.
  const answerAs = chosenAs ?? (card ? 'state' : 'exercise');
  const { busy, trouble, act } = useAct(changed);
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const done = await act(() =>
      setHomework(board.id, {
        picture: painting.id,
        card: card?.key ?? null,
        words: (card ? said(card) : own).slice(0, HOMEWORK_LIMIT),
        check: (card ? card.words.check : check).slice(0, HOMEWORK_CHECK_LIMIT),
        dueOn: day,
        answerAs,
      }),
    );
    if (done) close();
  };
  return (
    <form
      className={styles.form}
      onSubmit={send}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      {cards.length > 0 ? (
        <ChoiceField label={words.from} value={from} onChange={(event) => setFrom(event.target.value)}>
          {cards.map((each) => (
            <option key={each.key} value={each.key}>
              {said(each)}
            </option>
          ))}
          <option value={OWN}>{words.own}</option>
        </ChoiceField>
      ) : null}
      {card ? null : (
        <>
          <TextField
            label={cards.length > 0 ? words.words : words.from}
            hint={words.wordsHint}
            required
            value={own}
            maxLength={HOMEWORK_LIMIT}
            onChange={(event) => setOwn(event.target.value)}
          />
          <TextField
            label={words.check}
            value={check}
            maxLength={HOMEWORK_CHECK_LIMIT}
            onChange={(event) => setCheck(event.target.value)}
          />
        </>
      )}
      <TextField
        label={words.day}
        type="date"
        required
        min={today}
        max={dayAfter(today, MOST_HOMEWORK_DAYS)}
        value={day}
        onChange={(event) => setDay(event.target.value)}
      />
      <ChoiceField
        label={words.answerAs}
        value={answerAs}
        trouble={trouble}
        onChange={(event) => setChosenAs(event.target.value as AnswerAs)}
      >
        {ANSWERS_AS.map((each) => (
          <option key={each} value={each}>
            {words.answers[each]}
          </option>
        ))}
      </ChoiceField>
      <p className={styles.acts}>
        <Button weight="main" type="submit" busy={busy} busyWord={words.keeping}>
          {words.keep}
        </Button>
        <Button weight="word" onClick={close}>
          {words.cancel}
        </Button>
      </p>
    </form>
  );
}
