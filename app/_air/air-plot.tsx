'use client';
/** The drawing of the air view: ways, planes, airs. For the eye alone; hidden from those who listen. In the flow: geometry -> [plot]. */
import type { CSSProperties } from 'react';
import chart from '#app/_ladder/chart.module.css';
import styles from './air.module.css';
import type { AirColumn, AirGeometry, AirPoint, AirSide } from './air-geometry.ts';

const percent = (share: number) => `${(share * 100).toFixed(3)}%`;
const at = ({ x, y }: AirPoint): CSSProperties => ({ left: percent(x), top: percent(y) });

interface AirPlotProps {
  geometry: AirGeometry;
  /** By column: the reference is not to be trusted there. */
  quiet: readonly boolean[];
  chosen: number;
}

export function AirPlot({ geometry, quiet, chosen }: AirPlotProps) {
  return (
    <div className={`${chart.plot} ${styles.plot}`} aria-hidden="true">
      {geometry.columns.map((column, index) => (
        <div key={column.number} className={styles.column} data-chosen={chosen === index ? '' : undefined}>
          <div className={styles.inside}>
            <Ways column={column} quiet={quiet[index] ?? false} />
            {column.reference ? (
              <Points side={column.reference} from={null} target quiet={quiet[index] ?? false} />
            ) : null}
            <Points side={column.painting} from={column.from} />
          </div>
        </div>
      ))}
    </div>
  );
}

function Ways({ column: { reference, painting }, quiet }: { column: AirColumn; quiet: boolean }) {
  return (
    <svg className={styles.ways} viewBox="0 0 1000 1000" preserveAspectRatio="none" aria-hidden="true">
      {reference && !quiet ? <Way side={reference} target /> : null}
      <Way side={painting} />
    </svg>
  );
}

/** The part that the plane has gone, and, fainter, what lies between it and the air. */
function Way({ side, target = false }: { side: AirSide; target?: boolean }) {
  return (
    <g className={target ? styles.targetWay : undefined}>
      <polyline className={styles.ahead} points={pointsOf(side.ahead)} />
      <polyline points={pointsOf(side.travelled)} />
    </g>
  );
}

function pointsOf(way: readonly AirPoint[]): string {
  return way.map(({ x, y }) => `${(x * 1000).toFixed(1)},${(y * 1000).toFixed(1)}`).join(' ');
}

interface PointsProps {
  side: AirSide;
  /** Number beside the start, or null. */
  from: number | null;
  target?: boolean;
  quiet?: boolean;
}

function Points({ side, from, target = false, quiet = false }: PointsProps) {
  const rim = target ? styles.dashed : '';
  const { own, doubt, air, start, colour } = side;
  return (
    <>
      {own && doubt ? (
        <i
          className={styles.doubt}
          style={{ ...at(own), width: percent(2 * doubt.x), height: percent(2 * doubt.y) }}
        />
      ) : null}
      {air ? <i className={`${styles.air} ${rim}`} style={at(air)} /> : null}
      {start ? (
        <i className={`${styles.start} ${rim}`} style={at(start)}>
          {from}
        </i>
      ) : null}
      {own ? (
        <i
          className={`${styles.point} ${rim}`}
          data-quiet={quiet ? '' : undefined}
          style={{ ...at(own), ...(colour ? { background: colour } : {}) }}
        />
      ) : null}
    </>
  );
}
