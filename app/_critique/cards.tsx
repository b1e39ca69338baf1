'use client';
/**
 * The adjustment cards: the first one large, at most two more after it, everything else put away below.
 *
 * In the flow: critique desk -> [cards] -> card. A plane that is chosen on picture or ladder opens its card here
 * without moving the page.
 */
import { useEffect, useState } from 'react';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { ShownCard, ShownCards } from '#server/core/live/show-cards.ts';
import { critiqueWords } from '#words/critique.ts';
import { AddCard } from './add-card.tsx';
import { Card } from './card.tsx';
import styles from './critique.module.css';
import { CARDS_TITLE_ID, useDesk } from './desk.tsx';

const { cards: words } = critiqueWords;

/** Which of the cards that fold is open; a newly chosen plane opens its own. */
function useOpened({ open, waiting }: ShownCards) {
  const { planeId } = useTools();
  const [opened, setOpened] = useState<string | null>(null);
  const ofPlane = [...open, ...waiting].find((card) => planeId !== null && card.planeId === planeId)?.key;
  useEffect(() => {
    if (ofPlane) setOpened(ofPlane);
  }, [ofPlane]);
  return (card: ShownCard) => ({
    open: opened === card.key,
    toggle: () => setOpened(opened === card.key ? null : card.key),
  });
}

export function Cards() {
  const { cards, measuring } = useDesk();
  const folds = useOpened(cards);
  const [first, ...then] = cards.open;
  return (
    <section className={styles.part} aria-labelledby={CARDS_TITLE_ID}>
      <div className={styles.head}>
        <h2 id={CARDS_TITLE_ID} className={styles.title} tabIndex={-1}>
          {first ? words.first : words.title}
        </h2>
        <p className={styles.note} role="status">
          {measuring ? words.again : null}
        </p>
      </div>
      {first ? <Card key={first.key} card={first} /> : <Nothing />}
      {then.length > 0 ? (
        <>
          <h2 className={styles.title}>{words.next}</h2>
          <ol className={styles.list}>
            {then.map((card) => (
              <li key={card.key}>
                <Card card={card} folds={folds(card)} />
              </li>
            ))}
          </ol>
        </>
      ) : null}
      <Aside folds={folds} />
      <AddCard />
    </section>
  );
}

/** Why there is no card. */
function Nothing() {
  const { document } = useDesk().measures;
  return <p className={styles.note}>{document?.target === 'none' ? words.emptyLife : words.empty}</p>;
}

/** What waits its turn, what the painter left, what a teacher left out. */
function Aside({ folds }: { folds: ReturnType<typeof useOpened> }) {
  const { cards, mayChange } = useDesk();
  const dropped = mayChange ? cards.dropped : [];
  const count = cards.waiting.length + cards.declined.length + dropped.length;
  if (count === 0) return null;
  return (
    <details className={styles.aside}>
      <summary>{words.aside(count)}</summary>
      <ul className={styles.list}>
        {[...cards.waiting, ...cards.declined].map((card) => (
          <li key={card.key}>
            <Card card={card} folds={folds(card)} />
          </li>
        ))}
        {dropped.map((card) => (
          <li key={card.key}>
            <p className={styles.note}>{words.dropped}</p>
            <Card card={card} folds={folds(card)} dropped />
          </li>
        ))}
      </ul>
    </details>
  );
}
