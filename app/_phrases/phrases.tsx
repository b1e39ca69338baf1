'use client';
/**
 * A person's own phrases beside a field: one click opens them.
 *
 * In the flow: [phrases] -> phrase-panel, loaded late -> the field.
 */
import { type RefObject, useId, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { late } from '#app/_ui/late.tsx';
import { may } from '#server/core/permissions/may.ts';
import { queueWords } from '#words/queue.ts';
import { usePhrases } from './phrase-store.ts';
import styles from './phrases.module.css';
import type { About } from './use-slots.ts';

const PhrasePanel = late(() => import('./phrase-panel.tsx').then((module) => module.PhrasePanel));
const { phrases: words } = queueWords;
export interface PhrasesProps {
  /** The field that phrases go into. */
  field: RefObject<HTMLTextAreaElement | null>;
  text: string;
  change(text: string): void;
  about: About;
  /** Longest text of the field, in characters. */
  limit: number;
}

/** For whoever gives looks on the board; others write seldom enough. */
export function Phrases(props: PhrasesProps) {
  const { board } = useBoardLive();
  const [open, setOpen] = useState(false);
  const { store } = usePhrases(board.me.id);
  const button = useRef<HTMLButtonElement>(null);
  const id = useId();
  if (!may(board.role, 'ask.answer')) return null;
  return (
    <>
      <button
        ref={button}
        type="button"
        className={styles.word}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => {
          store.load();
          setOpen(!open);
        }}
      >
        {words.open}
      </button>
      {open ? <PhrasePanel {...props} id={id} close={() => setOpen(false)} /> : null}
    </>
  );
}
