'use client';
/**
 * The outlines of all planes over one picture, each where it can be seen, with the number of its plane.
 *
 * In the flow: live outlines -> [outline-layer] -> screen. Redrawn only when an outline changes.
 */
import { memo, useId } from 'react';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import type { Frame } from './frame.ts';
import styles from './layers.module.css';
import { linePattern } from './line-pattern.ts';
import { BOX, closedPath, ridgePath } from './shape-path.ts';

export interface DrawnPlane {
  plane: PlaneView;
  /** 0..1 of what is shown. */
  outline: Outline;
}

/** The planes that have an outline on a picture, far to near, as they are shown. */
export function drawnPlanes(
  planes: readonly PlaneView[],
  outlines: ReadonlyMap<string, Outline>,
  frame: Frame,
): DrawnPlane[] {
  return planes.flatMap((plane) => {
    const outline = outlines.get(plane.id);
    return outline ? [{ plane, outline: outline.map(frame.shown) }] : [];
  });
}

export interface OutlineLayerProps {
  drawn: readonly DrawnPlane[];
  /** Where the numbers stand, by plane id. */
  badges: ReadonlyMap<string, FractionPoint>;
  aspect: number;
  /** The plane in hand or pointed at in the ladder: drawn whole and stronger. */
  chosenId: string | null;
  /** Whether the chosen plane is drawn where nearer ones cover it, too. */
  whole?: boolean;
  /** The plane whose outline is being pulled about; drawn by the hand instead. */
  hiddenId: string | null;
}

export const OutlineLayer = memo(function OutlineLayer({
  drawn,
  badges,
  aspect,
  chosenId,
  whole = true,
  hiddenId,
}: OutlineLayerProps) {
  const id = useId();
  return (
    <>
      <svg
        className={styles.lines}
        viewBox={`0 0 ${BOX} ${BOX * aspect}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {drawn.map(({ plane, outline }, at) => {
          const chosen = plane.id === chosenId;
          // What lies behind everything is told by the ridges before it.
          if (plane.id === hiddenId || (at === 0 && drawn.length > 1 && !chosen)) return null;
          const nearer = chosen && whole ? [] : drawn.slice(at + 1);
          const { dashes, core, casing } = linePattern(plane.number);
          const path = ridgePath(outline, aspect);
          return (
            <g key={plane.id} data-chosen={chosen || undefined}>
              {nearer.length > 0 ? (
                <mask
                  id={`${id}-${at}`}
                  maskUnits="userSpaceOnUse"
                  x={0}
                  y={0}
                  width={BOX}
                  height={BOX * aspect}
                >
                  <rect width={BOX} height={BOX * aspect} fill="var(--white)" />
                  {nearer.map((other) => (
                    <path key={other.plane.id} d={closedPath(other.outline, aspect)} fill="var(--black)" />
                  ))}
                </mask>
              ) : null}
              <g mask={nearer.length > 0 ? `url(#${id}-${at})` : undefined}>
                <path className={styles.casing} d={path} stroke={casing} strokeDasharray={dashes} />
                <path className={styles.core} d={path} stroke={core} strokeDasharray={dashes} />
              </g>
            </g>
          );
        })}
      </svg>
      {drawn.map(({ plane }) => {
        const place = badges.get(plane.id);
        return place && plane.id !== hiddenId ? (
          <span
            key={plane.id}
            className={styles.badge}
            data-chosen={plane.id === chosenId || undefined}
            style={{ left: `${place[0] * 100}%`, top: `${place[1] * 100}%` }}
            aria-hidden="true"
          >
            {plane.number}
          </span>
        ) : null;
      })}
    </>
  );
});
