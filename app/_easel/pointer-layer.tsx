'use client';
/** Other people's hands over one picture, with their names. In the flow: awareness -> [pointer-layer] -> screen. */
import { usePointers } from '#app/_live/board-live.tsx';
import styles from './layers.module.css';
import { useStage } from './stage-context.tsx';

export function PointerLayer() {
  const { picture, frame } = useStage();
  const pointers = usePointers();
  return pointers
    .filter(({ pictureId }) => pictureId === picture.id)
    .map(({ clientId, name, x, y }) => {
      const [left, top] = frame.shown([x, y]);
      return (
        <span
          key={clientId}
          className={styles.pointer}
          style={{ left: `${left * 100}%`, top: `${top * 100}%` }}
          aria-hidden="true"
        >
          <span className={styles.pointerName}>{name}</span>
        </span>
      );
    });
}
