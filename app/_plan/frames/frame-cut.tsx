/** A frame as a small picture, cut from a copy of the photograph. In the flow: kept list, sheet -> [frame-cut]. Pure. */
import type { CSSProperties } from 'react';
import { pictureAddress } from '#app/_api/client.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import styles from './frames.module.css';

interface FrameCutProps {
  boardId: string;
  picture: PictureView;
  box: Box;
  /** What it is, for those who do not see it; empty where words stand beside it. */
  label?: string;
  /** Copy that is cut: the larger one where it is shown large. */
  copy?: 1280 | 2560;
}

export function FrameCut({ boardId, picture, box, label = '', copy = 1280 }: FrameCutProps) {
  const [x0, y0, x1, y1] = box;
  const [wide, high] = [x1 - x0, y1 - y0];
  const ratio = (wide * picture.width) / (high * picture.height);
  return (
    <span className={styles.cut} style={{ '--ratio': ratio, aspectRatio: ratio } as CSSProperties}>
      {/* biome-ignore lint/performance/noImgElement: our own renditions; Next's image part would shift their colours. */}
      <img
        src={pictureAddress(boardId, picture.id, copy)}
        alt={label}
        draggable={false}
        loading="lazy"
        decoding="async"
        style={{
          width: `${100 / wide}%`,
          height: `${100 / high}%`,
          left: `${(-100 * x0) / wide}%`,
          top: `${(-100 * y0) / high}%`,
        }}
      />
    </span>
  );
}
