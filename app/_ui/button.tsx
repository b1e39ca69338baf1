'use client';
/** A button in three weights: the one main action, a quiet one, and a plain word. */
import type { ButtonHTMLAttributes } from 'react';
import styles from './button.module.css';

export type ButtonWeight = 'main' | 'quiet' | 'word';

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** Draws a state that a hand makes; for the page that shows the parts. */
  'data-as'?: 'hover' | 'focus' | 'held';
  weight?: ButtonWeight;
  /** While true the button is disabled and says `busyWord` in place of its own words. */
  busy?: boolean;
  busyWord?: string;
}

export function buttonClass(weight: ButtonWeight): string {
  return `${styles.button} ${styles[weight]}`;
}

export function Button({ weight = 'quiet', busy = false, busyWord, children, ...rest }: ButtonProps) {
  return (
    <button
      type="button"
      {...rest}
      className={buttonClass(weight)}
      disabled={busy || rest.disabled}
      aria-busy={busy || undefined}
    >
      {busy && busyWord ? busyWord : children}
    </button>
  );
}
