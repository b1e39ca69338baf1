'use client';
/**
 * Pins and strokes over one picture. Redrawn only when a mark, the chosen one or the frame changes; panning
 * moves the whole layer.
 *
 * In the flow: live marks -> [mark-layer] -> screen; a pin chosen here opens in the talk.
 */
import { memo, type PointerEvent } from 'react';
import type { MarkView } from '#app/_live/board-live-types.ts';
import { words } from '#app/_words/en-easel.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { Frame } from './frame.ts';
import styles from './layers.module.css';
import { BOX, openPath, strokePath } from './shape-path.ts';
import type { StrokePoint } from './stroke-points.ts';

/** Keeps the stage from taking the press on a pin for a press on the picture. */
const keepPress = (event: PointerEvent) => event.stopPropagation();

const shownPoint = (point: StrokePoint, frame: Frame): FractionPoint => frame.shown([point[0], point[1]]);
const at = ([x, y]: FractionPoint) => ({ left: `${x * 100}%`, top: `${y * 100}%` });

interface OneMark {
  mark: MarkView;
  frame: Frame;
  aspect: number;
  chosen: boolean;
  choose(markId: string): void;
}

const Pin = memo(function Pin({ mark, frame, chosen, choose }: OneMark) {
  const [point] = mark.points;
  return point ? (
    <button
      type="button"
      className={styles.pin}
      data-chosen={chosen || undefined}
      data-mark={mark.id}
      style={at(shownPoint(point, frame))}
      aria-label={words.mark.pin(mark.number ?? 0, mark.authorName, mark.text)}
      aria-pressed={chosen}
      onPointerDown={keepPress}
      onClick={() => choose(mark.id)}
    >
      {mark.number}
    </button>
  ) : null;
});

/** The inked line; points keep their pressure through a squared frame. */
function inked(points: readonly StrokePoint[], frame: Frame, aspect: number): string {
  return strokePath(
    points.map((point) => [...shownPoint(point, frame), ...(point[2] === undefined ? [] : [point[2]])]),
    aspect,
  );
}

const Stroke = memo(function Stroke({ mark, frame, aspect, chosen, choose }: OneMark) {
  const path = inked(mark.points, frame, aspect);
  const middle = openPath(
    mark.points.map((point) => shownPoint(point, frame)),
    aspect,
  );
  return (
    <g data-chosen={chosen || undefined}>
      <path className={styles.inkCasing} d={path} />
      <path className={styles.ink} d={path} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys reach the number at its start; the line is a wider place for the hand. */}
      <path className={styles.inkHit} d={middle} onPointerDown={keepPress} onClick={() => choose(mark.id)} />
    </g>
  );
});

const StrokeNumber = memo(function StrokeNumber({ mark, frame, chosen, choose }: OneMark) {
  const [start] = mark.points;
  return start ? (
    <button
      type="button"
      className={styles.strokeNumber}
      data-chosen={chosen || undefined}
      data-mark={mark.id}
      style={at(shownPoint(start, frame))}
      aria-label={words.mark.stroke(mark.number ?? 0, mark.authorName)}
      aria-pressed={chosen}
      onPointerDown={keepPress}
      onClick={() => choose(mark.id)}
    >
      {mark.number}
    </button>
  ) : null;
});

interface MarkLayerProps {
  marks: readonly MarkView[];
  frame: Frame;
  aspect: number;
  chosenId: string | null;
  choose(markId: string): void;
}

export const MarkLayer = memo(function MarkLayer({ marks, frame, aspect, chosenId, choose }: MarkLayerProps) {
  const one = (mark: MarkView): OneMark => ({ mark, frame, aspect, chosen: mark.id === chosenId, choose });
  return (
    <>
      <svg
        className={styles.lines}
        viewBox={`0 0 ${BOX} ${BOX * aspect}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {marks.map((mark) => (mark.kind === 'stroke' ? <Stroke key={mark.id} {...one(mark)} /> : null))}
      </svg>
      {marks.map((mark) =>
        mark.kind === 'stroke' ? (
          <StrokeNumber key={mark.id} {...one(mark)} />
        ) : (
          <Pin key={mark.id} {...one(mark)} />
        ),
      )}
    </>
  );
});

/** The line that grows under the pen. */
export function GrowingStroke({
  points,
  frame,
  aspect,
}: {
  points: readonly StrokePoint[];
  frame: Frame;
  aspect: number;
}) {
  if (points.length === 0) return null;
  const path = inked(points, frame, aspect);
  return (
    <svg
      className={styles.lines}
      viewBox={`0 0 ${BOX} ${BOX * aspect}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path className={styles.inkCasing} d={path} />
      <path className={styles.ink} d={path} />
    </svg>
  );
}
