/** The caller's boards as pictures with titles. */
import Link from 'next/link';
import { pictureAddress } from '#app/_api/client.ts';
import { BoardNewsLine } from '#app/_since/news-of-boards.tsx';
import { words } from '#app/_words/en.ts';
import type { BoardListItem } from '#server/core/contract/responses.ts';
import styles from './boards.module.css';

export function BoardList({ boards }: { boards: readonly BoardListItem[] }) {
  if (boards.length === 0) return <p className={styles.empty}>{words.boards.empty}</p>;
  return (
    <ul className={styles.list}>
      {boards.map((board) => (
        <li key={board.id}>
          <Link className={styles.board} href={`/boards/${board.id}`} prefetch={false}>
            <Cover board={board} />
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

function Cover({ board }: { board: BoardListItem }) {
  if (!board.coverPictureId) {
    return <div className={`${styles.cover} ${styles.bare}`}>{words.boards.bare}</div>;
  }
  // biome-ignore lint/performance/noImgElement: our own rendition; Next's image part would shift its colours.
  return <img className={styles.cover} src={pictureAddress(board.id, board.coverPictureId, 640)} alt="" />;
}
