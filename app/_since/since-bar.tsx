'use client';
/** At the head of the talk: what came since this person last looked, each a way to its picture. In the flow: since-state -> [since-bar]. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useNow } from '#app/_queue/use-now.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { newsLine } from '#server/core/own-time/news-line.ts';
import { momentWords, newsWords, queueWords } from '#words/queue.ts';
import styles from './since.module.css';
import { useSince } from './since-state.tsx';

const { since: words } = queueWords;

export function SinceBar() {
  const { board } = useBoardLive();
  const { setReferenceId, setPaintingId, setSide } = useTools();
  const { news } = useSince();
  const now = useNow();
  if (!news || !now) return null;
  const when = momentWords(news.lookedAt, now);
  const { pictures } = newsLine(news, board);
  if (pictures.length === 0) return <p className={styles.nothing}>{words.nothing(when)}</p>;
  return (
    <section className={styles.bar} aria-label={words.label}>
      <p>{words.head(when)}</p>
      <ul>
        {pictures.map((picture) => (
          <li key={picture.id}>
            <button
              type="button"
              className={styles.to}
              onClick={() => {
                if (picture.name.kind === 'reference') setReferenceId(picture.id);
                else setPaintingId(picture.id);
                setSide(picture.name.kind);
              }}
            >
              {newsWords([picture])}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
