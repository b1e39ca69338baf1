'use client';
/** The words of one mark with who said them and when; its author may change them. In the flow: remark -> [said]. */
import { useState } from 'react';
import type { MarkView, MarkWriters } from '#app/_live/mark-types.ts';
import { saidIn } from '#app/_marks/use-mark-words.ts';
import { dateTime } from '#app/_words/figures.ts';
import type { MarkState } from '#server/core/live/layout.ts';
import { words } from '#words/easel.ts';
import { markWords } from '#words/marks.ts';
import { PatchWords } from './patch-words.tsx';
import { PlaneChoice, SightNote } from './remark-acts.tsx';
import { Say } from './say.tsx';
import styles from './talk.module.css';

interface SaidProps {
  mark: MarkView;
  /** Which picture, plane and part of it; null for answers. */
  where: string | null;
  state: MarkState;
  open: boolean;
  meId: string;
  write: MarkWriters;
  /** After it was deleted. */
  gone(): void;
}

export function Said({ mark, where, state, open, meId, write, gone }: SaidProps) {
  const [changing, setChanging] = useState(false);
  const own = mark.author === meId;
  const at = new Date(mark.at).toISOString();
  const said = state === 'open' ? null : markWords.states[state];
  return (
    <>
      {changing ? (
        <Say
          draftKey={`change/${mark.id}`}
          label={words.talk.change}
          first={mark.text}
          sendWord={words.talk.keep}
          send={(text) => {
            write.rewriteMark(mark.id, text);
            setChanging(false);
          }}
          cancel={() => setChanging(false)}
        />
      ) : (
        <p className={styles.text}>{mark.text || <span className={styles.note}>{saidIn(mark)}</span>}</p>
      )}
      {mark.patch ? <PatchWords mark={mark} patch={mark.patch} /> : null}
      <p className={styles.note}>
        {said ? <strong>{said} · </strong> : null}
        {[mark.from ? markWords.broughtIn(mark.from, mark.authorName) : mark.authorName, where]
          .filter(Boolean)
          .join(' · ')}
        {'\u00a0· '}
        <time className={styles.when} dateTime={at}>
          {dateTime(at)}
        </time>
      </p>
      <SightNote mark={mark} meId={meId} />
      {open && mark.mine && !changing ? (
        <div className={styles.acts}>
          {own ? (
            <button type="button" className={styles.word} onClick={() => setChanging(true)}>
              {mark.text ? words.talk.change : words.talk.addWords}
            </button>
          ) : null}
          <button
            type="button"
            className={styles.word}
            onClick={() => {
              write.deleteMark(mark.id);
              gone();
            }}
          >
            {words.talk.remove}
          </button>
          <PlaneChoice mark={mark} />
        </div>
      ) : null}
    </>
  );
}
