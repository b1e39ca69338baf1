'use client';
/**
 * Says on the board which frame of the photograph the painting is held against; who may, chooses it there.
 *
 * In the flow: painting's room -> [frame-said] -> the ladder's head. Nothing where no frame was kept.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { frameWords } from '#words/plan-frames.ts';
import styles from './framed.module.css';
import { useFrameOf } from './use-frame-of.ts';

const { kept, belongs } = frameWords;

export function FrameSaid() {
  const { paintingId } = useTools();
  const { may } = useBoardLive();
  const { known, frames, frame, set } = useFrameOf(paintingId);
  if (!paintingId || !known || frames.length === 0) return null;
  if (!may.painting(paintingId)) return frame ? <p>{belongs.heldIn(frame.name)}</p> : null;
  return (
    <label className={styles.held}>
      {belongs.held}
      <select value={frame?.id ?? ''} onChange={(event) => set(event.target.value || null)}>
        <option value="">{kept.whole}</option>
        {frames.map(({ id, name }) => (
          <option key={id} value={id}>
            {belongs.theFrame(name)}
          </option>
        ))}
      </select>
    </label>
  );
}
