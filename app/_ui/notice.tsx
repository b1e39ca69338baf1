'use client';
/** A sentence for the person: what happened and what to do, said aloud to those who listen. */
import type { ReactNode } from 'react';
import styles from './notice.module.css';

interface NoticeProps {
  sentence: string;
  /** A refusal or failure, announced at once; otherwise said when there is a pause. */
  trouble?: boolean;
  /** What can be done about it: buttons. */
  children?: ReactNode;
}

export function Notice({ sentence, trouble = false, children }: NoticeProps) {
  return (
    <div
      className={trouble ? `${styles.notice} ${styles.trouble}` : styles.notice}
      role={trouble ? 'alert' : 'status'}
    >
      <p className={styles.sentence}>{sentence}</p>
      {children}
    </div>
  );
}
