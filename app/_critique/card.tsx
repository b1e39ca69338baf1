'use client';
/**
 * One adjustment card: where, what to do, how, how to check, why; what the painter answered; what a teacher may change.
 *
 * In the flow: cards -> [card]. The first card stands large and open, the others show their headline until asked for.
 */
import { useState } from 'react';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { ShownCard } from '#server/core/live/show-cards.ts';
import { HEALTH_LINE } from '#server/core/readings/health-line.ts';
import { critiqueWords } from '#words/critique.ts';
import { Answer, Answered } from './answer.tsx';
import { CardTools } from './card-tools.tsx';
import styles from './critique.module.css';
import { cardHeadId, useChoosePlane } from './desk.tsx';
import { Why } from './why.tsx';

const RewriteCard = late(() => import('./card-form.tsx').then((module) => module.RewriteCard));
const { cards: words } = critiqueWords;

/** "Massif, darks: lift" for a plane; "The whole picture, big shapes: join"; "The photo of the painting: …". */
function headline({ key, where, words: { what } }: ShownCard): string {
  return key === 'photo' ? words.headline(where, what) : words.place(where, what);
}

interface CardProps {
  card: ShownCard;
  /** Whether it may be folded; the first card may not. */
  folds?: { open: boolean; toggle(): void };
  /** Whether a teacher left it out. */
  dropped?: boolean;
}

export function Card({ card, folds, dropped = false }: CardProps) {
  const { planeId } = useTools();
  const choosePlane = useChoosePlane();
  const chosen = card.planeId !== null && card.planeId === planeId;
  const open = folds?.open ?? true;
  return (
    <div
      className={folds ? styles.card : `${styles.card} ${styles.first}`}
      data-chosen={chosen || undefined}
      data-open={open || undefined}
    >
      <h3 className={styles.headline}>
        {folds || card.planeId !== null ? (
          <button
            type="button"
            id={cardHeadId(card.key)}
            {...(folds ? { 'aria-expanded': open } : { 'aria-pressed': chosen })}
            onClick={() => {
              if (!folds?.open) choosePlane(card.planeId);
              folds?.toggle();
            }}
          >
            {headline(card)}
          </button>
        ) : (
          <span id={cardHeadId(card.key)} tabIndex={-1}>
            {headline(card)}
          </span>
        )}
      </h3>
      {open ? <Inside card={card} dropped={dropped} /> : <Answered card={card} />}
    </div>
  );
}

function Inside({ card, dropped }: { card: ShownCard; dropped: boolean }) {
  const [rewriting, setRewriting] = useState(false);
  if (rewriting) return <RewriteCard card={card} close={() => setRewriting(false)} />;
  const { how, check, why } = card.words;
  return (
    <>
      {how ? <p className={styles.how}>{how}</p> : null}
      {card.healthLine ? <p className={styles.note}>{HEALTH_LINE}</p> : null}
      {check ? (
        <p>
          <span className={styles.label}>{words.checkLabel}</span> {check}
        </p>
      ) : null}
      <Why why={why} source={card.source} />
      <Origin card={card} />
      <Answered card={card} />
      {dropped ? null : <Answer card={card} />}
      <CardTools card={card} dropped={dropped} rewrite={() => setRewriting(true)} />
    </>
  );
}

/** Whose words these are, where they are not the measuring's alone. */
function Origin({ card }: { card: ShownCard }) {
  if (!card.changed) return null;
  const isOwn = card.key.startsWith('own-');
  const gone = card.measured === null && !isOwn;
  return <p className={styles.note}>{isOwn ? words.own : gone ? words.unmeasured : words.changed}</p>;
}
