'use client';
/**
 * The part of the plan where the ladder is wished for: air and how much of it, number of planes, light and weather, what
 * the plan decided, the target, the plans that were taken.
 *
 * In the flow: planned ladder -> [ladder-panel] -> wishes, target and kept plans of the setup room.
 */
import { useId } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { SceneConditions } from '#app/_scene/scene-conditions.tsx';
import { TargetChoice } from '#app/_target/target-choice.tsx';
import { TermsButton } from '#app/_terms/terms-button.tsx';
import { Button } from '#app/_ui/button.tsx';
import { readTaken, readTarget } from '#server/core/live/plan/taken-plan.ts';
import { planLadderWords as words } from '#words/plan-ladder.ts';
import { targetWords } from '#words/target.ts';
import { FrameChoice } from '../frame-choice.tsx';
import { AirChoice } from './air-choice.tsx';
import { KeptPlans } from './kept-plans.tsx';
import styles from './planned.module.css';
import { usePlannedLadder } from './planned-ladder.tsx';

export function LadderPanel() {
  const { ground, view, handles, clearHandles } = usePlannedLadder();
  const { board } = useBoardLive();
  if (!ground)
    return (
      <p>
        {words.noPlanes} <a href={`/boards/${board.id}`}>{words.toBoard}</a>
      </p>
    );
  return (
    <>
      <FrameChoice />
      <AirChoice />
      <Count />
      {handles.size > 0 ? (
        <div>
          <Button weight="word" onClick={() => clearHandles()}>
            {words.allAsAir}
          </Button>
        </div>
      ) : null}
      <Said notes={view?.notes ?? []} />
      <SceneConditions />
      <Target />
      <KeptPlans />
      <div>
        <TermsButton />
      </div>
    </>
  );
}

function Count() {
  const { ground, wishes, setWishes } = usePlannedLadder();
  const id = useId();
  const there = ground?.planes.length ?? 0;
  const counts = Array.from({ length: Math.max(0, there - 1) }, (_, at) => at + 1).filter((each) => each > 1);
  return (
    <div className={styles.acts}>
      <label htmlFor={id}>{words.count.title}</label>
      <select
        id={id}
        value={wishes.count ?? ''}
        onChange={({ target }) => setWishes({ count: target.value === '' ? null : Number(target.value) })}
      >
        <option value="">{words.count.all(there)}</option>
        {counts.map((each) => (
          <option key={each} value={each}>
            {words.count.some(each)}
          </option>
        ))}
      </select>
    </div>
  );
}

function Said({ notes }: { notes: readonly string[] }) {
  if (notes.length === 0) return null;
  return (
    <section className={styles.lines} aria-labelledby="plan-said">
      <h2 id="plan-said">{words.said}</h2>
      <ul className={styles.lines}>
        {notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </section>
  );
}

/** Which target counts now, for all who read; those who may, switch. */
function Target() {
  const { may } = useBoardLive();
  const doc = useRoomDocument('setup');
  if (!doc) return null;
  return (
    <section className={styles.lines} aria-labelledby="plan-target">
      <h2 id="plan-target">{targetWords.title}</h2>
      {readTaken(doc) === null ? <p className={styles.quiet}>{targetWords.none}</p> : null}
      {may.setup ? <TargetChoice /> : <p>{targetWords[readTarget(doc)]}</p>}
    </section>
  );
}
