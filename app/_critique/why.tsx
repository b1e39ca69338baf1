'use client';
/** Why something is advised and where that comes from, folded away until somebody asks. In the flow: cards, readings -> [why]. */
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';

/** @param source Author and year, or that there is none; null = a person's own words. */
export function Why({ why, source }: { why: string; source: string | null }) {
  if (why === '') return null;
  return (
    <details className={styles.why}>
      <summary>{critiqueWords.cards.why}</summary>
      <p>{why}</p>
      {source ? <p className={styles.note}>{critiqueWords.cards.source(source)}</p> : null}
    </details>
  );
}
