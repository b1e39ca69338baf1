'use client';
/** Under a column of the air view: how far the plane goes back, in words and figures. In the flow: measures -> [foot]. */
import chart from '#app/_ladder/chart.module.css';
import { digitsFor, halfOf } from '#app/_ladder/doubted.ts';
import { figure, NO_FIGURE } from '#app/_words/figures.ts';
import type { MeasureDocument, PlaneMeasures, PlaneResult } from '#server/core/contract/measures.ts';
import { speaksOfAmounts } from '#server/core/gaps/gap-words.ts';
import { type Achieved, achievedOf, recessionWords } from '#server/core/readings/recession-words.ts';
import { airWords } from '#words/air.ts';
import { ladderWords } from '#words/ladder.ts';
import styles from './air.module.css';

interface AirFootProps {
  document: MeasureDocument;
  plane: PlaneResult;
  place: 'sky' | 'nearest' | 'far';
  /** Why the reference is not to be trusted here; null = it is. */
  reason: string | null;
}

export function AirFoot({ document, plane, place, reason }: AirFootProps) {
  const { grade } = document.capture;
  const achieved = achievedOf(plane, grade);
  const both = document.target === 'reference' && reason === null;
  return (
    <>
      <p className={chart.words}>{wordsOf({ document, plane, place, reason }, achieved)}</p>
      {speaksOfAmounts(grade) ? (
        <dl className={styles.figures}>
          {achieved ? (
            <div>
              <dt>{airWords.rows.achieved}</dt>
              <dd>{achievedText(achieved)}</dd>
            </div>
          ) : null}
          {(['airDistance', 'airShare'] as const).map((key) => (
            <div key={key}>
              <dt>{airWords.rows[key]}</dt>
              <dd>
                {both ? (
                  <Figure text={airText(key, plane.reference)} label={ladderWords.target.reference} dashed />
                ) : null}
                <Figure text={airText(key, plane.painting)} label={ladderWords.painting} />
              </dd>
            </div>
          ))}
        </dl>
      ) : null}
    </>
  );
}

/** A figure with the line that its picture is drawn with. */
function Figure({ text, label, dashed = false }: { text: string; label: string; dashed?: boolean }) {
  return (
    <span className={styles.figure}>
      <i className={dashed ? styles.dashedLine : styles.line} aria-hidden="true" />
      <span className="unseen">{label} </span>
      {text}
    </span>
  );
}

function wordsOf({ document, plane, place, reason }: AirFootProps, achieved: Achieved | null): string {
  if (place === 'sky') return document.air.painting ? airWords.sky : airWords.skyPicked;
  if (reason !== null) return ladderWords.untrusted(reason);
  if (place === 'nearest') return airWords.nearest;
  if (document.target === 'none') return airWords.noTarget;
  if (achieved) return recessionWords(achieved, document.target, document.capture.grade);
  return plane.recession ? airWords.noStep : airWords.noLight;
}

function achievedText({ figure: amount, interval }: Achieved): string {
  return figure(amount, Math.max(1, digitsFor(halfOf(interval), 2)));
}

function airText(key: 'airDistance' | 'airShare', measures: PlaneMeasures | null): string {
  const amount = measures?.[key] ?? null;
  if (amount === null) return NO_FIGURE;
  return key === 'airShare' ? `${figure(amount * 100, 0)} %` : figure(amount, 0);
}
