/** The steps of type, of space, of rounding and of what is pressed, each beside its name. */
import { componentWords as words } from '#words/components.ts';
import styles from './components.module.css';

const TYPE = ['text-13', 'text-15', 'text-17', 'text-20', 'text-26'];
const GAPS = ['gap-0', 'gap-1', 'gap-2', 'gap-3', 'gap-4', 'gap-5', 'gap-6', 'gap-7'];
const HITS = ['hit-1', 'hit-2', 'hit-3', 'touch'];
const ROUND = ['round-1', 'round-2', 'round-full'];

export function Steps({ of }: { of: 'type' | 'space' }) {
  if (of === 'type')
    return (
      <ul className={styles.steps}>
        {TYPE.map((name) => (
          <li key={name}>
            <span style={{ fontSize: `var(--${name})` }}>{words.sample}</span>
            <span className={styles.note}>{name}</span>
          </li>
        ))}
      </ul>
    );
  return (
    <ul className={styles.steps}>
      {GAPS.map((name) => (
        <li key={name}>
          <span className={styles.bar} style={{ width: `var(--${name})` }} />
          <span className={styles.note}>{name}</span>
        </li>
      ))}
      {HITS.map((name) => (
        <li key={name}>
          <span className={styles.tall} style={{ height: `var(--${name})` }} />
          <span className={styles.note}>{name}</span>
        </li>
      ))}
      {ROUND.map((name) => (
        <li key={name}>
          <span className={styles.rounded} style={{ borderRadius: `var(--${name})` }} />
          <span className={styles.note}>{name}</span>
        </li>
      ))}
    </ul>
  );
}
