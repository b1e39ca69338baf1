/** What the example board tells of its invented painters; nothing on other boards. */

import type { BoardView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import styles from './scenario.module.css';

export function Scenario({ board }: { board: BoardView }) {
  if (!board.scenario) return null;
  return (
    <details className={styles.scenario}>
      <summary>{words.board.scenario}</summary>
      <p>{board.scenario}</p>
    </details>
  );
}
