'use client';
/** Marks brought in from a file, and what could not be. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { bringMarksIn } from '#app/_api/outward.ts';
import plain from '#app/_enter/plain.module.css';
import { pictureName } from '#app/_post/picture-names.ts';
import { ChoiceField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { LeftOutPart, MarksTaken } from '#server/core/contract/outward.ts';
import type { BoardView } from '#server/core/contract/responses.ts';
import { outwardWords } from '#words/outward.ts';
import { OneFile } from './one-file.tsx';
import styles from './outward.module.css';

const { board: words } = outwardWords;

export function MarksIn({ board }: { board: BoardView }) {
  const [onto, setOnto] = useState('');
  const [busy, setBusy] = useState(false);
  const [taken, setTaken] = useState<MarksTaken | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const bring = async (file: File) => {
    setBusy(true);
    setTaken(null);
    setTrouble(null);
    try {
      setTaken(await bringMarksIn(board.id, file, onto || null));
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  return (
    <section className={`${plain.sheet} ${styles.form}`}>
      <h2>{words.marksIn}</h2>
      <p>{words.marksInText}</p>
      <ChoiceField label={words.onto} value={onto} onChange={(event) => setOnto(event.target.value)}>
        <option value="">{words.ontoNone}</option>
        {board.pictures.map((picture) => (
          <option key={picture.id} value={picture.id}>
            {pictureName(picture, board.pictures)}
          </option>
        ))}
      </ChoiceField>
      <OneFile
        label={words.choose}
        accept=".jsonld,.json,application/ld+json,application/json"
        busy={busy}
        busyWord={words.bringing}
        onFile={bring}
      />
      {trouble ? <Notice trouble sentence={trouble} /> : null}
      {taken ? (
        <Notice sentence={words.taken(taken.taken)}>
          <Parts title={words.leftOut} parts={taken.leftOut} />
          <Parts title={words.passedOver} parts={taken.passedOver} />
        </Notice>
      ) : null}
    </section>
  );
}

function Parts({ title, parts }: { title: string; parts: readonly LeftOutPart[] }) {
  if (parts.length === 0) return null;
  return (
    <div className={styles.part}>
      <h3>{title}</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls is reached by keyboard. */}
      <ul className={`${styles.list} ${styles.long}`} tabIndex={0} aria-label={title}>
        {parts.map(({ what, why }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes once it is there.
          <li key={at}>
            {what}
            <small>{why}</small>
          </li>
        ))}
      </ul>
    </div>
  );
}
