'use client';
/** On the page of boards: homework to try and homework that came in, each a way to its painting. In the flow: home page -> [home-homework]. */
import { boardOn } from '#app/_queue/board-on.ts';
import { useNow } from '#app/_queue/use-now.ts';
import type { HomeView, HomeworkAtHome } from '#server/core/contract/homework.ts';
import { dayOf } from '#server/core/own-time/days.ts';
import { homeworkWords } from '#words/homework.ts';
import { dayWords } from '#words/queue.ts';
import styles from './homework.module.css';

const { home: words, forDay, passed } = homeworkWords;

export function HomeHomework({ home: { toTry, isIn } }: { home: HomeView }) {
  const now = useNow();
  if (!now || (toTry.length === 0 && isIn.length === 0)) return null;
  const today = dayOf(now);
  return (
    <section className={styles.part} aria-label={words.label}>
      <ul className={styles.part}>
        {toTry.map(({ homework, board }) => (
          <li key={homework.id}>
            <a href={boardOn(board.id, homework.pictureId)}>{tryWords({ homework, board }, today)}</a>
          </li>
        ))}
        {isIn.map(({ homework, board }) => (
          <li key={homework.id}>
            <a href={boardOn(board.id, homework.answer?.pictureId ?? homework.pictureId)}>
              {words.isIn(homework.painter.name, board.title, homework.words)}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function tryWords({ homework, board }: HomeworkAtHome, today: string): string {
  if (homework.answer) return words.inAlready(board.title, homework.words);
  const day = dayWords(homework.dueOn, today);
  if (homework.dueOn < today)
    return `${words.toTry(board.title, homework.words, forDay(day))} ${passed(day)}`;
  return words.toTry(board.title, homework.words, forDay(day));
}
