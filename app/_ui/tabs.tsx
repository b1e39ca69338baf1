'use client';
/** The row of leaves one turns to, one of them open: Tab comes to the open one, left and right go round. */
import type { KeyboardEvent } from 'react';
import styles from './tabs.module.css';

interface TabsProps<Name extends string> {
  label: string;
  /** Of the row; how it lies is the area's. */
  className?: string | undefined;
  names: readonly Name[];
  open: Name;
  wordOf(name: Name): string;
  /** Id of what a leaf opens. */
  panelOf(name: Name): string;
  onTurn(name: Name): void;
}

/** The pattern for tabs of the ARIA Authoring Practices; each has the id `tab-<name>`. */
export function Tabs<Name extends string>(props: TabsProps<Name>) {
  const { label, className, names, open, wordOf, panelOf, onTurn } = props;
  const turnByArrow = (event: KeyboardEvent<HTMLElement>) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const next = step && names[(names.indexOf(open) + step + names.length) % names.length];
    if (!next) return;
    event.preventDefault();
    onTurn(next);
    document.getElementById(`tab-${next}`)?.focus();
  };
  return (
    <div className={className} role="tablist" aria-label={label} onKeyDown={turnByArrow}>
      {names.map((name) => (
        <button
          key={name}
          type="button"
          role="tab"
          id={`tab-${name}`}
          className={styles.tab}
          aria-selected={open === name}
          aria-controls={panelOf(name)}
          tabIndex={open === name ? 0 : -1}
          onClick={() => onTurn(name)}
        >
          {wordOf(name)}
        </button>
      ))}
    </div>
  );
}
