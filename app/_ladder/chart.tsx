'use client';
/**
 * The ladder drawn: value axis of real greys, a bar for each plane in its own colours, lines through the
 * middles, and under each plane its name, words and figures.
 *
 * In the flow: measures -> geometry -> [chart]. The drawing is for the eye; the table says the same in text.
 */
import type { CSSProperties } from 'react';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import { ladderWords } from '#app/_words/en-ladder.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { orderWords } from '#server/core/gaps/order-words.ts';
import styles from './chart.module.css';
import {
  AXIS_GREYS,
  type LadderBar,
  type LadderGeometry,
  type LadderPoint,
  ladderGeometry,
} from './geometry.ts';
import { planeFigures } from './plane-figures.ts';
import { withKeys } from './with-keys.ts';

const percent = (share: number) => `${(share * 100).toFixed(3)}%`;

interface ChartProps {
  document: MeasureDocument;
  /** Index of the plane pointed at, −1 = none. */
  chosen: number;
  onChoose(index: number): void;
}

export function Chart({ document, chosen, onChoose }: ChartProps) {
  const geometry = ladderGeometry(document.planes);
  return (
    <ScrollRegion className={styles.scroller} label={ladderWords.column.planes}>
      <div className={styles.chart} style={{ '--planes': document.planes.length } as CSSProperties}>
        <Axis />
        <Plot geometry={geometry} chosen={chosen} />
        <ol className={styles.feet}>
          {withKeys(document.planes, (plane) => plane.name).map(({ key, item: plane, index }) => (
            <li key={key} className={styles.foot}>
              <button
                type="button"
                className={styles.name}
                aria-pressed={chosen === index}
                title={ladderWords.chooseOn(plane.name)}
                onClick={() => onChoose(chosen === index ? -1 : index)}
              >
                <span>{index + 1}</span> {plane.name}
              </button>
              {plane.gap ? (
                <p className={styles.words}>{orderWords(plane.gap, document.target).join(', ')}</p>
              ) : null}
              <dl className={styles.figures}>
                {planeFigures(plane).map((row) => (
                  <FigureRow key={row.label} label={row.label} text={row.text} />
                ))}
              </dl>
            </li>
          ))}
        </ol>
      </div>
    </ScrollRegion>
  );
}

function FigureRow({ label, text }: { label: string; text: string }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{text}</dd>
    </div>
  );
}

/** Greys of L* 95 down to 5, numerals at the borders of the steps. */
function Axis() {
  return (
    <div className={styles.axis} aria-hidden="true">
      {[10, 8, 6, 4, 2, 0].map((step) => (
        <span key={step} className={styles.numeral} style={{ top: `${100 - step * 10}%` }}>
          {step}
        </span>
      ))}
      <div className={styles.greys}>
        {AXIS_GREYS.toReversed().map((grey) => (
          <span key={grey} style={{ background: grey }} />
        ))}
      </div>
    </div>
  );
}

function Plot({ geometry, chosen }: { geometry: LadderGeometry; chosen: number }) {
  const width = 1 / Math.max(1, geometry.columns.length);
  return (
    <div className={styles.plot} aria-hidden="true">
      {chosen >= 0 ? (
        <div className={styles.glow} style={{ left: percent(chosen * width), width: percent(width) }} />
      ) : null}
      <svg className={styles.lines} viewBox="0 0 1000 1000" preserveAspectRatio="none" aria-hidden="true">
        {geometry.targetLines.map((run) => (
          <polyline key={pointsOf(run)} className={styles.targetLine} points={pointsOf(run)} />
        ))}
        {geometry.paintingLines.map((run) => (
          <polyline key={pointsOf(run)} points={pointsOf(run)} />
        ))}
      </svg>
      {geometry.columns.map((column) => (
        <div key={column.number}>
          <Bar bar={column.target} target />
          <Bar bar={column.painting} />
        </div>
      ))}
    </div>
  );
}

function pointsOf(run: LadderPoint[]): string {
  return run.map(({ x, y }) => `${(x * 1000).toFixed(1)},${(y * 1000).toFixed(1)}`).join(' ');
}

function Bar({ bar, target = false }: { bar: LadderBar | null; target?: boolean }) {
  if (!bar) return null;
  const place: CSSProperties = { left: percent(bar.x), top: percent(bar.top), height: percent(bar.height) };
  if (bar.colours) {
    // Mixed in CIELAB, so that at every height the colour has the lightness the axis shows there.
    const { dark, mid, light } = bar.colours;
    place.background = `linear-gradient(in lab, ${light}, ${mid} ${percent(bar.middleWithin)}, ${dark})`;
  }
  const shape = `${styles.bar} ${target ? styles.target : ''} ${bar.middle === null ? '' : styles.notch}`;
  return (
    <div className={shape} style={{ ...place, '--middle': percent(bar.middleWithin) } as CSSProperties} />
  );
}
