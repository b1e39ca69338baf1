'use client';
/** A painting's own colours by area. In the flow: wall's worker -> [palette-strip] -> screen. */
import { percent } from '#app/_words/figures.ts';
import { colourWords } from '#server/core/wall/colour-words.ts';
import { byDepth, byValue, type PaletteColour } from '#server/core/wall/palette.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './painting.module.css';
import type { Looking } from './rows.ts';

interface StripProps {
  letter: string;
  palette: readonly PaletteColour[] | null;
  order: Looking['order'];
}

export function PaletteStrip({ letter, palette, order }: StripProps) {
  if (!palette) return <div className={styles.strip} />;
  const deep = order === 'depth' && palette.some(({ depth }) => depth !== null);
  const colours = deep ? byDepth(palette) : byValue(palette);
  const said = colours.map(({ lab, share }) => words.colour(colourWords(lab), percent(share))).join('; ');
  const label = words.paletteOf(letter, deep ? words.rows.byDepth : words.rows.byValue, said);
  return (
    <>
      <div className={styles.strip} role="img" aria-label={label}>
        {colours.map(({ hex, share, lab }) => (
          <span
            key={`${hex} ${share}`}
            style={{ flexGrow: share, background: hex }}
            title={words.colour(colourWords(lab), percent(share))}
          />
        ))}
      </div>
      {order === 'depth' && !deep ? <p className={styles.note}>{words.noDepth}</p> : null}
    </>
  );
}
