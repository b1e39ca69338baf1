'use client';
/** A sheet over the page: the browser's own modal dialog, closed by Escape, its button or a click beside it. */
import { type MouseEvent, type ReactNode, useEffect, useId, useRef } from 'react';
import { words } from '#words/shell.ts';
import { Button } from './button.tsx';
import styles from './dialog.module.css';

interface DialogProps {
  open: boolean;
  onClose(): void;
  title: string;
  wide?: boolean;
  children: ReactNode;
}

/** Children are mounted only while open, so that each opening starts afresh. */
export function Dialog({ open, onClose, title, wide = false, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const element = dialog.current;
    if (!element) return;
    if (open && !element.open) {
      element.showModal();
      element.querySelector<HTMLElement>('[data-autofocus]')?.focus();
    }
    if (!open && element.open) element.close();
  }, [open]);

  const closeWhenBeside = (event: MouseEvent<HTMLDialogElement>) => {
    if (event.target === dialog.current) onClose();
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes a modal dialog already; the click is a second way.
    <dialog
      ref={dialog}
      className={wide ? `${styles.dialog} ${styles.wide}` : styles.dialog}
      aria-labelledby={titleId}
      onClose={onClose}
      onClick={closeWhenBeside}
    >
      {open ? (
        <div className={styles.inside}>
          <div className={styles.head}>
            <h2 id={titleId} className={styles.title}>
              {title}
            </h2>
            <Button weight="word" onClick={onClose}>
              {words.close}
            </Button>
          </div>
          {children}
        </div>
      ) : null}
    </dialog>
  );
}
