'use client';
/**
 * A person's own phrases, opened: a click puts one into the words with its gaps filled.
 *
 * In the flow: phrase-store + slots -> [phrase-panel] -> the field. Found by typing; arrows and Enter do it without a mouse.
 */
import { type KeyboardEvent, useState } from 'react';
import { flushSync } from 'react-dom';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { PHRASE_LIMIT } from '#server/core/contract/own-time-limits.ts';
import { fillSlots, insertAt } from '#server/core/own-time/slots.ts';
import { queueWords } from '#words/queue.ts';
import { PhraseList } from './phrase-list.tsx';
import { lastSaid, usePhrases } from './phrase-store.ts';
import styles from './phrases.module.css';
import type { PhrasesProps } from './phrases.tsx';
import { useSlots } from './use-slots.ts';

const { phrases: words } = queueWords;
/** So much of what was said last stands on the button that keeps it. */
const SHOWN = 40;

export function PhrasePanel({
  field,
  text,
  change,
  about,
  limit,
  id,
  close,
}: PhrasesProps & { id: string; close(): void }) {
  const { board } = useBoardLive();
  const { phrases, trouble, store } = usePhrases(board.me.id);
  const slots = useSlots(about);
  const [kept, setKept] = useState(false);
  const insert = (phrase: string) => {
    const element = field.current;
    const [from, to] = [element?.selectionStart ?? text.length, element?.selectionEnd ?? text.length];
    const next = insertAt(text, from, to, fillSlots(phrase, slots));
    flushSync(() => {
      change(next.text.slice(0, limit));
      close();
    });
    element?.focus();
    element?.setSelectionRange(next.chosen[0], next.chosen[1]);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    close();
    field.current?.focus();
  };
  const written = text.trim();
  const keepable = written || lastSaid();
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes it from wherever the focus is inside.
    <div id={id} className={styles.panel} onKeyDown={onKeyDown}>
      {phrases === null ? null : <PhraseList {...{ phrases, slots, insert }} />}
      <p className={styles.note} role="status">
        {trouble ?? (kept ? words.kept : words.private)}
      </p>
      <div className={styles.acts}>
        {keepable && !kept ? (
          <button
            type="button"
            className={styles.word}
            onClick={async () => setKept(await store.keep(keepable.slice(0, PHRASE_LIMIT)))}
          >
            {written ? words.keepWritten : words.keepSaid(shortened(keepable))}
          </button>
        ) : null}
        <button
          type="button"
          className={styles.word}
          onClick={() => {
            close();
            store.openBook(true);
          }}
        >
          {words.edit}
        </button>
      </div>
    </div>
  );
}

function shortened(text: string): string {
  return text.length > SHOWN ? `${text.slice(0, SHOWN).trimEnd()} …` : text;
}
