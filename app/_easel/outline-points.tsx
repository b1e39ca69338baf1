'use client';
/**
 * The outline under the hand: a new one as it grows, or the chosen one with its points to pull and to reach by key.
 *
 * In the flow: outline hand -> [outline-points] -> screen and keys.
 */
import { type KeyboardEvent, useRef } from 'react';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import type { OutlineDraft } from './easel-state.tsx';
import styles from './layers.module.css';
import { linePattern } from './line-pattern.ts';
import { closedRidge, movedOutline, withoutPoint, withPointAfter, withPointMoved } from './outline-edit.ts';
import dots from './points.module.css';
import { BOX, closedPath, openPath } from './shape-path.ts';
import { useStage } from './stage-context.tsx';

/** More points than this are drawn smaller. */
const MANY = 30;
const NUDGE_PX = 1;
const NUDGE_FAR_PX = 10;
const ARROWS: Record<string, [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const at = ([x, y]: FractionPoint) => ({ left: `${x * 100}%`, top: `${y * 100}%` });

function Line({ path, number }: { path: string; number: number }) {
  const { aspect } = useStage();
  const { dashes, core, casing } = linePattern(number);
  return (
    <svg
      className={styles.lines}
      viewBox={`0 0 ${BOX} ${BOX * aspect}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <g data-chosen="">
        <g>
          <path className={styles.casing} d={path} stroke={casing} strokeDasharray={dashes} />
          <path className={styles.core} d={path} stroke={core} strokeDasharray={dashes} />
        </g>
      </g>
    </svg>
  );
}

/** What the line will become: closed round the picture's edge, or by itself; one that splits stays as it is. */
function closedAs({ way, points }: OutlineDraft, plane: PlaneView): Outline {
  if (way === 'split') return [];
  return way === 'ridge' ? closedRidge(points, plane.kind) : points;
}

/** The outline that is being drawn, closed as it will be, with a ring round its first point. */
export function DraftOutline({ draft, plane }: { draft: OutlineDraft; plane: PlaneView }) {
  const { aspect, frame } = useStage();
  const closed = closedAs(draft, plane);
  const whole = closedPath(closed.map(frame.shown), aspect);
  const drawn = openPath(draft.points.map(frame.shown), aspect);
  return (
    <>
      <svg
        className={styles.lines}
        viewBox={`0 0 ${BOX} ${BOX * aspect}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path className={styles.casing} d={whole} stroke="var(--over-dark-half)" strokeDasharray="2 6" />
        <path className={styles.core} d={whole} stroke="var(--over-light-most)" strokeDasharray="2 6" />
      </svg>
      <Line path={drawn} number={1} />
      {draft.stops.map((point, index) => (
        <span
          // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name than their place in the line.
          key={index}
          className={dots.point}
          data-first={index === 0 || undefined}
          style={at(frame.shown(point))}
          aria-hidden="true"
        />
      ))}
    </>
  );
}

interface OutlinePointsProps {
  plane: PlaneView;
  outline: Outline;
  badge: FractionPoint | null;
  chosenPoint: number;
  choosePoint(at: number): void;
  keep(planeId: string, before: Outline, outline: Outline): void;
}

/** The chosen outline: one Tab stop for its points (comma and full stop go along), one for all of it. */
export function OutlinePoints({ plane, outline, badge, chosenPoint, choosePoint, keep }: OutlinePointsProps) {
  const { aspect, frame, pixel } = useStage();
  const points = useRef<HTMLDivElement>(null);
  const chosen = Math.min(chosenPoint, outline.length - 1);
  const change = (next: Outline) => keep(plane.id, outline, next);
  const goTo = (to: number) => {
    const index = (to + outline.length) % outline.length;
    choosePoint(index);
    requestAnimationFrame(() => points.current?.querySelectorAll('button')[index]?.focus());
  };
  const nudged = (event: KeyboardEvent): [number, number] | null => {
    const arrow = ARROWS[event.key];
    if (!arrow) return null;
    const px = event.shiftKey ? NUDGE_FAR_PX : NUDGE_PX;
    const { x, y } = pixel();
    return [arrow[0] * px * x, arrow[1] * px * y];
  };
  const take = (event: KeyboardEvent, act: () => void) => {
    event.preventDefault();
    event.stopPropagation();
    act();
  };
  const pointKeys: Record<string, () => void> = {
    ',': () => goTo(chosen - 1),
    '.': () => goTo(chosen + 1),
    i: () => {
      change(withPointAfter(outline, chosen).outline);
      goTo(chosen + 1);
    },
    delete: () => {
      change(withoutPoint(outline, chosen));
      goTo(Math.max(0, chosen - 1));
    },
  };
  const onPointKey = (event: KeyboardEvent) => {
    const by = nudged(event);
    const act = by
      ? () => change(withPointMoved(outline, chosen, ...by))
      : pointKeys[event.key.toLowerCase()];
    if (act) take(event, act);
  };
  return (
    <>
      <Line path={closedPath(outline.map(frame.shown), aspect)} number={plane.number} />
      <div ref={points} data-many={outline.length > MANY || undefined}>
        {outline.map((point, index) => (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name than their place in the line.
            key={index}
            type="button"
            className={dots.point}
            style={at(frame.shown(point))}
            data-chosen={index === chosen || undefined}
            tabIndex={index === chosen ? 0 : -1}
            aria-label={words.outline.point(plane.name, index + 1, outline.length)}
            onKeyDown={onPointKey}
          />
        ))}
      </div>
      {badge ? (
        <button
          type="button"
          className={styles.badge}
          data-chosen=""
          style={at(badge)}
          aria-label={words.outline.moveAll(plane.name)}
          onKeyDown={(event) => {
            const by = nudged(event);
            if (by) take(event, () => change(movedOutline(outline, ...by)));
          }}
        >
          {plane.number}
        </button>
      ) : null}
    </>
  );
}
