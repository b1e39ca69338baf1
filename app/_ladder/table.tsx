'use client';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import { ladderWords } from '#app/_words/en-ladder.ts';
import { signedFigure } from '#app/_words/figures.ts';
/**
 * The ladder as text: every measure of every plane, the steps between them, how far each goes back, the whole.
 *
 * In the flow: measures -> [table]. Units stand in the headers; a dash where a measure could not be taken, its
 * reason in the notes under the plane.
 */
import { type MeasureDocument, type PlaneResult, STEP_KEYS } from '#server/core/contract/measures.ts';
import { gapText, huesText, MEASURE_ORDER, measureText } from './measure-rows.ts';
import styles from './table.module.css';
import { WholeTables } from './table-whole.tsx';
import { withKeys } from './with-keys.ts';

export function MeasureTable({ document }: { document: MeasureDocument }) {
  const target = ladderWords.target[document.target] || null;
  return (
    <div className={styles.tables}>
      <ScrollRegion className={styles.scroller} label={ladderWords.tableCaption.planes}>
        <table className={styles.table}>
          <caption>{ladderWords.tableCaption.planes}</caption>
          <thead>
            <tr>
              <th scope="col">{ladderWords.column.measure}</th>
              {target ? <th scope="col">{target}</th> : null}
              <th scope="col">{ladderWords.painting}</th>
              {target ? <th scope="col">{ladderWords.column.gap}</th> : null}
            </tr>
          </thead>
          {withKeys(document.planes, (plane) => plane.name).map(({ key, item: plane, index }) => (
            <PlaneRows key={key} plane={plane} number={index + 1} hasTarget={target !== null} />
          ))}
        </table>
      </ScrollRegion>
      <StepTable document={document} target={target} />
      <WholeTables document={document} />
      <p>{ladderWords.notTaken}</p>
    </div>
  );
}

function PlaneRows({ plane, number, hasTarget }: { plane: PlaneResult; number: number; hasTarget: boolean }) {
  const notes = [...new Set([...(plane.reference?.notes ?? []), ...plane.painting.notes])];
  const columns = hasTarget ? 4 : 2;
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={columns} className={styles.plane}>
          {number} {plane.name}
        </th>
      </tr>
      {MEASURE_ORDER.map((key) => (
        <tr key={key}>
          <th scope="row">{ladderWords.measure[key]}</th>
          {hasTarget ? <td>{measureText(key, plane.reference?.[key] ?? null)}</td> : null}
          <td>{measureText(key, plane.painting[key])}</td>
          {hasTarget ? <td className={styles.gap}>{gapText(key, plane.gap?.[key] ?? null)}</td> : null}
        </tr>
      ))}
      <tr>
        <th scope="row">{ladderWords.hues}</th>
        {hasTarget ? <td className={styles.text}>{huesText(plane.reference?.hueShares ?? null)}</td> : null}
        <td className={styles.text}>{huesText(plane.painting.hueShares)}</td>
        {hasTarget ? <td /> : null}
      </tr>
      {notes.length > 0 ? (
        <tr>
          <th scope="row">{ladderWords.column.notes}</th>
          <td colSpan={columns - 1} className={styles.long}>
            <ul className={styles.notes}>
              {notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          </td>
        </tr>
      ) : null}
    </tbody>
  );
}

/** One row a pair and picture would repeat the names; so a row group a pair, a row a figure, as above. */
function StepTable({ document, target }: { document: MeasureDocument; target: string | null }) {
  if (document.steps.length === 0) return null;
  return (
    <ScrollRegion className={styles.scroller} label={ladderWords.tableCaption.steps}>
      <table className={styles.table}>
        <caption>{ladderWords.tableCaption.steps}</caption>
        <thead>
          <tr>
            <th scope="col">{ladderWords.column.measure}</th>
            {target ? <th scope="col">{target}</th> : null}
            <th scope="col">{ladderWords.painting}</th>
            {target ? <th scope="col">{ladderWords.column.gap}</th> : null}
          </tr>
        </thead>
        {withKeys(document.steps, (step) => `${step.far} ${step.near}`).map(({ key: pair, item: step }) => (
          <tbody key={pair}>
            <tr>
              <th scope="rowgroup" colSpan={target ? 4 : 2} className={styles.plane}>
                {step.far} → {step.near}
              </th>
            </tr>
            {STEP_KEYS.map((key) => (
              <tr key={key}>
                <th scope="row">{ladderWords.step[key]}</th>
                {target ? <td>{signedFigure(step.reference?.[key] ?? null, 1)}</td> : null}
                <td>{signedFigure(step.painting[key], 1)}</td>
                {target ? <td className={styles.gap}>{signedFigure(step.gap?.[key] ?? null, 1)}</td> : null}
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </ScrollRegion>
  );
}
