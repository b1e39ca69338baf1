'use client';
/**
 * What the painting is about, in its painter's words; several people may write at once.
 *
 * In the flow: live text <-> [intention]. Each edit goes out as the smallest change.
 */
import { useId, useLayoutEffect, useRef } from 'react';
import { FocusWords } from '#app/_critique/focus-words.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { TEXT_LIMIT } from '#server/core/live/layout.ts';
import { words } from '#words/easel.ts';
import { caretAfter } from './caret.ts';
import styles from './talk.module.css';

export function Intention() {
  const { board } = useBoardLive();
  const { paintingId } = useTools();
  const painting = board.pictures.find(({ id }) => id === paintingId);
  return painting ? <About key={painting.id} painting={painting} /> : null;
}

function About({ painting }: { painting: PictureView }) {
  const { intentionOf, may, write, board } = useBoardLive();
  const id = useId();
  const text = intentionOf(painting.id);
  const mine = may.intention(painting.id);
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>
        {mine ? <label htmlFor={id}>{words.talk.about}</label> : words.talk.about}
      </h2>
      {mine ? (
        <LiveField id={id} text={text} change={(next) => write.writeIntention(painting.id, next)} />
      ) : (
        <p className={styles.about}>{text || words.talk.aboutNothing}</p>
      )}
      {painting.painter.id === board.me.id ? null : (
        <p className={styles.note}>{words.talk.aboutWhose(painting.painter.name)}</p>
      )}
      <FocusWords painting={painting} />
    </div>
  );
}

/** A field bound to a live text: what others write comes in and leaves the caret where it was. */
function LiveField({ id, text, change }: { id: string; text: string; change(text: string): void }) {
  const field = useRef<HTMLTextAreaElement>(null);
  const shown = useRef(text);
  useLayoutEffect(() => {
    const element = field.current;
    if (!element) return;
    if (element.value !== text) {
      const { selectionStart, selectionEnd } = element;
      const [start, end] = [selectionStart, selectionEnd].map((at) => caretAfter(shown.current, text, at));
      element.value = text;
      if (document.activeElement === element) element.setSelectionRange(start ?? 0, end ?? 0);
    }
    shown.current = text;
  }, [text]);
  return (
    <div className={styles.grows} data-text={text || words.talk.aboutHint}>
      <textarea
        ref={field}
        id={id}
        className={styles.aboutField}
        defaultValue={text}
        placeholder={words.talk.aboutHint}
        maxLength={TEXT_LIMIT}
        rows={2}
        onChange={(event) => {
          shown.current = event.target.value;
          change(event.target.value);
        }}
      />
    </div>
  );
}
