'use client';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
/**
 * The ladder as text: every measure of every plane, the steps between them, how far each goes back, the whole.
 *
 * In the flow: measures -> [table]. Units stand in the headers; a dash where a measure could not be taken, its
 * reason in the notes under the plane.
 */
import {
  type GapKey,
  type MeasureDocument,
  type PlaneResult,
  STEP_KEYS,
  type Step,
  type StepKey,
} from '#server/core/contract/measures.ts';
import { ladderWords } from '#words/ladder.ts';
import { Doubted } from './doubted-cell.tsx';
import { gapText, huesText, MEASURE_ORDER, measureText, stepText } from './measure-rows.ts';
import styles from './table.module.css';
import { WholeTables } from './table-whole.tsx';
import { withKeys } from './with-keys.ts';

interface MeasureTableProps {
  document: MeasureDocument;
  /** By column: why the reference is not to be trusted there; null = it is. */
  untrusted: readonly (string | null)[];
}

export function MeasureTable({ document, untrusted }: MeasureTableProps) {
  const target = ladderWords.target[document.target] || null;
  return (
    <div className={styles.tables}>
      <p className={styles.about}>
        {ladderWords.intervals} {ladderWords.notTaken}
      </p>
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
            <PlaneRows
              key={key}
              plane={plane}
              number={index + 1}
              hasTarget={target !== null}
              reason={untrusted[index] ?? null}
            />
          ))}
        </table>
      </ScrollRegion>
      <StepTable document={document} target={target} />
      <WholeTables document={document} />
    </div>
  );
}

interface PlaneRowsProps {
  plane: PlaneResult;
  number: number;
  hasTarget: boolean;
  /** Why the reference is not to be trusted here; null = it is. */
  reason: string | null;
}

/** A figure of the target with its interval; what is planned has none. */
function targetText({ reference, planned }: PlaneResult, key: GapKey) {
  if (planned !== undefined) return measureText(key, planned?.[key] ?? null);
  return measureText(key, reference?.[key] ?? null, reference?.doubt[key]);
}

/** A plan says nothing of hues. */
function targetHues({ reference, planned }: PlaneResult) {
  return planned === undefined ? (reference?.hueShares ?? null) : null;
}

/** The target's own step: the painting's, less the difference. */
function targetStep({ reference, painting, gap }: Step, key: StepKey, planned: boolean): number | null {
  if (!planned) return reference?.[key] ?? null;
  const [here, apart] = [painting[key], gap?.[key] ?? null];
  return here === null || apart === null ? null : here - apart;
}

function PlaneRows({ plane, number, hasTarget, reason }: PlaneRowsProps) {
  const said = reason === null ? [] : [ladderWords.untrusted(reason)];
  const notes = [...new Set([...said, ...(plane.reference?.notes ?? []), ...plane.painting.notes])];
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
          {hasTarget ? <Doubted quiet={reason !== null} {...targetText(plane, key)} /> : null}
          <Doubted {...measureText(key, plane.painting[key], plane.painting.doubt[key])} />
          {hasTarget ? (
            <Doubted strong {...gapText(key, plane.gap?.[key] ?? null, plane.doubt?.gap[key])} />
          ) : null}
        </tr>
      ))}
      <tr>
        <th scope="row">{ladderWords.hues}</th>
        {hasTarget ? <td className={styles.text}>{huesText(targetHues(plane))}</td> : null}
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
                {target ? <Doubted {...stepText(targetStep(step, key, document.target === 'plan'))} /> : null}
                <Doubted {...stepText(step.painting[key], step.doubt?.painting[key])} />
                {target ? (
                  <Doubted strong {...stepText(step.gap?.[key] ?? null, step.doubt?.gap[key])} />
                ) : null}
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </ScrollRegion>
  );
}
