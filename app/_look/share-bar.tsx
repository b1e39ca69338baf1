'use client';
/** How much of a picture each value takes: one bar, darkest first, each part in its own grey and in per cent. */
import { percent } from '#app/_words/figures.ts';
import { greyOf } from '#server/core/look/nine-steps.ts';
import type { ValueGroup } from '#server/core/look/value-groups.ts';
import styles from './values.module.css';

interface ShareBarProps {
  label: string;
  groups: readonly ValueGroup[];
  names: readonly string[];
}

/** Light ink up to this L*, dark ink above: both then keep 4.5 : 1 (WCAG 2.2, 1.4.3). */
const DARK_INK_FROM = 50;

export function ShareBar({ label, groups, names }: ShareBarProps) {
  return (
    <ol className={styles.shares} aria-label={label}>
      {groups.map(({ share, lightness }, index) => (
        <li key={names[index]} style={{ flexGrow: share }}>
          <span
            className={styles.part}
            style={{
              background: greyOf(lightness),
              color: lightness < DARK_INK_FROM ? 'var(--white)' : 'var(--black)',
            }}
          />
          <span className={styles.share}>
            <b>{percent(share)}</b> {names[index]}
          </span>
        </li>
      ))}
    </ol>
  );
}
