'use client';
/**
 * The first thing this person sees in the painting of the turn: a field in the silent look, nothing afterwards.
 *
 * In the flow: [first-impression] -> room `silent/<own id>`, which nobody else is let into. Every letter is stored as it is
 * typed, so that the end of the step takes no word away. The room is open through the turn, so that it is there in time.
 */
import { useId } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { readNote, writeNote } from '#server/core/class/notes.ts';
import { IMPRESSION_LIMIT } from '#server/core/class/shapes.ts';
import { classWords } from '#words/class.ts';
import styles from './class.module.css';

const { impression: words } = classWords;

export function FirstImpression({ pictureId, writing }: { pictureId: string; writing: boolean }) {
  const { board } = useBoardLive();
  const doc = useRoomDocument(`silent/${board.me.id}`);
  const id = useId();
  if (!writing) return null;
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>
        <label htmlFor={id}>{words.title}</label>
      </h2>
      <textarea
        id={id}
        className={styles.field}
        value={doc ? readNote(doc, pictureId) : ''}
        disabled={!doc}
        placeholder={words.hint}
        maxLength={IMPRESSION_LIMIT}
        rows={3}
        aria-describedby={`${id}-note`}
        onChange={(event) => doc && writeNote(doc, pictureId, event.target.value)}
      />
      <p id={`${id}-note`} className={styles.note}>
        {words.kept}
      </p>
    </div>
  );
}
