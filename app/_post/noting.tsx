'use client';
/** Paint and light of a painting that is posted already, to be noted or corrected later. IO: HTTP. */
import { useState } from 'react';
import { notePicture, sentenceOf } from '#app/_api/client.ts';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { mediumFrom, mediumWords, notedText } from '#words/noted.ts';
import { type NotedDraft, NotedFields } from './noted-fields.tsx';
import styles from './post.module.css';

interface NotingProps {
  boardId: string;
  picture: PictureView;
  refresh(): Promise<void>;
}

export function Noting({ boardId, picture, refresh }: NotingProps) {
  const [noted, setNoted] = useState<NotedDraft>({
    medium: picture.medium === null ? '' : mediumWords(picture.medium),
    drying: picture.drying,
    light: picture.light,
  });
  const [at, setAt] = useState<'asked' | 'busy' | 'kept'>('asked');
  const [trouble, setTrouble] = useState<string | null>(null);
  const keep = async () => {
    setAt('busy');
    setTrouble(null);
    try {
      await notePicture(boardId, picture.id, { ...noted, medium: mediumFrom(noted.medium) });
      await refresh();
      setAt('kept');
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setAt('asked');
    }
  };
  return (
    <details className={styles.noting}>
      <summary>{notedText.summary}</summary>
      <NotedFields
        noted={noted}
        onChange={(change) => {
          setNoted({ ...noted, ...change });
          setAt('asked');
        }}
      />
      <Button busy={at === 'busy'} busyWord={notedText.saving} onClick={keep}>
        {notedText.save}
      </Button>
      <span role="status">{at === 'kept' ? notedText.saved : null}</span>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </details>
  );
}
