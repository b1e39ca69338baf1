'use client';
/**
 * The line under the pictures: what the hand can do now, in one sentence and a few buttons.
 *
 * In the flow: easel -> [easel-bar] -> outline, mark and photo controls.
 */
import type { ReactNode } from 'react';
import { useCarryDoor } from '#app/_carry/carry-desk.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { isCorrected } from '#app/_photo/photo-desk.tsx';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { photoShownWords as photoWords } from '#words/photo-shown.ts';
import styles from './easel-bar.module.css';
import { useEasel } from './easel-state.tsx';
import { Refusals } from './refusals.tsx';
import type { Shown } from './shown.ts';

const AirControls = late(() => import('#app/_air/air-controls.tsx').then((module) => module.AirControls));
const CarryControls = late(() =>
  import('#app/_carry/carry-controls.tsx').then((module) => module.CarryControls),
);
const CarryTaken = late(() => import('#app/_carry/carry-taken.tsx').then((module) => module.CarryTaken));
const FindOffer = late(() => import('#app/_propose/find-offer.tsx').then((module) => module.FindOffer));
const FocusControls = late(() => import('./focus-controls.tsx').then((module) => module.FocusControls));
const MarkControls = late(
  () => import('#app/_marks/mark-controls.tsx').then((module) => module.MarkControls),
  'first',
);
const OutlineControls = late(() => import('./outline-controls.tsx').then((module) => module.OutlineControls));
const PhotoControls = late(() =>
  import('#app/_photo/photo-controls.tsx').then((module) => module.PhotoControls),
);

export function EaselBar({ reference, painting }: Shown) {
  const { tool } = useTools();
  const { photoOf } = useBoardLive();
  const { sentence } = useEasel();
  const controls: Record<typeof tool, ReactNode> = {
    look: <Look />,
    outline: <OutlineControls reference={reference} painting={painting} />,
    mark: <MarkControls painting={painting} />,
    photo: <PhotoControls painting={painting} />,
    patch: null,
    guess: null,
    air: <AirControls />,
    focus: <FocusControls />,
    carry: <CarryControls />,
  };
  const corrected = painting !== null && isCorrected(photoOf(painting.id));
  return (
    <div className={styles.bar} data-tool={tool}>
      <Refusals />
      {controls[tool]}
      {corrected && tool !== 'photo' && tool !== 'outline' ? <SquaredChoice /> : null}
      <p className={styles.trouble} role="alert">
        {sentence}
      </p>
    </div>
  );
}

/** Nothing in hand: what could be done first, or what was done last. */
function Look() {
  const { taken } = useCarryDoor();
  const { planes, ready } = useBoardLive();
  return (
    <>
      {ready && planes.length === 0 ? <FindOffer /> : null}
      {taken ? <CarryTaken /> : null}
    </>
  );
}

/** As photographed, or put right: squared by its corners, in the light of its cards. */
export function SquaredChoice() {
  const { squared, setSquared } = useEasel();
  return (
    <fieldset className={styles.choice} aria-label={photoWords.shownAs}>
      <button type="button" aria-pressed={!squared} onClick={() => setSquared(false)}>
        {photoWords.asPhotographed}
      </button>
      <button type="button" aria-pressed={squared} onClick={() => setSquared(true)}>
        {photoWords.putRight}
      </button>
    </fieldset>
  );
}
