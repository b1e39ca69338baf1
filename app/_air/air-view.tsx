'use client';
/**
 * The planes on their way to the air: a column a plane, far to near, chroma across and lightness upward.
 *
 * In the flow: measures -> geometry -> [air-view]. The drawing is for the eye; words and figures stand under it.
 */
import type { CSSProperties } from 'react';
import chart from '#app/_ladder/chart.module.css';
import { Axis, ColumnName } from '#app/_ladder/chart.tsx';
import { withKeys } from '#app/_ladder/with-keys.ts';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { PlaneKind } from '#server/core/contract/setup.ts';
import { speaksOfAmounts } from '#server/core/gaps/gap-words.ts';
import { airWords } from '#words/air.ts';
import styles from './air.module.css';
import { AirColours } from './air-colours.tsx';
import { AirFoot } from './air-foot.tsx';
import { airGeometry } from './air-geometry.ts';
import { AirPlot } from './air-plot.tsx';

interface AirViewProps {
  document: MeasureDocument;
  /** By column; null = unknown. */
  kinds: readonly (PlaneKind | null)[];
  /** By column: why the reference is not to be trusted there; null = it is. */
  untrusted: readonly (string | null)[];
  /** Index of the plane pointed at, −1 = none. */
  chosen: number;
  onChoose(index: number): void;
}

export function AirView({ document, kinds, untrusted, chosen, onChoose }: AirViewProps) {
  const geometry = airGeometry(document, kinds);
  const quiet = untrusted.map((reason) => reason !== null);
  const nearest = document.planes.findLastIndex(
    ({ painting }, at) => kinds[at] !== 'sky' && painting.mid !== null,
  );
  return (
    <>
      <AirColours document={document} />
      <ScrollRegion className={chart.scroller} label={airWords.plot}>
        <div className={chart.chart} style={{ '--planes': document.planes.length } as CSSProperties}>
          <Axis />
          <AirPlot geometry={geometry} quiet={quiet} chosen={chosen} />
          <ol className={chart.feet}>
            {withKeys(document.planes, (plane) => plane.name).map(({ key, item: plane, index }) => (
              <li key={key} className={chart.foot}>
                <ColumnName
                  name={plane.name}
                  number={index + 1}
                  pressed={chosen === index}
                  onPress={() => onChoose(chosen === index ? -1 : index)}
                />
                <AirFoot
                  document={document}
                  plane={plane}
                  place={kinds[index] === 'sky' ? 'sky' : index === nearest ? 'nearest' : 'far'}
                  reason={untrusted[index] ?? null}
                />
              </li>
            ))}
          </ol>
        </div>
      </ScrollRegion>
      <AirKey mostChroma={geometry.mostChroma} />
      <Limits document={document} kinds={kinds} />
    </>
  );
}

/** What the drawn things are. */
function AirKey({ mostChroma }: { mostChroma: number }) {
  const { key } = airWords;
  return (
    <p className={styles.key}>
      <span>{airWords.about}</span>
      <span>
        <i className={styles.keyAir} aria-hidden="true" /> {key.air}
      </span>
      <span>
        <i className={styles.keyPlane} aria-hidden="true" /> {key.plane}
      </span>
      <span>
        <i className={styles.keyStart} aria-hidden="true" /> {key.start}
      </span>
      <span>{airWords.chromaAxis(mostChroma)}</span>
    </p>
  );
}

/** What is not said or not measured here, and why. */
function Limits({ document, kinds }: { document: MeasureDocument; kinds: readonly (PlaneKind | null)[] }) {
  const sentences = [
    ...(speaksOfAmounts(document.capture.grade) ? [] : [airWords.orderOnly]),
    ...(document.air.painting === null ? [airWords.noAir] : []),
    ...(kinds.some((kind) => kind === 'sky' || kind === 'snow' || kind === 'built') &&
    speaksOfAmounts(document.capture.grade)
      ? [airWords.noShare]
      : []),
  ];
  return sentences.length > 0 ? <p className={styles.limits}>{sentences.join(' ')}</p> : null;
}
