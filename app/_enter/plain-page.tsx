/** The frame of pages with one thing to read or do: entering, a refusal, nothing found. */
import type { ReactNode } from 'react';
import { words } from '#words/shell.ts';
import styles from './plain.module.css';
import { ProductSign } from './product-sign.tsx';

export function PlainPage({ title, lead, children }: { title?: string; lead: string; children?: ReactNode }) {
  return (
    <main className={styles.page}>
      <p className={styles.product}>
        <ProductSign /> {words.product}
      </p>
      {title ? <h1>{title}</h1> : null}
      {title ? <p className={styles.lead}>{lead}</p> : <h1 className={styles.lead}>{lead}</h1>}
      {children}
    </main>
  );
}
