'use client';
/** A labelled line of text, or a labelled choice, with its hint and its trouble underneath. */
import { type InputHTMLAttributes, type ReactNode, type SelectHTMLAttributes, useId } from 'react';
import styles from './field.module.css';

interface Labelled {
  label: string;
  hint?: string;
  /** A sentence saying what is wrong with what was written. */
  trouble?: string | null;
}

function Frame({ id, label, hint, trouble, children }: Labelled & { id: string; children: ReactNode }) {
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      {children}
      {hint ? (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      ) : null}
      <span id={`${id}-trouble`} role="alert" className={styles.trouble}>
        {trouble}
      </span>
    </div>
  );
}

function described(id: string, { hint, trouble }: Labelled): string | undefined {
  return [hint && `${id}-hint`, trouble && `${id}-trouble`].filter(Boolean).join(' ') || undefined;
}

export function TextField({
  label,
  hint,
  trouble,
  ...rest
}: Labelled & InputHTMLAttributes<HTMLInputElement>) {
  const id = useId();
  const labelled = { label, ...(hint ? { hint } : {}), trouble: trouble ?? null };
  return (
    <Frame id={id} {...labelled}>
      <input
        {...rest}
        id={id}
        className={styles.input}
        aria-invalid={trouble ? true : undefined}
        aria-describedby={described(id, labelled)}
      />
    </Frame>
  );
}

export function ChoiceField({
  label,
  hint,
  trouble,
  ...rest
}: Labelled & SelectHTMLAttributes<HTMLSelectElement>) {
  const id = useId();
  const labelled = { label, ...(hint ? { hint } : {}), trouble: trouble ?? null };
  return (
    <Frame id={id} {...labelled}>
      <select {...rest} id={id} className={styles.input} aria-describedby={described(id, labelled)} />
    </Frame>
  );
}
