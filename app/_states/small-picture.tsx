/**
 * A state small, squared by its corners where it has some. In the flow: time line -> [small-picture]. The photo is laid by the
 * browser; on the stage the server does it with the light put right.
 */
import { pictureAddress } from '#app/_api/client.ts';
import { cssMatrix } from '#app/_easel/frame.ts';
import type { StateView } from '#server/core/contract/states.ts';
import styles from './states.module.css';

/** As wide as a state on the time line, CSS pixels. */
const WIDE = 240;

export function SmallPicture({ boardId, state }: { boardId: string; state: StateView }) {
  const { id, width, height, squared } = state;
  const high = WIDE / (squared?.ratio ?? width / height);
  return (
    <span className={styles.small} style={{ width: WIDE, height: high }}>
      {/* biome-ignore lint/performance/noImgElement: our own renditions; Next's image part would shift their colours. */}
      <img
        src={pictureAddress(boardId, id, 640)}
        width={WIDE}
        height={high}
        alt=""
        style={squared ? { transform: cssMatrix(squared.toSquared, WIDE, high) } : undefined}
      />
    </span>
  );
}
