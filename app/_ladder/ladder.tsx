'use client';
/**
 * The ladder under the pictures: chart, air or table of the painting on the easel, or what to do until there is one.
 *
 * In the flow: live board + measures -> [ladder] -> chart, air view, table. Which plane is pointed at is shared with the
 * easel through the tools.
 */
import { type ReactNode, useState } from 'react';
import { FrameSaid } from '#app/_framed/frame-said.tsx';
import { useBoardLive, useShownPreview } from '#app/_live/board-live.tsx';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { TermsButton } from '#app/_terms/terms-button.tsx';
import { Button } from '#app/_ui/button.tsx';
import { late } from '#app/_ui/late.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { speaksOfAmounts } from '#server/core/gaps/gap-words.ts';
import { swappedWords } from '#server/core/gaps/order-words.ts';
import { planeIdOfColumn } from '#server/core/live/plane-id-of-column.ts';
import { ladderWords } from '#words/ladder.ts';
import { words } from '#words/shell.ts';
import { Chart } from './chart.tsx';
import styles from './ladder.module.css';

const AirView = late(() => import('#app/_air/air-view.tsx').then((module) => module.AirView));
const TargetChoice = late(() =>
  import('#app/_target/target-choice.tsx').then((module) => module.TargetChoice),
);
const MeasureTable = late(() => import('./table.tsx').then((module) => module.MeasureTable));

/** What there is to show of the painting on the easel: a preview goes before the server's own result. */
function useShown() {
  const { paintingId } = useTools();
  const fetched = useBoardMeasures();
  const pulled = useShownPreview();
  const dragged = pulled?.pictureId === paintingId ? (pulled?.document ?? null) : null;
  // A preview knows nothing of cards and glare: the photo's grade is the server's.
  const preview = dragged && { ...dragged, capture: fetched.document?.capture ?? dragged.capture };
  return {
    document: preview ?? fetched.document,
    previewed: preview !== null,
    doing: fetched.pending,
    trouble: preview ? null : fetched.trouble,
    again: fetched.again,
  };
}

type View = keyof typeof ladderWords.view;

/** Chart, air or table; the table's key and button go back to what was shown before. */
function useView(): [View, (view: View) => void] {
  const { tableShown, setTableShown } = useTools();
  const [drawn, setDrawn] = useState<Exclude<View, 'table'>>('ladder');
  const turnTo = (view: View) => {
    setTableShown(view === 'table');
    if (view !== 'table') setDrawn(view);
  };
  return [tableShown ? 'table' : drawn, turnTo];
}

export function Ladder() {
  const { document, previewed, doing, trouble, again } = useShown();
  const [view, turnTo] = useView();
  return (
    <section className={styles.ladder} aria-labelledby="ladder-title">
      <div className={styles.head}>
        <h2 id="ladder-title" className={styles.title}>
          {ladderWords.title}
        </h2>
        <p className={styles.against} role="status">
          <Standing document={document} doing={doing} previewed={previewed} />
        </p>
        <FrameSaid />
        {document ? <TargetChoice /> : null}
        {document && view !== 'table' ? <Key document={document} /> : null}
        {document ? <Views view={view} turnTo={turnTo} /> : null}
      </div>
      {trouble ? (
        <Notice trouble sentence={trouble}>
          <Button onClick={again}>{words.tryAgain}</Button>
        </Notice>
      ) : null}
      {document ? <Shown document={document} view={view} /> : null}
      {document ? (
        <div>
          <TermsButton />
        </div>
      ) : null}
      {document || trouble ? null : <Empty doing={doing} />}
    </section>
  );
}

const VIEWS: readonly View[] = ['ladder', 'air', 'table'];

