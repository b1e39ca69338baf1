'use client';
/** Blocks somebody in two taps, both ways; the board then shows neither to the other. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { blockPerson } from '#app/_api/decency.ts';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { PersonView } from '#server/core/contract/responses.ts';
import { decencyWords } from '#words/decency.ts';
import { words as allWords } from '#words/shell.ts';
import styles from './decency.module.css';

const { block: words } = decencyWords;

export function BlockAct({ boardId, person }: { boardId: string; person: PersonView }) {
  const [asked, setAsked] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const block = async () => {
    try {
      await blockPerson(boardId, person.id);
      setAsked(false);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  };
  if (!asked) {
    return (
      <Button weight="word" aria-label={words.label(person.name)} onClick={() => setAsked(true)}>
        {words.act}
      </Button>
    );
  }
  return (
    <div className={styles.part}>
      <p className={styles.quiet}>{words.sure(person.name)}</p>
      <span className={styles.acts}>
        <Button weight="main" onClick={block}>
          {words.label(person.name)}
        </Button>
        <Button weight="word" onClick={() => setAsked(false)}>
          {allWords.cancel}
        </Button>
      </span>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </div>
  );
}
