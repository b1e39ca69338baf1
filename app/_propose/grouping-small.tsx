'use client';
/**
 * One grouping as a small picture: the photograph in grey under the planes' own greys, light far off and dark close by,
 * each with its number. In the flow: chooser -> [grouping-small]. Pure.
 */
import { memo } from 'react';
import { copyAddress } from '#app/_easel/picture-copies.tsx';
import { BOX, closedPath } from '#app/_easel/shape-path.ts';
import type { Grouping } from './groupings.ts';
import styles from './propose.module.css';

/** L* of the farthest and the nearest plane. */
const [FAR, NEAR] = [90, 14];

/** Grey of a plane, so that the planes step from light to dark however many there are. */
const greyOf = (at: number, count: number) =>
  `lab(${(FAR + ((NEAR - FAR) * at) / Math.max(1, count - 1)).toFixed(0)}% 0 0)`;

/** A place along a side, as far in that the whole number shows. */
const inside = (share: number) => `clamp(0.65rem, ${share * 100}%, calc(100% - 0.65rem))`;

interface GroupingSmallProps {
  boardId: string;
  pictureId: string;
  grouping: Grouping;
  /** Height / width of the picture. */
  aspect: number;
}

export const GroupingSmall = memo(function GroupingSmall({
  boardId,
  pictureId,
  grouping,
  aspect,
}: GroupingSmallProps) {
  return (
    <span className={styles.small} style={{ aspectRatio: 1 / aspect }} aria-hidden="true">
      {/* biome-ignore lint/performance/noImgElement: copies come ready-made and must not be recoded. */}
      <img src={copyAddress(boardId, pictureId, 640)} alt="" draggable={false} />
      <svg viewBox={`0 0 ${BOX} ${BOX * aspect}`} preserveAspectRatio="none" aria-hidden="true">
        {grouping.map(({ outline }, at) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: a proposed plane has no other name than its place.
            key={at}
            d={closedPath(outline, aspect)}
            fill={greyOf(at, grouping.length)}
          />
        ))}
      </svg>
      {grouping.map(({ numberAt }, at) =>
        numberAt ? (
          <span
            // biome-ignore lint/suspicious/noArrayIndexKey: as above.
            key={at}
            className={styles.number}
            style={{ left: inside(numberAt[0]), top: inside(numberAt[1]) }}
          >
            {at + 1}
          </span>
        ) : null,
      )}
    </span>
  );
});
