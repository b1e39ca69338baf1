'use client';
/**
 * The four corner handles and the box on a grey card, over a photo of a painting.
 *
 * In the flow: photo hand -> [photo-layer] -> screen and keys.
 */
import type { KeyboardEvent } from 'react';
import { words } from '#app/_words/en-easel.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import styles from './layers.module.css';
import { Loupe } from './loupe.tsx';
import type { PhotoPart } from './photo-parts.ts';
import points from './points.module.css';
import { BOX, closedPath } from './shape-path.ts';
import { useStage } from './stage-context.tsx';
import type { PhotoHand } from './use-photo-hand.ts';

const NUDGE_PX = 1;
const NUDGE_FAR_PX = 10;
const ARROWS: Record<string, [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const at = ([x, y]: FractionPoint) => ({ left: `${x * 100}%`, top: `${y * 100}%` });

export function PhotoLayer({ parts, pulled, nudge }: Pick<PhotoHand, 'parts' | 'pulled' | 'nudge'>) {
  const { aspect, pixel } = useStage();
  const { corners, card } = parts;
  const keysFor = (part: PhotoPart) => (event: KeyboardEvent) => {
    const arrow = ARROWS[event.key];
    if (!arrow) return;
    event.preventDefault();
    event.stopPropagation();
    const px = event.shiftKey ? NUDGE_FAR_PX : NUDGE_PX;
    nudge(part, arrow[0] * px * pixel().x, arrow[1] * px * pixel().y);
  };
  return (
    <>
      {corners ? (
        <svg
          className={styles.lines}
          viewBox={`0 0 ${BOX} ${BOX * aspect}`}
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          <path className={styles.casing} d={closedPath(corners, aspect)} stroke="rgb(0 0 0 / 0.6)" />
          <path className={styles.core} d={closedPath(corners, aspect)} stroke="#fff" />
        </svg>
      ) : null}
      {corners?.map((corner, index) => (
        <button
          key={words.photo.corner[index]}
          type="button"
          className={styles.corner}
          style={at(corner)}
          aria-label={words.photo.corner[index]}
          onKeyDown={keysFor({ kind: 'corner', at: index })}
        />
      ))}
      {card ? (
        <>
          <button
            type="button"
            className={styles.card}
            style={{
              ...at([card[0], card[1]]),
              width: `${(card[2] - card[0]) * 100}%`,
              height: `${(card[3] - card[1]) * 100}%`,
            }}
            aria-label={words.photo.cardBox}
            onKeyDown={keysFor({ kind: 'card' })}
          />
          <button
            type="button"
            className={points.point}
            style={at([card[2], card[3]])}
            aria-label={words.photo.cardEdge}
            onKeyDown={keysFor({ kind: 'card-edge' })}
          />
        </>
      ) : null}
      {pulled ? <Loupe point={pulled.place} /> : null}
    </>
  );
}
