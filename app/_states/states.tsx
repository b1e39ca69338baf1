'use client';
/**
 * The page of one painting's states: the time line, two of them on the stage, and what became of the advice between them.
 *
 * In the flow: page -> [states] -> time line, stage, results.
 */
import { useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { StatesView } from '#server/core/contract/states.ts';
import { words as shellWords } from '#words/shell.ts';
import { statesWords as words } from '#words/states.ts';
import { Results } from './results.tsx';
import { Stage } from './stage.tsx';
import styles from './states.module.css';
import { TimeLine } from './time-line.tsx';
import { useStates } from './use-states.ts';

export function States({ boardId, pictureId }: { boardId: string; pictureId: string }) {
  const { view, trouble, refresh } = useStates(boardId, pictureId);
  if (!view) {
    return trouble ? (
      <Notice trouble sentence={trouble}>
        <Button onClick={() => void refresh()}>{shellWords.tryAgain}</Button>
      </Notice>
    ) : (
      <p role="status">{words.loading}</p>
    );
  }
  return (
    <>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
      <Shown view={view} firstId={pictureId} refresh={refresh} />
    </>
  );
}

interface ShownProps {
  view: StatesView;
  /** The state that the page was opened for. */
  firstId: string;
  refresh(): Promise<void>;
}

function Shown({ view, firstId, refresh }: ShownProps) {
  const opened = view.states.findIndex(({ id }) => id === firstId);
  const [to, setTo] = useState(Math.max(Math.min(1, view.states.length - 1), opened));
  const [from, setFrom] = useState(to - 1);
  const choose = (at: number) => {
    // The first state has none before it: it is shown with the next one.
    const later = Math.max(1, at);
    setTo(later);
    setFrom(later - 1);
  };
  const step = view.steps[to - 1];
  const trouble = view.steps.slice(Math.max(0, from), to).find(({ facts }) => facts?.trouble)?.facts?.trouble;
  if (view.states.length < 2) {
    return (
      <>
        <p className={styles.lead}>{words.one}</p>
        <TimeLine view={view} chosen={-1} choose={() => undefined} />
      </>
    );
  }
  const told =
    step !== undefined &&
    !step.pending &&
    step.facts?.trouble === null &&
    view.states[to - 1]?.pending === null &&
    view.states[to]?.pending === null;
  return (
    <>
      <TimeLine view={view} chosen={to} choose={choose} />
      {trouble ? <p className={styles.lead}>{trouble}</p> : null}
      {trouble || !step || step.pending ? null : <Stage view={view} from={from} to={to} setFrom={setFrom} />}
      {step ? (
        <section className={styles.part} aria-labelledby="became">
          <h2 id="became">{words.cards.title}</h2>
          {told || step.cards.length > 0 ? null : <p className={styles.quiet}>{words.cards.notYet}</p>}
          <Results
            boardId={view.board.id}
            cards={step.cards}
            mayAnswer={view.mayAnswer}
            told={told}
            refresh={refresh}
          />
        </section>
      ) : null}
    </>
  );
}
