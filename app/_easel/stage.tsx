'use client';
/**
 * One picture on the easel: its window, its sheet that pans and zooms, the layers over it and the hands on it.
 *
 * In the flow: easel -> [stage] -> picture copies and layers.
 */
import { type CSSProperties, type ReactNode, useLayoutEffect, useMemo, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { SoftLayers } from '#app/_look/soft-layers.tsx';
import { RightedCopy } from '#app/_photo/righted-copy.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { words } from '#words/easel.ts';
import { useEasel } from './easel-state.tsx';
import type { Frame } from './frame.ts';
import type { Hand } from './hand.ts';
import { PictureCopies } from './picture-copies.tsx';
import styles from './stage.module.css';
import { StageContext, type StageInside } from './stage-context.tsx';
import { type Placed, usePlacement } from './use-placement.ts';
import { useStageHands } from './use-stage-hands.ts';
import { toFraction } from './view-transform.ts';

interface StageProps {
  picture: PictureView;
  frame: Frame;
  /** Shown in the light of its cards as well as squared. */
  righted: boolean;
  /** For what is seen of the hand. */
  hand: Hand;
  /** The hand as it is when it does something. */
  handNow(): Hand;
  label: string;
  /** Part of the stage that is shown when two lie over each other: a CSS clip path. */
  clip?: string;
  swipe(towards: 'left' | 'right'): void;
  /** Layers over the picture. */
  children: ReactNode;
  /** Things that stand in the window and do not move with the picture. */
  fixed?: ReactNode;
}

export function Stage({ picture, frame, righted, hand, handNow, ...rest }: StageProps) {
  const { label, clip, swipe, children, fixed } = rest;
  const { views } = useEasel();
  const { board, point } = useBoardLive();
  const placed = usePlacement(views, frame);
  const first = useRef<HTMLImageElement>(null);
  const { crosshair, ...handlers } = useStageHands({
    ...{ views, placed, frame, handNow, swipe },
    seen: (at) => point(at && insideOf(at) ? { pictureId: picture.id, x: at[0], y: at[1] } : null),
  });
  const { stage, sheet, cut, placement } = placed;
  useLens(picture.id, frame, placed);
  const inside = useMemo<StageInside>(
    () => ({
      ...{ boardId: board.id, picture, frame, aspect: frame.size.height / frame.size.width },
      pointAt(clientX, clientY) {
        const box = stage.current?.getBoundingClientRect();
        return frame.original(toFraction(placement(), clientX - (box?.left ?? 0), clientY - (box?.top ?? 0)));
      },
      pixel: () => ({ x: 1 / placement().width, y: 1 / placement().height }),
      image: () => first.current,
    }),
    [board.id, picture, frame, stage, placement],
  );
  const style: CSSProperties = { cursor: hand.cursor, ...(clip ? { clipPath: clip } : {}) };
  return (
    <StageContext value={inside}>
      <div
        ref={stage}
        className={styles.stage}
        style={style}
        data-whole={placed.whole && !hand.drag ? '' : undefined}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys pan, zoom and set points here.
        tabIndex={0}
        role="application"
        aria-roledescription={words.easel.role}
        aria-label={`${label}. ${hand.keysHint}`}
        {...handlers}
      >
        <div ref={sheet} className={styles.sheet} style={ratioOf(frame)}>
          <div ref={cut} className={styles.cut}>
            <div className={styles.bent}>
              <PictureCopies
                boardId={board.id}
                pictureId={picture.id}
                copy={placed.copy}
                label={label}
                first={first}
              />
            </div>
            {righted ? (
              <div className={frame.mirrored ? styles.mirrored : undefined}>
                <RightedCopy className={styles.picture} copy={placed.copy} />
              </div>
            ) : null}
            <div className={softPlace(frame)} aria-hidden="true">
              <SoftLayers pictureId={picture.id} righted={righted} squared={frame.squared} />
            </div>
          </div>
          {children}
          {crosshair ? (
            <span
              className={styles.crosshair}
              style={{ left: `${crosshair[0] * 100}%`, top: `${crosshair[1] * 100}%` }}
              aria-hidden="true"
            />
          ) : null}
        </div>
        {fixed}
      </div>
    </StageContext>
  );
}

/** For the style sheet, which lays the picture before the script does. */
function ratioOf({ size }: Frame): CSSProperties {
  return { '--ratio': size.width / size.height } as CSSProperties;
}

/** Tells how the picture lies here, for views that are shared: with each frame, and whenever the window changes. */
function useLens(pictureId: string, frame: Frame, { stage, windowSize }: Placed): void {
  const { lenses } = useEasel();
  useLayoutEffect(() => {
    const element = stage.current;
    if (!element) return;
    const tell = () => lenses.set(pictureId, { window: windowSize(), frame });
    tell();
    const watcher = new ResizeObserver(tell);
    watcher.observe(element);
    return () => {
      watcher.disconnect();
      lenses.delete(pictureId);
    };
  }, [lenses, pictureId, frame, stage, windowSize]);
}

/** Squared layers come squared, and are only mirrored; others lie in the picture's own frame. */
function softPlace({ squared, mirrored }: Frame): string | undefined {
  if (!squared) return styles.bent;
  return mirrored ? styles.mirrored : styles.cut;
}

const insideOf = ([x, y]: readonly [number, number]) => x >= 0 && x <= 1 && y >= 0 && y <= 1;
