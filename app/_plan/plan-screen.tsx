'use client';
/**
 * The plan on the screen: the photograph large at the left, what is to be settled at the right, the planned ladder under
 * both. On a narrow screen one under the other.
 *
 * In the flow: plan-page -> [plan-screen] -> stage and the parts in `parts.tsx`.
 */
import { Refusals } from '#app/_easel/refusals.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { pictureName } from '#app/_post/picture-names.ts';
import { TakeAlong } from '#app/_take-along/take-along.tsx';
import { LineState } from '#app/_together/line-state.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { Tabs } from '#app/_ui/tabs.tsx';
import { planWords } from '#words/plan.ts';
import { words } from '#words/shell.ts';
import { PlannedFoot } from './ladder/planned-foot.tsx';
import { PanelOf, SETTLED } from './parts.tsx';
import styles from './plan.module.css';
import { usePlanChoice } from './plan-choice.tsx';
import { PreviewOnStage } from './preview/preview-on-stage.tsx';
import { Stage } from './stage/stage.tsx';

/** @param gone The server's sentence when the board can no longer be read. */
export function PlanScreen({ gone }: { gone: string | null }) {
  const { board, closedSentence, class: inClass } = useBoardLive();
  const { picture, photographs } = usePlanChoice();
  const closed = gone ?? closedSentence;
  const way = <a href={`/boards/${board.id}`}>{planWords.back}</a>;
  if (inClass.veiled)
    return (
      <PlainPage lead={planWords.veiled}>
        <p>{way}</p>
      </PlainPage>
    );
  if (!picture)
    return (
      <PlainPage title={planWords.title} lead={planWords.nothing}>
        <p>{way}</p>
      </PlainPage>
    );
  return (
    <div className={styles.screen}>
      <a className="unseen" href="#photograph">
        {planWords.skip}
      </a>
      <Head />
      <div className={styles.notes}>
        {closed ? (
          <Notice trouble sentence={closed}>
            <a href="/">{words.enter.back}</a>
          </Notice>
        ) : (
          <LineState />
        )}
        <Refusals />
      </div>
      <main id="photograph" className={styles.stage} aria-label={planWords.stage}>
        <Stage boardId={board.id} picture={picture} name={pictureName(picture, photographs)} />
        <PreviewOnStage />
      </main>
      {SETTLED.length > 0 ? <Parts /> : null}
      <footer className={styles.foot}>
        <PlannedFoot />
      </footer>
    </div>
  );
}

function Head() {
  const { board, undo, redo, canUndo, canRedo, may } = useBoardLive();
  const { picture, photographs, setPictureId } = usePlanChoice();
  return (
    <header className={styles.head}>
      <a className={styles.back} href={`/boards/${board.id}`}>
        {planWords.back}
      </a>
      <h1>{planWords.titleOf(board.title)}</h1>
      {photographs.length > 1 ? (
        <label className={styles.from}>
          {planWords.photograph}
          <select value={picture?.id} onChange={(event) => setPictureId(event.target.value)}>
            {photographs.map((each) => (
              <option key={each.id} value={each.id}>
                {pictureName(each, photographs)}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      {may.setup ? (
        <div className={styles.acts}>
          <Button weight="word" disabled={!canUndo} onClick={undo}>
            {planWords.undo}
          </Button>
          <Button weight="word" disabled={!canRedo} onClick={redo}>
            {planWords.redo}
          </Button>
        </div>
      ) : null}
    </header>
  );
}

function Parts() {
  const { board, may } = useBoardLive();
  const { part, setPart, picture } = usePlanChoice();
  return (
    <aside className={styles.side} aria-label={planWords.partsLabel}>
      <Tabs
        label={planWords.partsLabel}
        className={styles.tabs}
        names={SETTLED}
        open={part}
        wordOf={(name) => planWords.parts[name]}
        panelOf={() => 'panel-plan'}
        onTurn={setPart}
      />
      <div id="panel-plan" role="tabpanel" aria-labelledby={`tab-${part}`} className={styles.panel}>
        {may.setup ? null : <p className={styles.quiet}>{planWords.lookOn}</p>}
        <PanelOf part={part} />
        {picture ? <TakeAlong boardId={board.id} about="plan" pictureId={picture.id} /> : null}
      </div>
    </aside>
  );
}
