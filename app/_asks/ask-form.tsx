'use client';
/** A painter asks for a look, or changes what they asked. In the flow: painter-asks -> [ask-form] -> server. IO: HTTP. */
import { type FormEvent, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { askForLook } from '#app/_api/own-time.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import { ASK_LIMIT } from '#server/core/contract/own-time-limits.ts';
import { may } from '#server/core/permissions/may.ts';
import { queueWords } from '#words/queue.ts';
import styles from './asks.module.css';
import type { PainterAsksProps } from './painter-asks.tsx';

const { ask: words } = queueWords;

export function AskForm({ painting, ask, changed, close }: PainterAsksProps & { close(): void }) {
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
