'use client';
/**
 * The cards on the photo as a list: what each one is, whether it could be read, and how to take it away.
 *
 * In the flow: live photo + picture put right -> [cards-part] -> live photo.
 */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { inField } from '#app/_words/figures.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Card } from '#server/core/contract/setup.ts';
import { words } from '#words/photo.ts';
import styles from './leaf.module.css';
import { usePhotoDesk } from './photo-desk.tsx';
import { MOST_CARDS } from './photo-parts.ts';
import { percentOf } from './typed-number.ts';
import { GREY } from './use-photo-hand.ts';

/** Luminance factor of a white card or white paper. Common practice, no source. */
const WHITE = 0.9;

export function CardsPart({ painting }: { painting: PictureView }) {
  const { photoOf, write } = useBoardLive();
  const { righted, adding, setAdding, cardAt, chooseCard } = usePhotoDesk();
  const cards = photoOf(painting.id).cards ?? [];
  const put = (at: number, card: Card) => write.setCards(painting.id, cards.with(at, card));
  const remove = (at: number) => {
    write.setCards(painting.id, cards.toSpliced(at, 1));
    chooseCard(Math.max(0, Math.min(cardAt, cards.length - 2)));
  };
  const notes = cards.length > 0 ? [...(righted.picture?.notes ?? [])] : [];
  return (
    <section className={styles.part} aria-labelledby="cards-title">
      <h2 id="cards-title" className={styles.title}>
        {words.cards.title}
      </h2>
      <p>{words.cards.lead}</p>
      <ol className={styles.cards}>
        {cards.map((card, at) => (
          <CardRow
            // biome-ignore lint/suspicious/noArrayIndexKey: a card is named by its place in the list.
            key={at}
            number={at + 1}
            card={card}
            chosen={cardAt === at}
            choose={() => chooseCard(at)}
            put={(next) => put(at, next)}
            remove={() => remove(at)}
          />
        ))}
      </ol>
      <div role="status" className={styles.notes}>
        {righted.trouble && cards.length > 0 ? <p>{righted.trouble}</p> : null}
        {notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
      {cards.length < MOST_CARDS ? (
        <Button onClick={() => setAdding(!adding)} aria-pressed={adding}>
          {adding ? words.cards.stop : cards.length === 0 ? words.cards.add : words.cards.addAnother}
        </Button>
      ) : (
        <p className={styles.quiet}>{words.cards.full}</p>
      )}
    </section>
  );
}

interface CardRowProps {
  number: number;
  card: Card;
  chosen: boolean;
  choose(): void;
  put(card: Card): void;
  remove(): void;
}

function CardRow({ number, card, chosen, choose, put, remove }: CardRowProps) {
  const usual = card.Y === GREY ? 'grey' : card.Y === WHITE ? 'white' : 'typed';
  const [typing, setTyping] = useState(usual === 'typed');
  useEffect(() => {
    if (usual === 'typed') setTyping(true);
  }, [usual]);
  const kind = typing ? 'typed' : usual;
  const change = (next: string) => {
    setTyping(next === 'typed');
    if (next !== 'typed') put({ ...card, Y: next === 'white' ? WHITE : GREY });
  };
  return (
    <li className={styles.card} data-chosen={chosen ? '' : undefined}>
      <button
        type="button"
        className={styles.number}
        aria-label={words.cards.choose(number)}
        aria-pressed={chosen}
        onClick={choose}
      >
        {number}
      </button>
      <select
        className={styles.input}
        aria-label={words.cards.is(number)}
        value={kind}
        onChange={(event) => change(event.target.value)}
      >
        <option value="grey">{words.cards.grey}</option>
        <option value="white">{words.cards.white}</option>
        <option value="typed">{words.cards.typed}</option>
      </select>
      <Button weight="word" aria-label={words.cards.remove(number)} onClick={remove}>
        {words.cards.removeShort}
      </Button>
      {kind === 'typed' ? <TypedPercent key={card.Y} number={number} card={card} put={put} /> : null}
    </li>
  );
}

function TypedPercent({ number, card, put }: Pick<CardRowProps, 'number' | 'card' | 'put'>) {
  const [text, setText] = useState(inField(Number((card.Y * 100).toFixed(1))));
  const [wrong, setWrong] = useState(false);
  const keep = () => {
    const percent = percentOf(text);
    setWrong(percent === null);
    if (percent !== null && Math.abs(percent / 100 - card.Y) > 1e-6) put({ ...card, Y: percent / 100 });
  };
  return (
    <div className={styles.typed}>
      <input
        className={styles.input}
        inputMode="decimal"
        aria-label={words.cards.percent(number)}
        aria-invalid={wrong || undefined}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === 'Enter') keep();
        }}
      />
      <span aria-hidden="true">{words.cards.percentSign}</span>
      <p role="alert" className={styles.wrong}>
        {wrong ? words.cards.percentWrong : null}
      </p>
    </div>
  );
}
