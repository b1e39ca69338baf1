/** Two letters for a person. Told apart by letters and lightness, never by hue. */
import { initialsOf } from './initials.ts';
import styles from './monogram.module.css';

interface MonogramProps {
  name: string;
  /** Teachers and hosts are light on the board, so that one finds them. */
  guide?: boolean;
  /** Not on the board just now: an empty ring. */
  away?: boolean;
  title?: string;
}

export function Monogram({ name, guide = false, away = false, title }: MonogramProps) {
  const shade = away ? styles.away : guide ? styles.guide : '';
  return (
    <span
      className={`${styles.monogram} ${shade}`}
      role="img"
      aria-label={title ?? name}
      title={title ?? name}
    >
      <span aria-hidden="true">{initialsOf(name)}</span>
    </span>
  );
}
