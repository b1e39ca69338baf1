'use client';
/**
 * How far the photo can be trusted: its grade in words, every reason with what to do about it, glare and clipping,
 * and how to photograph the painting again.
 *
 * In the flow: measured document -> [capture-trust] -> leaf.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { adviceFor, RESHOOT_STEPS } from '#server/core/capture/advice.ts';
import { CAPTURE_REASONS, type CaptureReason } from '#server/core/capture/reasons.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { words } from '#words/photo.ts';
import { OverlayKey } from './capture-overlay.tsx';
import styles from './leaf.module.css';
import { usePhotoDesk } from './photo-desk.tsx';

/** A reason as the document names it, if it is one of ours. */
const reasonOf = (name: string): CaptureReason | undefined =>
  CAPTURE_REASONS.find((reason) => reason === name);

export function CaptureTrust() {
  const { planes } = useBoardLive();
  const { document, pending, trouble } = useBoardMeasures();
  const capture = document?.capture;
  return (
    <section className={styles.part} aria-labelledby="trust-title">
      <h2 id="trust-title" className={styles.title}>
        {words.trust.title}
      </h2>
      {capture?.grade ? (
        <p className={styles.grade} data-grade={capture.grade}>
          <strong>{words.trust.grade(capture.grade)}</strong>
          <span>{words.trust[capture.grade]}</span>
        </p>
      ) : null}
      {pending || !document ? (
        <p className={styles.quiet} role="status">
          {trouble ?? (planes.length === 0 ? words.trust.notYet : (pending ?? words.trust.pending))}
        </p>
      ) : null}
      {capture?.grade ? <Reasons capture={capture} /> : null}
      {capture?.grade ? <Overlay capture={capture} /> : null}
      <details className={styles.fold}>
        <summary>{words.trust.again}</summary>
        <ol className={styles.steps}>
          {RESHOOT_STEPS.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </details>
    </section>
  );
}

function Reasons({ capture }: { capture: MeasureDocument['capture'] }) {
  const { tool } = useTools();
  const { righted } = usePhotoDesk();
  const reasons = capture.reasons.map(reasonOf).filter((reason) => reason !== undefined);
  // While the photo is put right, its cards say at once what could not be used.
  const atOnce = tool === 'photo' ? (righted.picture?.notes ?? []) : [];
  const notes = atOnce.length > 0 ? [] : (capture.notes ?? []);
  if (reasons.length + notes.length === 0) return <p className={styles.quiet}>{words.trust.fineTitle}</p>;
  return (
    <>
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {reasons.length > 0 ? <h3 className={styles.small}>{words.trust.reasonsTitle}</h3> : null}
      <ul className={styles.reasons}>
        {reasons.map((reason) => (
          <li key={reason}>
            <strong>{words.trust.reasons[reason]}.</strong>{' '}
            {reason === 'uneven light' && capture.unevenness
              ? `${words.trust.uneven(capture.unevenness)} `
              : null}
            {adviceFor(reason)}
          </li>
        ))}
      </ul>
    </>
  );
}

/** Glare and clipping: the switch for the patterns, and how much of the painting each covers. */
function Overlay({ capture }: { capture: MeasureDocument['capture'] }) {
  const { overlayShown, setOverlayShown } = usePhotoDesk();
  if (!capture.overlay) return null;
  return (
    <div className={styles.overlay}>
      <label className={styles.check}>
        <input
          type="checkbox"
          checked={overlayShown}
          onChange={(event) => setOverlayShown(event.target.checked)}
        />
        {words.overlay.show}
      </label>
      <OverlayKey />
    </div>
  );
}
