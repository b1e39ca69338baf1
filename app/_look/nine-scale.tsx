'use client';
/**
 * Nine steps of grey beside a picture, as high as it is, for comparing by eye. While a hand takes patches, a mark shows
 * where on the scale the spot under it lies.
 */
import { type CSSProperties, useSyncExternalStore } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { figure } from '#app/_words/figures.ts';
import { greyOf, NINE_STEPS, STEP_L } from '#server/core/look/nine-steps.ts';
import { lookShownWords as lookWords } from '#words/look-shown.ts';
import { useLooking } from './look-state.tsx';
import styles from './nine-scale.module.css';
import { useTrust } from './use-trust.ts';

export function NineScale({ pictureId }: { pictureId: string }) {
  const { nineShown } = useLooking();
  const { veiled } = useBoardLive().class;
  if (!nineShown || veiled) return null;
  return (
    <div className={styles.place}>
      <ol className={styles.steps} aria-label={lookWords.nine.label}>
        {NINE_STEPS.map((step) => (
          <li key={step}>
            <span style={{ background: greyOf(step * STEP_L) }} />
            {step}
          </li>
        ))}
        <UnderHand pictureId={pictureId} />
      </ol>
    </div>
  );
}

/** 9.5 is the top of the scale, 0.5 its foot: each step is as high as the others. */
const heightOf = (step: number) => `${Math.min(100, Math.max(0, ((9.5 - step) / 9) * 100))}%`;

function UnderHand({ pictureId }: { pictureId: string }) {
  const { hover } = useLooking();
  const hovered = useSyncExternalStore(hover.subscribe, hover.get, () => null);
  const known = useTrust()(pictureId) !== 'C';
  if (hovered?.pictureId !== pictureId) return null;
  return (
    <li
      className={styles.mark}
      style={{ '--at': heightOf(hovered.step) } as CSSProperties}
      aria-label={lookWords.nine.hand}
    >
      {known ? figure(hovered.step, 1) : null}
    </li>
  );
}
