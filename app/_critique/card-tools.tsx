'use client';
import type { ShownCard } from '#server/core/live/show-cards.ts';
/** What a teacher does with a card: words, place, leaving out. In the flow: card -> [card-tools] -> `cards`. */
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';
import { useDesk } from './desk.tsx';

const { teacher: words } = critiqueWords;

/** @param dropped Whether the card stands among those left out. */
export function CardTools({
  card,
  dropped,
  rewrite,
}: {
  card: ShownCard;
  dropped: boolean;
  rewrite(): void;
}) {
  const { mayChange, movable, act } = useDesk();
  if (!mayChange) return null;
  const at = movable.findIndex(({ key }) => key === card.key);
  const tools: [string, () => void, boolean][] = [
    [words.bringBack, () => act.bringBack(card), dropped],
    [words.rewrite, rewrite, !dropped],
    [words.up, () => act.move(card, -1), at > 0],
    [words.down, () => act.move(card, 1), at >= 0 && at < movable.length - 1],
    [words.drop, () => act.drop(card), !dropped],
    [
      words.asMeasured,
      () => act.clear(card),
      card.measured !== null && (card.changed || card.order !== null),
    ],
    [words.remove, () => act.clear(card), card.measured === null],
  ];
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are a few words in a row.
    <div className={`${styles.acts} ${styles.tools}`} role="group" aria-label={words.label(card.where)}>
      {tools.map(([word, act, offered]) =>
        offered ? (
          <button key={word} type="button" className={styles.act} onClick={act}>
            {word}
          </button>
        ) : null,
      )}
    </div>
  );
}
