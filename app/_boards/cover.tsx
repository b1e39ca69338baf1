'use client';
/** The small picture of a board; a grey that says so where it may not be shown just now, as in the silent look of a class. */
import { useEffect, useRef, useState } from 'react';
import { pictureAddress } from '#app/_api/client.ts';
import { words } from '#words/shell.ts';
import styles from './boards.module.css';

export function Cover({ boardId, pictureId }: { boardId: string; pictureId: string }) {
  const image = useRef<HTMLImageElement>(null);
  const [missing, setMissing] = useState(false);
  // It may have failed before the page came to life, and then nothing is told of it any more.
  useEffect(() => {
    if (image.current?.complete && image.current.naturalWidth === 0) setMissing(true);
  }, []);
  if (missing) return <div className={`${styles.cover} ${styles.bare}`}>{words.boards.veiled}</div>;
  return (
    // biome-ignore lint/performance/noImgElement: our own rendition; Next's image part would shift its colours.
    <img
      ref={image}
      className={styles.cover}
      src={pictureAddress(boardId, pictureId, 640)}
      alt=""
      onError={() => setMissing(true)}
    />
  );
}
