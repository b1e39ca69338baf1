'use client';
/**
 * The critique of the painting on the easel: cards, readings, what works; or what is still missing.
 *
 * In the flow: talk -> [critique] -> cards, readings, works.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { Button } from '#app/_ui/button.tsx';
import { late } from '#app/_ui/late.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { critiqueWords } from '#words/critique.ts';
import { words as shellWords } from '#words/shell.ts';
import { Cards } from './cards.tsx';
import styles from './critique.module.css';
import { CARDS_TITLE_ID, CritiqueDeskProvider, useDesk } from './desk.tsx';
import { Readings, Withheld } from './readings.tsx';
import { SaidAloud } from './said-aloud.tsx';
import { Works } from './works.tsx';

const { cards: words } = critiqueWords;
const Afterwards = late(() => import('#app/_homework/afterwards.tsx').then((module) => module.Afterwards));
const LastState = late(() => import('#app/_states/last-state.tsx').then((module) => module.LastState));

export function Critique() {
  const { board } = useBoardLive();
  const { paintingId } = useTools();
  const { document } = useBoardMeasures();
  const painting = board.pictures.find(({ id }) => id === paintingId);
  if (!painting) return null;
  const last = painting.follows === null ? null : <LastState key={painting.id} painting={painting} />;
  if (!document) {
    return (
      <>
        <Waiting />
        {last}
        <Afterwards key={painting.id} painting={painting} cards={[]} />
      </>
    );
  }
  return (
    <CritiqueDeskProvider key={painting.id} painting={painting}>
      {last}
      <Cards />
      <Withheld />
      <Readings />
      <Works />
      <SaidAloud />
      <AfterCards />
    </CritiqueDeskProvider>
  );
}

function AfterCards() {
  const { painting, cards } = useDesk();
  return <Afterwards key={painting.id} painting={painting} cards={[...cards.open, ...cards.waiting]} />;
}

/** Until there are figures: what is missing, or what is being done. */
function Waiting() {
  const { planes, may, ready } = useBoardLive();
  const { pending, trouble, again } = useBoardMeasures();
  if (!ready) return null;
  const missing = may.setup ? words.noPlanes : words.noPlanesLook;
  return (
    <section className={styles.part} aria-labelledby={CARDS_TITLE_ID}>
      <h2 id={CARDS_TITLE_ID} className={styles.title}>
        {words.title}
      </h2>
      {trouble ? (
        <Notice trouble sentence={trouble}>
          <Button onClick={again}>{shellWords.tryAgain}</Button>
        </Notice>
      ) : (
        <p className={styles.note} role="status">
          {planes.length === 0 ? missing : (pending ?? words.coming)}
        </p>
      )}
    </section>
  );
}
