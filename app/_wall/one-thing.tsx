'use client';
/** One thing to try from a painting, put on it as a remark of one's own. In the flow: beside -> [one-thing] -> handler. */
import { type FormEvent, useId, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { sayOneThing } from '#app/_api/wall.ts';
import { Button } from '#app/_ui/button.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { ONE_THING_LIMIT } from '#server/core/contract/wall.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './beside.module.css';
import type { Hung } from './hung.ts';

interface OneThingProps {
  boardId: string;
  hung: Hung;
  /** Where on the upright original; null = its middle. */
  at: FractionPoint | null;
}

export function OneThingForm({ boardId, hung: { letter, state }, at }: OneThingProps) {
  const id = useId();
  const [text, setText] = useState('');
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState<{ sentence: string; trouble: boolean } | null>(null);
  const say = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    try {
      await sayOneThing(boardId, state.id, { text, at: at ?? [0.5, 0.5] });
      setText('');
      setTold({ sentence: words.thing.said(letter), trouble: false });
    } catch (thrown) {
      setTold({ sentence: sentenceOf(thrown), trouble: true });
    } finally {
      setBusy(false);
    }
  };
  return (
    <form className={styles.thing} onSubmit={say}>
      <h2>{words.thing.title(letter)}</h2>
      <p id={`${id}-hint`} className={styles.hint}>
        {at ? words.thing.placed : words.thing.hint}
      </p>
      <label className="unseen" htmlFor={id}>
        {words.thing.field}
      </label>
      <textarea
        id={id}
        rows={2}
        value={text}
        maxLength={ONE_THING_LIMIT}
        placeholder={words.thing.field}
        aria-describedby={`${id}-hint`}
        required
        onChange={({ target }) => setText(target.value)}
      />
      <Button weight="main" type="submit" busy={busy} busyWord={words.thing.saying}>
        {words.thing.say}
      </Button>
      <p role={told?.trouble ? 'alert' : 'status'} className={styles.told}>
        {told?.sentence}
      </p>
    </form>
  );
}
