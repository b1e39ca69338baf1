'use client';
/** A cell of the table: a figure and, quieter, the ends between which it lies. In the flow: measure rows -> [cell]. */
import type { DoubtedText } from './doubted.ts';
import styles from './table.module.css';

interface DoubtedProps extends DoubtedText {
  /** A difference from the target. */
  strong?: boolean;
  /** Shown, but not to be gone by. */
  quiet?: boolean;
}

export function Doubted({ text, range, strong = false, quiet = false }: DoubtedProps) {
  return (
    <td className={strong ? styles.gap : undefined} data-quiet={quiet ? '' : undefined}>
      {text}
      {range ? (
        <span className={styles.range}>
          <span className={styles.comma}>, </span>
          {range}
        </span>
      ) : null}
    </td>
  );
}
