'use client';
import { filesOf } from '#app/_api/outward.ts';
/** Everything of a board that can be taken away, and marks brought in. IO: HTTP. */
import plain from '#app/_enter/plain.module.css';
import { buttonClass } from '#app/_ui/button.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { outwardWords } from '#words/outward.ts';
import { MarksIn } from './marks-in.tsx';
import styles from './outward.module.css';
import { WholeBoard } from './whole-board.tsx';

const { board: words } = outwardWords;

export function TakeAway({ board }: { board: BoardView }) {
  return (
    <>
      <section className={`${plain.sheet} ${plain.form}`}>
        <h2>{words.figures}</h2>
        <p>{words.figuresText}</p>
        <div className={styles.acts}>
          <a className={buttonClass('quiet')} href={filesOf.table(board.id)} download>
            {words.table}
          </a>
          <a className={buttonClass('quiet')} href={filesOf.figures(board.id)} download>
            {words.json}
          </a>
        </div>
      </section>
      <section className={`${plain.sheet} ${plain.form}`}>
        <h2>{words.marks}</h2>
        <p>{words.marksText}</p>
        <a className={buttonClass('quiet')} href={filesOf.marks(board.id)} download>
          {words.marksOut}
        </a>
      </section>
      {may(board.role, 'room.mark', 'own') ? <MarksIn board={board} /> : null}
      {may(board.role, 'board.take') ? <WholeBoard boardId={board.id} /> : null}
    </>
  );
}
