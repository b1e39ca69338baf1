'use client';
/**
 * A painting's ladder, small: a bar a plane in its own colours, the middles of what it is held against as a broken line.
 *
 * In the flow: measures -> core/ladder geometry -> [small-ladder] -> screen. The chart under the wall says the same in
 * figures.
 */
import type { CSSProperties } from 'react';
import { figure } from '#app/_words/figures.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { heightOfLightness, type LadderBar, ladderGeometry } from '#server/core/ladder/geometry.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './painting.module.css';

const share = (part: number) => `${(part * 100).toFixed(2)}%`;

export function SmallLadder({ letter, document }: { letter: string; document: MeasureDocument }) {
  const { planes } = document;
  const own = ladderGeometry(planes.map((plane) => ({ ...plane, reference: null })));
  const target = planes.flatMap(({ reference, gap, painting }, at): string[] => {
    const middle = middleOfTarget(document.target, reference?.mid, painting.mid, gap?.mid);
    return middle === null
      ? []
      : [`${((at + 0.5) / planes.length) * 100},${heightOfLightness(middle) * 100}`];
  });
  const values = planes.map(({ name, painting }) => words.value(name, figure(tenth(painting.mid), 0)));
  return (
    <div className={styles.ladder} role="img" aria-label={words.ladderOf(letter, values.join(', '))}>
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        <polyline points={target.join(' ')} />
      </svg>
      {own.columns.map(({ number, painting }) =>
        painting ? <Bar key={number} bar={painting} planes={planes.length} /> : null,
      )}
    </div>
  );
}

/** L* as a tenth, on the ladder's scale. */
const tenth = (lightness: number | null) => (lightness === null ? null : lightness / 10);

/** Against a plan the target stands in no column of its own: it is the painting without its gap. */
function middleOfTarget(
  target: MeasureDocument['target'],
  reference: number | null | undefined,
  painting: number | null,
  gap: number | null | undefined,
): number | null {
  if (target === 'reference') return reference ?? null;
  return target === 'plan' && painting !== null && gap != null ? painting - gap : null;
}

function Bar({ bar, planes }: { bar: LadderBar; planes: number }) {
  const place: CSSProperties = {
    left: share(bar.x),
    width: share(0.5 / planes),
    top: share(bar.top),
    height: share(bar.height),
  };
  if (bar.colours) {
    // Mixed in CIELAB, as on the large ladder: at every height the colour has the lightness that the scale has there.
    const { dark, mid, light } = bar.colours;
    place.background = `linear-gradient(in lab, ${light}, ${mid} ${share(bar.middleWithin)}, ${dark})`;
  }
  return <i style={place} />;
}
