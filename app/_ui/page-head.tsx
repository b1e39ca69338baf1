/** The head of a page that is no board: the product's sign with the way back, and who is signed in. */
import Link from 'next/link';
import type { ReactNode } from 'react';
import { ProductSign } from '#app/_enter/product-sign.tsx';
import { words } from '#words/shell.ts';
import styles from './page-head.module.css';

interface PageHeadProps {
  /** Of who is signed in. */
  name: string;
  /** Beside the sign; the way to the boards unless another is given. */
  way?: ReactNode;
  /** Stands after the name. */
  children?: ReactNode;
}

export function PageHead({ name, way, children }: PageHeadProps) {
  return (
    <header className={styles.head}>
      <p className={styles.product}>
        <ProductSign /> {way ?? <Link href="/">{words.boards.title}</Link>}
      </p>
      <p className={styles.signed}>
        {words.boards.signedAs(name)}
        {children}
      </p>
    </header>
  );
}
