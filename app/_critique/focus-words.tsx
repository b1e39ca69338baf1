'use client';
import { squaredFrameOf } from '#app/_easel/squared-frame.ts';
/**
 * Where the painter wants the eye to go, in words, and the way to mark it. In the flow: live `focus` <-> [focus-words];
 * the tap itself is the easel's.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { placeInWords } from '#server/core/readings/words.ts';
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';

const { focus: words } = critiqueWords;

export function FocusWords({ painting }: { painting: PictureView }) {
  const { focusOf, photoOf, may, write } = useBoardLive();
  const { tool, setTool, setSide } = useTools();
  const point = focusOf(painting.id);
  const allowed = may.intention(painting.id);
  if (!point && !allowed) return null;
  // The place in the painting itself, whatever stands round it on the photo.
  const frame = point && squaredFrameOf(photoOf(painting.id), painting);
  const place = point && placeInWords(frame ? frame.shown(point) : point);
  const take = () => {
    setSide('painting');
    setTool('focus');
  };
  return (
    <div className={styles.acts}>
      {place ? <p className={styles.note}>{words.at(place)}</p> : null}
      {allowed && tool === 'focus' ? <p className={styles.note}>{words.how}</p> : null}
      {allowed && tool !== 'focus' ? (
        <button type="button" className={`${styles.act} ${styles.small}`} onClick={take}>
          {place ? words.move : words.mark}
        </button>
      ) : null}
      {allowed && place && tool !== 'focus' ? (
        <button
          type="button"
          className={`${styles.act} ${styles.small}`}
          onClick={() => write.setFocus(painting.id, null)}
        >
          {words.remove}
        </button>
      ) : null}
    </div>
  );
}
