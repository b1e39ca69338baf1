'use client';
/**
 * At the head of the talk what concerns this person's own time: what is new since they looked, the look that was asked
 * for, the book of their phrases. In a class that keeps things back nothing of it is shown.
 */
import { AskPart } from '#app/_asks/ask-part.tsx';
import { useOpenedPicture } from '#app/_asks/use-opened-picture.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { PhraseBook } from '#app/_phrases/phrase-book.tsx';
import { SinceBar } from '#app/_since/since-bar.tsx';
import styles from './talk.module.css';

export function OwnTime() {
  const { veiled } = useBoardLive().class;
  useOpenedPicture();
  if (veiled) return null;
  return (
    <div className={styles.ownTime}>
      <SinceBar />
      <AskPart heading={styles.title} />
      <PhraseBook />
    </div>
  );
}
