'use client';
/**
 * What comes after a critique: homework for this painting, and the sheet to take along.
 *
 * In the flow: critique -> [afterwards] -> homework, take-along. Loaded after the board itself.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useNow } from '#app/_queue/use-now.ts';
import { TakeAlong } from '#app/_take-along/take-along.tsx';
import type { HomeworkView } from '#server/core/contract/homework.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { ShownCard } from '#server/core/live/show-cards.ts';
import { statesOf } from '#server/core/own-time/states.ts';
import { may } from '#server/core/permissions/may.ts';
import { homeworkWords as words } from '#words/homework.ts';
import styles from './homework.module.css';
import { OneHomework } from './one-homework.tsx';
import { SetHomework } from './set-homework.tsx';
import { useHomework } from './use-homework.ts';

interface AfterwardsProps {
  painting: PictureView;
  /** Those that homework can come from. */
  cards: readonly ShownCard[];
}

export function Afterwards({ painting, cards }: AfterwardsProps) {
  const { board } = useBoardLive();
  const mine = painting.painter.id === board.me.id;
  return (
    <>
      <Homework painting={painting} cards={cards} mine={mine} />
      <TakeAlong boardId={board.id} about="critique" pictureId={painting.id} />
    </>
  );
}

function Homework({ painting, cards, mine }: AfterwardsProps & { mine: boolean }) {
  const { board } = useBoardLive();
  const { homework, refresh } = useHomework();
  const now = useNow();
  const states = statesOf(board.pictures, painting.id);
  const here = homework?.filter(({ pictureId }) => states.some(({ id }) => id === pictureId)) ?? [];
  const maySet = may(board.role, 'homework.set', mine ? 'own' : 'other');
  if (!now || !homework || (here.length === 0 && !maySet)) return null;
  const [open, closed] = [here.filter(isOpen), here.filter((each) => !isOpen(each))];
  const list = (some: readonly HomeworkView[]) => (
    <ul className={styles.list}>
      {some.map((each) => (
        <li key={each.id}>
          <OneHomework homework={each} now={now} changed={refresh} />
        </li>
      ))}
    </ul>
  );
  return (
    <section className={styles.part} aria-labelledby="homework-title">
      <h2 id="homework-title" className={styles.title}>
        {words.title}
      </h2>
      {open.length > 0 ? list(open) : null}
      {closed.length > 0 ? (
        <details>
          <summary>{words.closedOnes(closed.length)}</summary>
          {list(closed)}
        </details>
      ) : null}
      {maySet ? (
        <SetHomework painting={painting} cards={cards} mine={mine} now={now} changed={refresh} />
      ) : null}
    </section>
  );
}

const isOpen = ({ closedAt }: HomeworkView) => closedAt === null;
