'use client';
/**
 * What the class has to say in the talk: what this person writes now, what was seen first, the running order, and for who
 * runs the class the rest of its controls.
 *
 * In the flow: talk -> [class-part] -> first impression, what is said back, order, controls.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { isRevealed } from '#server/core/class/state.ts';
import { classWords as words } from '#words/class.ts';
import styles from './class.module.css';
import { RunControls } from './run-controls.tsx';
import { SaidBack } from './said-back.tsx';

const FirstImpression = late(() => import('./first-impression.tsx').then((module) => module.FirstImpression));
const Impressions = late(() => import('./impressions.tsx').then((module) => module.Impressions));
const RunningOrder = late(() => import('./running-order.tsx').then((module) => module.RunningOrder));

/** What is written now, above everything else of the talk. */
export function ClassTask() {
  const { class: inClass } = useBoardLive();
  const { paintingId } = useTools();
  const { state, silentId, known } = inClass;
  if (!known) return null;
  const pictureId = state.now?.pictureId ?? paintingId;
  if (pictureId === null) return null;
  return (
    <>
      {state.now !== null && inClass.writesImpressions ? (
        <FirstImpression key={pictureId} pictureId={pictureId} writing={silentId !== null} />
      ) : null}
      {silentId !== null && !inClass.writesImpressions ? (
        <p className={styles.note}>{words.impression.later}</p>
      ) : null}
      {silentId === null ? <SaidBack pictureId={pictureId} asked={state.now?.step === 'say-back'} /> : null}
      {isRevealed(state, pictureId) ? (
        <Impressions pictureId={pictureId} open={state.now?.step === 'intention'} />
      ) : null}
    </>
  );
}

/** Who comes when, under what is said of the picture. */
export function ClassOrder() {
  const { class: inClass } = useBoardLive();
  const { state, runs } = inClass;
  const held = state.now !== null || (runs && state.order.length > 0);
  return (
    <>
      {held ? <RunningOrder /> : null}
      {runs ? <RunControls /> : null}
    </>
  );
}
