'use client';
/** A field to say something in; what is typed is kept as a draft until it is sent. In the flow: remark -> [say]. */
import { type FormEvent, type KeyboardEvent, useEffect, useRef } from 'react';
import { useDraft } from '#app/_live/drafts.ts';
import { noteSaid } from '#app/_phrases/phrase-store.ts';
import { Phrases } from '#app/_phrases/phrases.tsx';
import type { About } from '#app/_phrases/use-slots.ts';
import { Button } from '#app/_ui/button.tsx';
import { TEXT_LIMIT } from '#server/core/live/layout.ts';
import { words } from '#words/easel.ts';
import styles from './talk.module.css';

interface SayProps {
  /** Under which the draft is kept. */
  draftKey: string;
  label: string;
  /** Words to begin with when something is changed. */
  first?: string;
  sendWord?: string;
  /** Longest text in characters. */
  limit?: number;
  /** Whether it may be sent without a word. */
  mayBeEmpty?: boolean;
  /** What the words are about, where phrases of one's own may go into them. */
  about?: About;
  send(text: string): void;
  cancel?(): void;
}

/** Enter sends, Shift with Enter begins a new line. */
export function Say(props: SayProps) {
  const { draftKey, label, first, sendWord = words.talk.send, send, cancel } = props;
  const { limit = TEXT_LIMIT, mayBeEmpty = false, about } = props;
  const [draft, setText] = useDraft(draftKey);
  const begun = useRef(false);
  const text = draft === '' && !begun.current ? (first ?? '') : draft;
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (first !== undefined) field.current?.focus();
  }, [first]);
  const lacking = text.trim() === '' && !mayBeEmpty;
  const finish = () => {
    if (lacking) return;
    const said = text.trim();
    setText('');
    begun.current = false;
    noteSaid(said);
    send(said);
  };
  const write = (next: string) => {
    begun.current = true;
    setText(next);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') cancel?.();
    if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return;
    event.preventDefault();
    finish();
  };
  return (
    <form
      className={styles.say}
      onSubmit={(event: FormEvent) => {
        event.preventDefault();
        finish();
      }}
    >
      <textarea
        ref={field}
        aria-label={label}
        placeholder={label}
        rows={2}
        maxLength={limit}
        value={text}
        onChange={(event) => write(event.target.value)}
        onKeyDown={onKeyDown}
      />
      {about ? <Phrases {...{ field, text, about, limit }} change={write} /> : null}
      {text.trim() !== '' || cancel ? (
        <div className={styles.acts}>
          <Button type="submit" weight="quiet" disabled={lacking}>
            {sendWord}
          </Button>
          {cancel ? (
            <Button weight="word" onClick={cancel}>
              {words.talk.cancel}
            </Button>
          ) : null}
        </div>
      ) : null}
    </form>
  );
}
