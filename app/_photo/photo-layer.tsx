'use client';
/**
 * The four corner handles and the boxes on grey and white cards, over a photo of a painting.
 *
 * In the flow: photo hand -> [photo-layer] -> screen and keys. IO: fetches a sharp copy for the loupe.
 */
import { type KeyboardEvent, useEffect, useState } from 'react';
import { Loupe } from '#app/_easel/loupe.tsx';
import { copyAddress } from '#app/_easel/picture-copies.tsx';
import { BOX, closedPath } from '#app/_easel/shape-path.ts';
import { useStage } from '#app/_easel/stage-context.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { words } from '#words/photo.ts';
import { usePhotoDesk } from './photo-desk.tsx';
import styles from './photo-layer.module.css';
import { type PhotoPart, type PhotoParts, placeOfPart } from './photo-parts.ts';
import type { PhotoHand } from './use-photo-hand.ts';

/** Half a pixel of the screen, which at the loupe's strength is three: fine enough for the edge of a canvas. */
const NUDGE_PX = 0.5;
const NUDGE_FAR_PX = 8;
/** How much larger the loupe shows what lies under a corner. */
const LOUPE_TIMES = 6;
const ARROWS: Record<string, [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const at = ([x, y]: FractionPoint) => ({ left: `${x * 100}%`, top: `${y * 100}%` });

export function PhotoLayer({ parts, pulled, nudge }: Pick<PhotoHand, 'parts' | 'pulled' | 'nudge'>) {
  const { pixel } = useStage();
  const sharp = useSharpCopy();
  const [nudged, setNudged] = useState<PhotoPart | null>(null);
  const keysFor = (part: PhotoPart) => ({
    onKeyDown(event: KeyboardEvent) {
      const arrow = ARROWS[event.key];
      if (!arrow) return;
      event.preventDefault();
      event.stopPropagation();
      const px = event.shiftKey ? NUDGE_FAR_PX : NUDGE_PX;
      setNudged(part);
      nudge(part, arrow[0] * px * pixel().x, arrow[1] * px * pixel().y);
    },
    onBlur: () => setNudged(null),
  });
  const looked = pulled ?? (nudged && { part: nudged, place: placeOfPart(parts, nudged) });
  return (
    <>
      <CornerLines corners={parts.corners} />
      {parts.cards.map((box, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a card is named by its place in the list.
        <CardBox key={index} index={index} box={box} keysFor={keysFor} />
      ))}
      {parts.corners?.map((corner, index) => (
        <button
          key={words.corner[index]}
          type="button"
          className={styles.corner}
          style={at(corner)}
          aria-label={words.corner[index]}
          {...keysFor({ kind: 'corner', at: index })}
        />
      ))}
      {looked ? (
        <Loupe
          point={looked.place}
          times={LOUPE_TIMES}
          source={sharp}
          lines={linesThrough(parts, looked.part)}
        />
      ) : null}
    </>
  );
}

function CornerLines({ corners }: { corners: PhotoParts['corners'] }) {
  const { aspect } = useStage();
  if (!corners) return null;
  return (
    <svg
      className={styles.lines}
      viewBox={`0 0 ${BOX} ${BOX * aspect}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path className={styles.casing} d={closedPath(corners, aspect)} />
      <path className={styles.core} d={closedPath(corners, aspect)} />
    </svg>
  );
}

interface CardBoxProps {
  index: number;
  box: readonly [number, number, number, number];
  keysFor(part: PhotoPart): { onKeyDown(event: KeyboardEvent): void; onBlur(): void };
}

function CardBox({ index, box: [x0, y0, x1, y1], keysFor }: CardBoxProps) {
  const { cardAt, chooseCard } = usePhotoDesk();
  const chosen = index === cardAt;
  return (
    <>
      <button
        type="button"
        className={styles.card}
        data-chosen={chosen ? '' : undefined}
        style={{ ...at([x0, y0]), width: `${(x1 - x0) * 100}%`, height: `${(y1 - y0) * 100}%` }}
        aria-label={words.cardBox(index + 1)}
        onFocus={() => chooseCard(index)}
        {...keysFor({ kind: 'card', at: index })}
      >
        <span className={styles.number} aria-hidden="true">
          {index + 1}
        </span>
      </button>
      {chosen ? (
        <button
          type="button"
          className={styles.edge}
          style={at([x1, y1])}
          aria-label={words.cardEdge(index + 1)}
          {...keysFor({ kind: 'card-edge', at: index })}
        />
      ) : null}
    </>
  );
}

/** The two sides that meet in the pulled corner, or the box's edges: to lay along what the loupe shows. */
function linesThrough({ corners, cards }: PhotoParts, part: PhotoPart): FractionPoint[][] {
  if (part.kind === 'corner' && corners) {
    const [before, here, after] = [3, 0, 1].map((step) => corners[(part.at + step) % 4]);
    return before && here && after ? [[before, here, after]] : [];
  }
  return cards.map(([x0, y0, x1, y1]) => [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
    [x0, y0],
  ]);
}

/** The largest copy of the picture once it is decoded: the loupe shows more than the screen does. */
function useSharpCopy(): HTMLImageElement | null {
  const { boardId, picture } = useStage();
  const [sharp, setSharp] = useState<HTMLImageElement | null>(null);
  useEffect(() => {
    const image = new Image();
    image.src = copyAddress(boardId, picture.id, 2560);
    let wanted = true;
    image.decode().then(
      () => wanted && setSharp(image),
      () => undefined, // The loupe then enlarges the copy that is there.
    );
    return () => {
      wanted = false;
    };
  }, [boardId, picture.id]);
  return sharp;
}
