'use client';
import { hexFromLinear } from '#server/core/colour/hex.ts';
import { rgbFromLab } from '#server/core/colour/lab.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { speaksOfAmounts } from '#server/core/gaps/gap-words.ts';
import { colourWords } from '#server/core/wall/colour-words.ts';
import { farWords } from '#server/core/wall/far-words.ts';
/** How each painting says far: the colour of its air, and its far plane in words. In the flow: measures -> core/wall -> [far]. */
import { wallWords as words } from '#words/wall.ts';
import styles from './far.module.css';
import { type Hung, measuredOf } from './hung.ts';

export function FarPart({ hung }: { hung: readonly Hung[] }) {
  const measured = measuredOf(hung);
  const target = measured[0]?.document.target;
  if (!target) return null;
  return (
    <>
      <p className={styles.quiet}>
        {words.far.target[target]} {measured.some(unsure) ? words.far.orderOnly : null}
      </p>
      <ul className={styles.list}>
        {measured.map(({ letter, document }) => (
          <li key={letter} className={styles.one}>
            <h3>{letter}</h3>
            <Air document={document} />
            <Words document={document} skies={skiesOf(hung.find((each) => each.letter === letter))} />
          </li>
        ))}
      </ul>
    </>
  );
}

const unsure = ({ document }: { document: MeasureDocument }) => !speaksOfAmounts(document.capture.grade);

function skiesOf(hung: Hung | undefined): ReadonlySet<string> {
  const planes = hung?.data?.work?.planes ?? [];
  return new Set(planes.flatMap(({ name, kind }) => (kind === 'sky' ? [name] : [])));
}

function Air({ document: { air, capture } }: { document: MeasureDocument }) {
  if (!air.painting) return <p className={styles.air}>{words.far.airNone}</p>;
  return (
    <p className={styles.air}>
      <i className={styles.swatch} style={{ background: hexFromLinear(...rgbFromLab(air.painting)) }} />
      <span>
        <span className="unseen">{words.far.air}: </span>
        {colourWords(air.painting)}
        {speaksOfAmounts(capture.grade) ? null : <small> ({words.far.asPhotographed})</small>}
      </span>
    </p>
  );
}

function Words({ document, skies }: { document: MeasureDocument; skies: ReadonlySet<string> }) {
  const far = farWords(document, skies);
  if (!far || far.sentences.length === 0) return <p>{words.far.nothing}</p>;
  return (
    <p>
      <strong>{far.plane}.</strong> {far.sentences.join(' ')}
    </p>
  );
}
