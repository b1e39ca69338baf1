'use client';
/**
 * The ladder drawn: value axis of real greys, a bar for each plane in its own colours, lines through the
 * middles, and under each plane its name, words and figures.
 *
 * In the flow: measures -> geometry -> [chart]. The drawing is for the eye; the table says the same in text.
 */
import type { CSSProperties, ReactNode } from 'react';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { gapWords } from '#server/core/gaps/gap-words.ts';
import {
  AXIS_GREYS,
  type LadderBar,
  type LadderGeometry,
  type LadderPoint,
  type LadderSpan,
  ladderGeometry,
} from '#server/core/ladder/geometry.ts';
import { ladderWords } from '#words/ladder.ts';
import styles from './chart.module.css';
import { barsInWords, planeDoubt, planeFigures } from './plane-figures.ts';
import { withKeys } from './with-keys.ts';

const percent = (share: number) => `${(share * 100).toFixed(3)}%`;

interface ChartProps {
  document: MeasureDocument;
  /** By column: why the reference is not to be trusted there; null = it is. */
  untrusted: readonly (string | null)[];
  /** Index of the plane pointed at, −1 = none. */
  chosen: number;
  onChoose(index: number): void;
  /** What lies over the bars, in shares of the plot: handles for instance. */
  over?: (geometry: LadderGeometry) => ReactNode;
  /** What stands under a plane's name instead of its words and figures. */
  foot?: (index: number) => ReactNode;
}

export function Chart({ document, untrusted, chosen, onChoose, over, foot }: ChartProps) {
  const quiet = untrusted.map((reason) => reason !== null);
  const geometry = ladderGeometry(document.planes, quiet);
  return (
    <ScrollRegion className={styles.scroller} label={ladderWords.column.planes}>
      <div className={styles.chart} style={{ '--planes': document.planes.length } as CSSProperties}>
        <Axis />
        <Plot geometry={geometry} chosen={chosen} />
        {over ? <div className={styles.over}>{over(geometry)}</div> : null}
        <ol className={styles.feet}>
          {withKeys(document.planes, (plane) => plane.name).map(({ key, item: plane, index }) => (
            <li key={key} className={styles.foot}>
              <ColumnName
                name={plane.name}
                number={index + 1}
                pressed={chosen === index}
                onPress={() => onChoose(chosen === index ? -1 : index)}
              />
              {foot?.(index) ?? <Foot document={document} index={index} reason={untrusted[index] ?? null} />}
            </li>
          ))}
        </ol>
      </div>
    </ScrollRegion>
  );
}

interface ColumnNameProps {
  name: string;
  number: number;
  pressed: boolean;
  onPress(): void;
}

/** Number and name of a column's plane; pressed, it is found on the pictures. */
export function ColumnName({ name, number, pressed, onPress }: ColumnNameProps) {
  return (
    <button
      type="button"
      className={styles.name}
      aria-pressed={pressed}
      title={ladderWords.chooseOn(name)}
      onClick={onPress}
    >
      <span>{number}</span> {name}
    </button>
  );
}

/** What is said of one plane: words, figures, and how far off they may be. */
function Foot({
  document,
  index,
  reason,
}: {
  document: MeasureDocument;
  index: number;
  reason: string | null;
}) {
  const plane = document.planes[index];
  if (!plane) return null;
  const { grade } = document.capture;
  const doubt = planeDoubt(plane, grade);
  const said =
    reason === null ? gapWords(plane, document.target, grade).join(', ') : ladderWords.untrusted(reason);
  return (
    <>
      <p className="unseen">{barsInWords(plane, document.target, grade).join(' ')}</p>
      {plane.gap || reason !== null ? <p className={styles.words}>{said}</p> : null}
      <dl className={styles.figures}>
        {planeFigures(plane, grade).map(({ label, text, sure }) => (
          <div key={label} data-unsure={sure ? undefined : ''}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {doubt ? (
        <p className={styles.doubt} title={ladderWords.doubtTitle}>
          {doubt}
        </p>
      ) : null}
    </>
  );
}

/** Greys of L* 95 down to 5, numerals at the borders of the steps. */
export function Axis() {
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
          <Bar bar={column.target} target quiet={column.quietTarget} />
          <Bar bar={column.painting} />
        </div>
      ))}
    </div>
  );
}

function pointsOf(run: LadderPoint[]): string {
  return run.map(({ x, y }) => `${(x * 1000).toFixed(1)},${(y * 1000).toFixed(1)}`).join(' ');
}

interface BarProps {
  bar: LadderBar | null;
  target?: boolean;
  /** Shown, but not to be gone by. */
  quiet?: boolean;
}

function Bar({ bar, target = false, quiet = false }: BarProps) {
  if (!bar) return null;
  const place: CSSProperties = { left: percent(bar.x), top: percent(bar.top), height: percent(bar.height) };
  if (bar.colours) {
    // Mixed in CIELAB, so that at every height the colour has the lightness the axis shows there.
    const { dark, mid, light } = bar.colours;
    place.background = `linear-gradient(in lab, ${light}, ${mid} ${percent(bar.middleWithin)}, ${dark})`;
  }
  const shape = `${styles.bar} ${target ? styles.target : ''} ${bar.middle === null ? '' : styles.notch}`;
  return (
    <>
      <Whisker span={bar.above} x={bar.x} end="above" />
      <Whisker span={bar.below} x={bar.x} end="below" />
      <Whisker span={bar.around} x={bar.x} end="around" />
      <div
        className={shape}
        data-quiet={quiet ? '' : undefined}
        style={{ ...place, '--middle': percent(bar.middleWithin) } as CSSProperties}
      />
    </>
  );
}

/** Doubt: a thin line that fades out where lights or darks may still reach, or beside the middle. */
function Whisker({
  span,
  x,
  end,
}: {
  span: LadderSpan | null;
  x: number;
  end: 'above' | 'below' | 'around';
}) {
  if (!span) return null;
  const place = { left: percent(x), top: percent(span.top), height: percent(span.height) };
  return <i className={styles.whisker} data-end={end} style={place} />;
}
