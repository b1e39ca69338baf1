'use client';
/** The chart of all ladders as a table, with no more digits than the doubt of each figure allows. */
import { useId } from 'react';
import { digitsFor, halfOf } from '#app/_ladder/doubted.ts';
import { withKeys } from '#app/_ladder/with-keys.ts';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import { figure } from '#app/_words/figures.ts';
import type { PlaneMeasures } from '#server/core/contract/measures.ts';
import { wallWords as words } from '#words/wall.ts';
import type { MeasuredPainting } from './hung.ts';
import type { LadderPart } from './ladder-lines.ts';
import styles from './ladders.module.css';

interface FiguresProps {
  measured: readonly MeasuredPainting[];
  planes: readonly string[];
  part: LadderPart;
}

export function LadderFigures({ measured, planes, part }: FiguresProps) {
  const id = useId();
  const name = words.ladders.parts[part];
  return (
    <details className={styles.figures}>
      <summary>{words.ladders.table}</summary>
      <ScrollRegion label={words.ladders.table} className={styles.scroller}>
        <table aria-describedby={id}>
          <caption id={id}>{words.ladders.caption(name)}</caption>
          <thead>
            <tr>
              <th scope="col">{words.ladders.plane}</th>
              {measured.map(({ letter }) => (
                <th key={letter} scope="col">
                  {letter}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {withKeys(planes, (plane) => plane).map(({ key, item }) => (
              <tr key={key}>
                <th scope="row">{item}</th>
                {measured.map(({ letter, document }) => {
                  const plane = document.planes.find((each) => each.name === item);
                  return <td key={letter}>{plane ? valueText(plane.painting, part) : figure(null, 0)}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </details>
  );
}

/** On the ladder's scale of ten. */
function valueText({ doubt, ...measures }: PlaneMeasures, part: LadderPart): string {
  const lightness = measures[part];
  const half = halfOf(doubt[part]);
  const digits = digitsFor(half === null ? null : half / 10, 1);
  return figure(lightness === null ? null : lightness / 10, digits);
}
