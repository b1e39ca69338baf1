'use client';
/**
 * The place beside the photo while it is put right: the painting as it will be measured.
 *
 * In the flow: easel -> [righted-place] -> canvas, what lies on it, switch before and after.
 */
import type { CSSProperties } from 'react';
import { words } from '#words/photo.ts';
import styles from './beside.module.css';
import { CaptureOverlay } from './capture-overlay.tsx';
import { HoldButton } from './hold-button.tsx';
import { isCorrected, usePhotoDesk } from './photo-desk.tsx';
import { RightedCanvas } from './righted-copy.tsx';

export function RightedPlace() {
  const { painting, photo, righted, lightAsCame, setLightAsCame } = usePhotoDesk();
  const { picture, trouble } = righted;
  const label = painting ? words.beside.alt(painting.painter.name) : '';
  return (
    <figure className={styles.place} data-kind="righted">
      {picture ? (
        <>
          <div
            className={styles.sheet}
            style={{ '--ratio': picture.bitmap.width / picture.bitmap.height } as CSSProperties}
          >
            <RightedCanvas className={styles.righted} label={label} />
            <CaptureOverlay />
          </div>
          <figcaption className={styles.caption}>
            {trouble ? <span className={styles.trouble}>{trouble}</span> : <strong>{words.putRight}</strong>}
            {picture.lit && !trouble ? (
              <HoldButton pressed={lightAsCame} setPressed={setLightAsCame}>
                {words.beside.hold}
              </HoldButton>
            ) : null}
          </figcaption>
        </>
      ) : (
        <p className={styles.nothing}>
          {isCorrected(photo) ? (trouble ?? words.beside.making) : words.beside.none}
        </p>
      )}
    </figure>
  );
}
