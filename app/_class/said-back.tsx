'use client';
/**
 * The first thing the painter will do, in their own words: a field for the painter when it is asked for, a sentence for
 * everybody else, and from then on for both.
 *
 * In the flow: [said-back] <-> the painting's own room.
 */
import { useId } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { readSaid, writeSaid } from '#server/core/class/notes.ts';
import { IMPRESSION_LIMIT } from '#server/core/class/shapes.ts';
import { classWords } from '#words/class.ts';
import styles from './class.module.css';

const { sayBack: words } = classWords;

export function SaidBack({ pictureId, asked }: { pictureId: string; asked: boolean }) {
  const { class: inClass, board } = useBoardLive();
  const doc = useRoomDocument(`painting/${pictureId}`);
  const id = useId();
  const painter = inClass.paintings.find((painting) => painting.id === pictureId)?.painter;
  const said = doc ? readSaid(doc) : '';
  if (!painter || (!asked && said === '')) return null;
  const mine = asked && painter.id === board.me.id;
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>{mine ? <label htmlFor={id}>{words.ask}</label> : words.title}</h2>
      {mine ? (
        <textarea
          id={id}
          className={styles.field}
          value={said}
          disabled={!doc}
          maxLength={IMPRESSION_LIMIT}
          rows={3}
          onChange={(event) => doc && writeSaid(doc, event.target.value)}
        />
      ) : (
        <>
          <p className={styles.note}>{words.by(painter.name)}</p>
          <p className={styles.words}>{said || words.notYet}</p>
        </>
      )}
    </div>
  );
}
