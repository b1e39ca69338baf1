/** The caller's boards as pictures with titles. */
import Link from 'next/link';
import { BoardNewsLine } from '#app/_since/news-of-boards.tsx';
import type { BoardListItem } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import styles from './boards.module.css';
import { Cover } from './cover.tsx';

export function BoardList({ boards }: { boards: readonly BoardListItem[] }) {
  if (boards.length === 0) return <p className={styles.empty}>{words.boards.empty}</p>;
  return (
    <ul className={styles.list}>
      {boards.map((board) => (
        <li key={board.id}>
          <Link className={styles.board} href={`/boards/${board.id}`} prefetch={false}>
            {board.coverPictureId ? (
              <Cover boardId={board.id} pictureId={board.coverPictureId} />
            ) : (
              <div className={`${styles.cover} ${styles.bare}`}>{words.boards.bare}</div>
            )}
            <h2>{board.title}</h2>
            <p className={styles.about}>{aboutBoard(board)}</p>
            <BoardNewsLine boardId={board.id} />
          </Link>
        </li>
      ))}
    </ul>
  );
}

function aboutBoard(board: BoardListItem): string {
  const counts = words.boards.counts(board.references, board.paintings);
  return board.demo ? `${words.boards.demo}: ${counts}` : `${counts}. ${words.boards.by(board.owner.name)}`;
}
