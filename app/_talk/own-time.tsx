'use client';
/**
 * At the head of the talk what concerns this person's own time: what is new since they looked, the look that was asked
 * for, the book of their phrases. In a class that keeps things back nothing of it is shown.
 */
import { AskPart } from '#app/_asks/ask-part.tsx';
import { useOpenedPicture } from '#app/_asks/use-opened-picture.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { usePhrases } from '#app/_phrases/phrase-store.ts';
import { SinceBar } from '#app/_since/since-bar.tsx';
import { late, useEver } from '#app/_ui/late.tsx';
import styles from './talk.module.css';

const PhraseBook = late(() => import('#app/_phrases/phrase-book.tsx').then((module) => module.PhraseBook));

export function OwnTime() {
  const { board, class: inClass } = useBoardLive();
  const { veiled } = inClass;
  const bookAsked = useEver(usePhrases(board.me.id).bookOpen);
  useOpenedPicture();
  if (veiled) return null;
  return (
    <div className={styles.ownTime}>
      <SinceBar />
      <AskPart heading={styles.title} />
      {bookAsked ? <PhraseBook /> : null}
    </div>
  );
}
