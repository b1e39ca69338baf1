'use client';
/**
 * The planned ladder at the foot of the plan page: the plan before the photograph's own ladder, with its handles, and
 * what does not recede said at once.
 *
 * In the flow: planned ladder -> [planned-foot] -> the board's chart, bar handles, plane feet.
 */
import { useState } from 'react';
import { Chart } from '#app/_ladder/chart.tsx';
import ladder from '#app/_ladder/ladder.module.css';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { LadderGeometry } from '#server/core/ladder/geometry.ts';
import { planLadderWords as words } from '#words/plan-ladder.ts';
import { BarHandles } from './bar-handles.tsx';
import { PlaneFoot } from './plane-foot.tsx';
import styles from './planned.module.css';
import { usePlannedLadder } from './planned-ladder.tsx';
import type { PlannedView } from './planned-view.ts';
import { TakePlan } from './take-plan.tsx';

export function PlannedFoot() {
  const { view } = usePlannedLadder();
  return (
    <section className={`${ladder.ladder} ${styles.planned}`} aria-labelledby="planned-title">
      <div className={ladder.head}>
        <h2 id="planned-title" className={styles.title}>
          {words.title}
        </h2>
        <p className={ladder.against}>{view ? words.about : ''}</p>
        {view ? <Key /> : null}
        {view ? <TakePlan /> : null}
      </div>
      {view ? <Shown view={view} /> : <NotYet />}
    </section>
  );
}

function Key() {
  return (
    <div className={ladder.key} aria-hidden="true">
      <span>
        <i className={ladder.dashed} /> {words.photograph}
      </span>
      <span>
        <i /> {words.plan}
      </span>
    </div>
  );
}

function Shown({ view }: { view: PlannedView }) {
  const [chosen, setChosen] = useState(-1);
  const { document, planeIds, amiss } = view;
  const over = ({ columns }: LadderGeometry) =>
    columns.map(({ name, painting: bar, number }) => {
      const plane = document.planes[number - 1];
      const planeId = planeIds[number - 1];
      return bar && plane && planeId ? (
        <BarHandles key={number} {...{ name, planeId, bar }} planned={plane.painting} />
      ) : null;
    });
  const foot = (index: number) => {
    const plane = document.planes[index];
    return plane ? <PlaneFoot plane={plane} planeId={planeIds[index] ?? ''} /> : null;
  };
  return (
    <>
      <Amiss sentences={amiss} />
      <Chart
        document={document}
        untrusted={document.planes.map(() => null)}
        chosen={chosen}
        onChoose={setChosen}
        {...{ over, foot }}
      />
    </>
  );
}

/** What does not recede, said at once while a handle is moved. */
function Amiss({ sentences }: { sentences: readonly string[] }) {
  return (
    <div role="status" className={styles.amiss}>
      {sentences.length === 0 ? <p className={styles.fine}>{words.nothingAmiss}</p> : null}
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}

function NotYet() {
  const { board, ready, may } = useBoardLive();
  const { ground, sentence, failed } = usePlannedLadder();
  if (!ready) return <p className={ladder.doing}>{words.connecting}</p>;
  if (!ground)
    return (
      <p className={styles.empty}>
        {words.noPlanes} {may.setup ? <a href={`/boards/${board.id}`}>{words.toBoard}</a> : null}
      </p>
    );
  if (sentence) return <p className={styles.empty}>{sentence}</p>;
  if (failed) return <p className={styles.empty}>{words.failed}</p>;
  return <p className={ladder.doing}>{words.working}</p>;
}
