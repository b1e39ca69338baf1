'use client';
/** Whether others may sketch over a painting. In the flow: remarks -> [allow-sketch] -> the painting's room. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { markWords } from '#words/marks.ts';
import styles from './controls.module.css';

const { sketch: words } = markWords;

/** The painter allows it or not; the others read which. */
export function AllowSketch({ painting }: { painting: PictureView }) {
  const { allowsSketch, may, remarksKnown, write } = useBoardLive();
  const allowed = allowsSketch(painting.id);
  if (!may.allowSketch(painting.id)) return allowed ? <p className={styles.note}>{words.allowed}</p> : null;
  return (
    <label className={styles.allow}>
      <input
        type="checkbox"
        checked={allowed}
        disabled={!remarksKnown(painting.id)}
        onChange={(event) => write.setAllowsSketch(painting.id, event.target.checked)}
      />
      {words.allow}
    </label>
  );
}