function Views({ view, turnTo }: { view: View; turnTo(view: View): void }) {
  return (
    <fieldset className={styles.views}>
      <legend className="unseen">{ladderWords.views}</legend>
      {VIEWS.map((each) => (
        <button
          key={each}
          type="button"
          className={styles.view}
          aria-pressed={view === each}
          aria-keyshortcuts={each === 'table' ? 'T' : undefined}
          onClick={() => turnTo(each)}
        >
          {ladderWords.view[each]}
        </button>
      ))}
    </fieldset>
  );
}

/** What is held against what, or what is being done. */
function Standing(shown: { document: MeasureDocument | null; doing: string | null; previewed: boolean }) {
  if (shown.previewed) return <span className={styles.doing}>{ladderWords.preview}</span>;
  if (shown.document && shown.doing) return <span className={styles.doing}>{shown.doing}</span>;
  return shown.document ? ladderWords.against[shown.document.target] : null;
}

function Key({ document }: { document: MeasureDocument }) {
  const target = ladderWords.target[document.target];
  return (
    <div className={styles.key} aria-hidden="true">
      {target ? (
        <span>
          <i className={styles.dashed} /> {target}
        </span>
      ) : null}
      <span>
        <i /> {ladderWords.painting}
      </span>
    </div>
  );
}

function Shown({ document, view }: { document: MeasureDocument; view: View }) {
  const { planes } = useBoardLive();
  const { planeId, setPlaneId } = useTools();
  const ids = document.planes.map((plane, index) => planeIdOfColumn(planes, plane.name, index));
  const untrusted = ids.map((id) =>
    document.target === 'reference' ? (planes.find((plane) => plane.id === id)?.unreliable ?? null) : null,
  );
  if (view === 'table') return <MeasureTable document={document} untrusted={untrusted} />;
  const column = {
    chosen: planeId === null ? -1 : ids.indexOf(planeId),
    onChoose: (index: number) => setPlaneId(ids[index] ?? null),
  };
  if (view === 'air') {
    const kinds = ids.map((id) => planes.find((plane) => plane.id === id)?.kind ?? null);
    return <AirView document={document} kinds={kinds} untrusted={untrusted} {...column} />;
  }
  return (
    <>
      <Chart document={document} untrusted={untrusted} {...column} />
      <Swapped document={document} />
      <p className={styles.units}>
        {speaksOfAmounts(document.capture.grade) ? ladderWords.steps : ladderWords.stepsOrderOnly}
      </p>
    </>
  );
}

/** Neighbours whose order in lightness is turned round, each in a sentence. */
function Swapped({ document }: { document: MeasureDocument }) {
  const sentences = document.steps.flatMap((step) => swappedWords(step, document.target) ?? []);
  if (sentences.length === 0) return null;
  return <p className={styles.swapped}>{sentences.join(' ')}</p>;
}

function Empty({ doing }: { doing: string | null }) {
  const live = useBoardLive();
  const { referenceId, paintingId, setTool } = useTools();
  const { empty } = ladderWords;
  if (paintingId && !live.ready) return <Coming>{empty.connecting}</Coming>;
  if (!live.ready) return <Said>{empty.connecting}</Said>;
  if (live.planes.length > 0 && paintingId) return <Coming>{doing ?? empty.measuring}</Coming>;
  if (live.planes.length > 0) return <Said>{empty.noPainting}</Said>;
  if (!paintingId && !referenceId) return <Said>{empty.noPictures}</Said>;
  if (!live.may.setup) return <Said>{empty.noPlanesLook}</Said>;
  return (
    <div className={styles.empty}>
      <p>{empty.noPlanes}</p>
      <Button onClick={() => setTool('outline')}>{empty.noPlanesDo}</Button>
    </div>
  );
}

function Said({ children }: { children: ReactNode }) {
  return <p className={styles.empty}>{children}</p>;
}

/** What is being done, in the room that the chart will take. */
function Coming({ children }: { children: ReactNode }) {
  return (
    <div className={styles.coming}>
      <p className={styles.doing}>{children}</p>
    </div>
  );
}
