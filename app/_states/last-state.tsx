'use client';
/**
 * On the board, beside the cards of a state that follows another: what became of the last state's cards, its planes to
 * take over in one step, and the way to all states side by side.
 *
 * In the flow: critique -> [last-state], loaded late -> results. IO: HTTP.
 */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { takeOverPlanes } from '#app/_api/states.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { statesWords as words } from '#words/states.ts';
import { Results } from './results.tsx';
import styles from './states.module.css';
import { useStates } from './use-states.ts';

const TITLE_ID = 'last-state-title';

export function LastState({ painting }: { painting: PictureView }) {
  const { board } = useBoardLive();
  const { document } = useBoardMeasures();
  const { view, trouble, refresh } = useStates(board.id, painting.id, document);
  if (trouble && !view) return <Notice trouble sentence={trouble} />;
  const step = view?.steps.find(({ to }) => to === painting.id);
  if (!view || !step) return null;
  const last = view.states.find(({ id }) => id === step.from);
  return (
    <section className={styles.part} aria-labelledby={TITLE_ID}>
      <h2 id={TITLE_ID} className={styles.aside}>
        {words.cards.last}
      </h2>
      {step.pending ? (
        <p className={styles.quiet} role="status">
          {words.line.laying}
        </p>
      ) : null}
      {step.facts?.trouble ? (
        <p>{step.facts.trouble}</p>
      ) : (
        <>
          {last?.outlined ? <PlanesOfLast painting={painting} /> : null}
          <Results
            boardId={board.id}
            cards={step.cards}
            mayAnswer={view.mayAnswer}
            told={!step.pending && document !== null && last?.pending === null}
            refresh={refresh}
          />
        </>
      )}
      <p>
        <a href={`/boards/${board.id}/paintings/${painting.id}`}>{words.link}</a>
      </p>
    </section>
  );
}

/** One step in place of outlining anew; nothing is offered where this state has planes of its own. */
function PlanesOfLast({ painting }: { painting: PictureView }) {
  const { board, outlinesOf, may, planes } = useBoardLive();
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState<{ sentence: string; trouble: boolean } | null>(null);
  const offered = planes.length > 0 && outlinesOf(painting.id).size === 0 && may.painting(painting.id);
  const takeOver = async () => {
    setBusy(true);
    try {
      const { planes: count } = await takeOverPlanes(board.id, painting.id);
      setSaid({ sentence: words.planes.done(count), trouble: false });
    } catch (thrown) {
      setSaid({ sentence: sentenceOf(thrown), trouble: true });
    }
    setBusy(false);
  };
  return (
    <>
      {offered ? (
        <div className={styles.offer}>
          <Button busy={busy} busyWord={words.planes.busy} onClick={() => void takeOver()}>
            {words.planes.offer}
          </Button>
          <p className={styles.quiet}>{words.planes.how}</p>
        </div>
      ) : null}
      <p role="status" className={said && !said.trouble ? styles.quiet : undefined}>
        {said?.sentence}
      </p>
    </>
  );
}
