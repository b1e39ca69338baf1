'use client';
/** The question of the day, read by everybody; whoever runs the wall words it. In the flow: live wall -> [question]. */
import { type FormEvent, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { QUESTION_LIMIT } from '#server/core/live/wall.ts';
import { words as shell } from '#words/shell.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './question.module.css';

interface QuestionProps {
  question: string;
  mayRun: boolean;
  ask(question: string): void;
}

export function Question({ question, mayRun, ask }: QuestionProps) {
  const [writing, setWriting] = useState(false);
  if (writing) return <Wording question={question} ask={ask} onDone={() => setWriting(false)} />;
  if (!question && !mayRun) return null;
  return (
    <div className={styles.question}>
      {question ? (
        <p className={styles.asked}>
          <span className="unseen">{words.question.label}: </span>
          {question}
        </p>
      ) : null}
      {mayRun ? (
        <Button weight="word" onClick={() => setWriting(true)}>
          {question ? words.question.word : words.question.ask}
        </Button>
      ) : null}
    </div>
  );
}

function Wording({ question, ask, onDone }: Omit<QuestionProps, 'mayRun'> & { onDone(): void }) {
  const [text, setText] = useState(question);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    ask(text);
    onDone();
  };
  return (
    <form
      className={styles.form}
      onSubmit={keep}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone();
      }}
    >
      <TextField
        label={words.question.field}
        hint={words.question.hint}
        value={text}
        maxLength={QUESTION_LIMIT}
        autoFocus
        onChange={({ target }) => setText(target.value)}
      />
      <div className={styles.acts}>
        <Button weight="main" type="submit">
          {words.question.keep}
        </Button>
        <Button weight="word" onClick={onDone}>
          {shell.cancel}
        </Button>
      </div>
    </form>
  );
}
