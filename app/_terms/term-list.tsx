'use client';
/** What the painters' words on the screen mean, in groups, and the usual care with paint. */
import { Dialog } from '#app/_ui/dialog.tsx';
import { termWords } from '#words/terms.ts';
import styles from './terms.module.css';

export function TermList({ open, onClose }: { open: boolean; onClose(): void }) {
  return (
    <Dialog open={open} onClose={onClose} title={termWords.title} wide>
      <p>{termWords.lead}</p>
      {termWords.groups.map(({ title, terms }) => (
        <section key={title} className={styles.group}>
          <h3>{title}</h3>
          <dl className={styles.terms}>
            {terms.map(([term, meaning]) => (
              <div key={term}>
                <dt>{term}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      <p>{termWords.care}</p>
    </Dialog>
  );
}
