'use client';
/** The named colours as the page has them, each with the lightness that is measured here. */
import { useEffect, useRef, useState } from 'react';
import { labFromRgb } from '#server/core/colour/lab.ts';
import { decodeSrgb } from '#server/core/colour/transfer.ts';
import { componentWords as words } from '#words/components.ts';
import styles from './components.module.css';

const NAMES = [
  ...['surround', 'panel', 'sheet', 'field', 'raised', 'raised-panel', 'raised-sheet'],
  ...['ink', 'ink-quiet', 'ink-panel', 'ink-sheet', 'held', 'on-held', 'accent', 'accent-over', 'on-accent'],
  ...['focus', 'over-light', 'over-dark', 'mid'],
];

export function Greys() {
  const list = useRef<HTMLUListElement>(null);
  const [found, setFound] = useState<Record<string, number>>({});
  useEffect(() => {
    if (!list.current) return;
    const swatches = [...list.current.querySelectorAll<HTMLElement>('[data-name]')];
    setFound(
      Object.fromEntries(
        swatches.map((swatch) => [
          swatch.dataset.name,
          lightnessOf(getComputedStyle(swatch).backgroundColor),
        ]),
      ),
    );
  }, []);
  return (
    <ul ref={list} className={styles.greys}>
      {NAMES.map((name) => (
        <li key={name}>
          <span className={styles.swatch} data-name={name} style={{ background: `var(--${name})` }} />
          <span>{name}</span>
          <span className={styles.note}>{name in found ? words.lightness(found[name] ?? 0) : ''}</span>
        </li>
      ))}
    </ul>
  );
}

/** @param computed As a browser computes it: three codes, 0..255. @returns L*, 0..100. */
function lightnessOf(computed: string): number {
  const [red = 0, green = 0, blue = 0] = (computed.match(/\d+/g) ?? []).map((code) =>
    decodeSrgb(Number(code) / 255),
  );
  return labFromRgb([red, green, blue]).L;
}
