'use client';
/** Corners, size and grey card of a painting's photo, in words and fields. In the flow: easel-bar -> [photo-controls]. */
import { type FocusEvent, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { words } from '#app/_words/en-easel.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Card } from '#server/core/contract/setup.ts';
import styles from './easel-bar.module.css';
import { useEasel } from './easel-state.tsx';
import { STARTING_CARD, STARTING_CORNERS } from './photo-parts.ts';

/** Luminance factors of the two usual cards. Common practice, no source. */
const GREY = 0.18;
const WHITE = 0.9;

export function PhotoControls({ painting }: { painting: PictureView | null }) {
  const { may } = useBoardLive();
  if (!painting) return <p className={styles.sentence}>{words.photo.none}</p>;
  if (!may.painting(painting.id)) return <p className={styles.sentence}>{words.photo.onlyLook}</p>;
  return <Controls key={painting.id} painting={painting} />;
}

function Controls({ painting }: { painting: PictureView }) {
  const { photoOf, write } = useBoardLive();
  const { corners, cards, size } = photoOf(painting.id);
  const [card, ...others] = cards ?? [];
  const putCard = (next: Card | null) => write.setCards(painting.id, next ? [next, ...others] : others);
  return (
    <div className={styles.photo}>
      <div className={styles.buttons}>
        {corners ? (
          <>
            <p className={styles.sentence}>{words.photo.corners}</p>
            <Button weight="word" onClick={() => write.setCorners(painting.id, null)}>
              {words.photo.clearCorners}
            </Button>
          </>
        ) : (
          <Button weight="main" onClick={() => write.setCorners(painting.id, STARTING_CORNERS)}>
            {words.photo.setCorners}
          </Button>
        )}
      </div>
      <SizeFields key={size?.join()} size={size ?? null} keep={(next) => write.setSize(painting.id, next)} />
      {card ? (
        <div className={styles.buttons}>
          <label className={styles.labelled}>
            {words.photo.card}: {words.photo.reflects}
            <select
              className={styles.input}
              value={card.Y}
              onChange={(event) => putCard({ ...card, Y: Number(event.target.value) })}
            >
              <option value={GREY}>{words.photo.grey18}</option>
              <option value={WHITE}>{words.photo.white90}</option>
            </select>
          </label>
          <span>{words.photo.cardHint}</span>
          <Button weight="word" onClick={() => putCard(null)}>
            {words.photo.removeCard}
          </Button>
        </div>
      ) : (
        <Button weight="word" onClick={() => putCard({ box: STARTING_CARD, Y: GREY })}>
          {words.photo.addCard}
        </Button>
      )}
    </div>
  );
}

/** A length as people type it, with comma or point; null when it is none. */
function lengthOf(text: string): number | null {
  const length = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && Number.isFinite(length) && length > 0 ? length : null;
}

function SizeFields({
  size,
  keep,
}: {
  size: [number, number] | null;
  keep(size: [number, number] | null): void;
}) {
  const { setSentence } = useEasel();
  const [width, setWidth] = useState(size ? String(size[0]) : '');
  const [height, setHeight] = useState(size ? String(size[1]) : '');
  /** Stored when the hand leaves both fields, so that half a size is never kept. */
  const onBlur = (event: FocusEvent<HTMLFieldSetElement>) => {
    if (event.currentTarget.contains(event.relatedTarget)) return;
    const [w, h] = [lengthOf(width), lengthOf(height)];
    const emptied = width.trim() === '' && height.trim() === '';
    setSentence(emptied || (w && h) ? null : words.photo.sizeWrong);
    if (emptied && size) keep(null);
    if (w && h && (w !== size?.[0] || h !== size[1])) keep([w, h]);
  };
  return (
    <fieldset className={styles.size} onBlur={onBlur} title={words.photo.sizeHint}>
      <legend className="unseen">{words.photo.size}</legend>
      <span aria-hidden="true">{words.photo.size}</span>
      <input
        className={styles.input}
        inputMode="decimal"
        aria-label={words.photo.width}
        placeholder={words.photo.width}
        value={width}
        onChange={(event) => setWidth(event.target.value)}
      />
      <span aria-hidden="true">×</span>
      <input
        className={styles.input}
        inputMode="decimal"
        aria-label={words.photo.height}
        placeholder={words.photo.height}
        value={height}
        onChange={(event) => setHeight(event.target.value)}
      />
    </fieldset>
  );
}
