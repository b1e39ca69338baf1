'use client';
/**
 * The photograph on its neutral surround, as large as its place allows, with the places that the parts fill.
 *
 * In the flow: plan-screen -> [stage] -> stage-context. IO: copies of the picture.
 */
import { type CSSProperties, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { pictureAddress } from '#app/_api/client.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import styles from './stage.module.css';
import { useStagePlaces } from './stage-context.tsx';

interface StageProps {
  boardId: string;
  picture: PictureView;
  name: string;
}

export function Stage({ boardId, picture, name }: StageProps) {
  const area = useRef<HTMLDivElement>(null);
  const { setPlace, setSize, view } = useStagePlaces();
  const [room, setRoom] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = area.current;
    if (!element) return;
    const look = () => setRoom({ width: element.clientWidth, height: element.clientHeight });
    const observer = new ResizeObserver(look);
    observer.observe(element);
    look();
    return () => observer.disconnect();
  }, []);
  const { width, height } = picture;
  useEffect(() => {
    const scale = Math.min(room.width / width, room.height / height);
    setSize({ widthPx: Math.round(width * scale), heightPx: Math.round(height * scale) });
  }, [room, width, height, setSize]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: places are set once for each element.
  const overlay = useCallback((element: SVGSVGElement | null) => setPlace('overlay', element), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above.
  const instead = useCallback((element: HTMLDivElement | null) => setPlace('instead', element), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above.
  const over = useCallback((element: HTMLDivElement | null) => setPlace('over', element), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above.
  const under = useCallback((element: HTMLDivElement | null) => setPlace('under', element), []);
  const size: CSSProperties = { width: view.widthPx, height: view.heightPx };
  return (
    <div className={styles.stage} style={{ '--ratio': width / height } as CSSProperties}>
      <div ref={area} className={styles.area}>
        <div className={styles.place} style={size}>
          {/* biome-ignore lint/performance/noImgElement: our own renditions; Next's image part would shift their colours. */}
          <img
            className={styles.picture}
            src={pictureAddress(boardId, picture.id, 1280)}
            srcSet={([640, 1280, 2560] as const)
              .map((side) => `${pictureAddress(boardId, picture.id, side)} ${widthOf(picture, side)}w`)
              .join(', ')}
            sizes={`${Math.max(1, view.widthPx)}px`}
            alt={name}
            draggable={false}
          />
          <div ref={instead} className={styles.instead} />
          <svg ref={overlay} className={styles.overlay} viewBox={`0 0 ${view.widthPx} ${view.heightPx}`} />
          <div ref={over} className={styles.over} />
        </div>
      </div>
      <div ref={under} className={styles.under} style={{ maxWidth: view.widthPx || undefined }} />
    </div>
  );
}

/** Pixels across of the copy whose long side is `side`. */
function widthOf({ width, height }: PictureView, side: number): number {
  return Math.round(Math.min(1, side / Math.max(width, height)) * width);
}
