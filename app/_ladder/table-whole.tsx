'use client';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import { figure, NO_FIGURE, signedFigure } from '#app/_words/figures.ts';
/** The last two tables: how far back each plane goes compared with the target, and the picture as a whole. */
import type { MeasureDocument, PlaneResult, Recession } from '#server/core/contract/measures.ts';
import type { LabColour } from '#server/core/contract/setup.ts';
import { speaksOfAmounts } from '#server/core/gaps/gap-words.ts';
import { achievedOf } from '#server/core/readings/recession-words.ts';
import { ladderWords } from '#words/ladder.ts';
import { doubted } from './doubted.ts';
import { Doubted } from './doubted-cell.tsx';
import styles from './table.module.css';
import { withKeys } from './with-keys.ts';

const RECESSION_KEYS: readonly (keyof Recession)[] = ['darks', 'spread', 'chroma', 'air'];
const RATIO = { digits: 2, times: 1, signed: false };

function airText(air: LabColour | null): string {
  return air ? `${figure(air.L, 0)}, ${signedFigure(air.a, 0)}, ${signedFigure(air.b, 0)}` : NO_FIGURE;
}

/** The one figure of a far plane, then the four it is the middle of. */
function RecessionCells({ document, plane }: { document: MeasureDocument; plane: PlaneResult }) {
  const achieved = achievedOf(plane, document.capture.grade);
  return (
    <>
      <Doubted strong {...doubted(achieved?.figure ?? null, achieved?.interval, RATIO)} />
      {RECESSION_KEYS.map((key) => (
        <Doubted key={key} {...doubted(plane.recession?.[key] ?? null, plane.doubt?.recession[key], RATIO)} />
      ))}
    </>
  );
}

export function WholeTables({ document }: { document: MeasureDocument }) {
  const { column, tableCaption, whole } = ladderWords;
  const target = ladderWords.target[document.target] || null;
  return (
    <>
      {target ? (
        <ScrollRegion className={styles.scroller} label={tableCaption.recession}>
          <table className={styles.table}>
            <caption>{tableCaption.recession}</caption>
            <thead>
              <tr>
                <th scope="col">{column.plane}</th>
                <th scope="col">{column.achieved}</th>
                {RECESSION_KEYS.map((key) => (
                  <th key={key} scope="col">
                    {column[key]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {withKeys(document.planes, (plane) => plane.name).map(({ key: row, item: plane, index }) => (
                <tr key={row}>
                  <th scope="row">
                    {index + 1} {plane.name}
                  </th>
                  <RecessionCells document={document} plane={plane} />
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollRegion>
      ) : null}
      <ScrollRegion className={styles.scroller} label={tableCaption.whole}>
        <table className={styles.table}>
          <caption>{tableCaption.whole}</caption>
          <thead>
            <tr>
              <th scope="col">{column.measure}</th>
              {target ? <th scope="col">{target}</th> : null}
              <th scope="col">{ladderWords.painting}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{whole.air}</th>
              {target ? <td>{airText(document.air.reference)}</td> : null}
              <td>{airText(document.air.painting)}</td>
            </tr>
            {target ? (
              <>
                <tr>
                  <th scope="row">{whole.key}</th>
                  <td />
                  <td>{signedFigure(document.fit.key, 0)}</td>
                </tr>
                <tr>
                  <th scope="row">{whole.span}</th>
                  <td />
                  <td>{figure(document.fit.span, speaksOfAmounts(document.capture.grade) ? 2 : 1)}</td>
                </tr>
              </>
            ) : null}
          </tbody>
        </table>
      </ScrollRegion>
    </>
  );
}
