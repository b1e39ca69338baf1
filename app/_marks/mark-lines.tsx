'use client';
/**
 * The drawn part of marks: lines, arrows and loops, the strokes of sketches, and what grows under the hand.
 *
 * In the flow: marks, growing-store -> [mark-lines] -> the sheet of a picture.
 */
import { memo, type PointerEvent, type ReactNode, useSyncExternalStore } from 'react';
import type { Frame } from '#app/_easel/frame.ts';
import { BOX, closedPath, openPath, strokePath } from '#app/_easel/shape-path.ts';
import { useStage } from '#app/_easel/stage-context.tsx';
import type { MarkView } from '#app/_live/mark-types.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { MarkKind, MarkPaint } from '#server/core/live/layout.ts';
import type { Mark } from '#server/core/live/marks.ts';
import { useMarkDesk } from './mark-desk.tsx';
import { arrowPath } from './mark-shape.ts';
import styles from './marks.module.css';

/** Keeps the stage from taking the press on a mark for a press on the picture. */
export const keepPress = (event: PointerEvent) => event.stopPropagation();

export const shownPoint = (point: Mark['points'][number], frame: Frame): FractionPoint =>
  frame.shown([point[0], point[1]]);

/** The inked line; points keep their pressure through a squared frame. */
function inked(points: Mark['points'], frame: Frame, aspect: number, width?: number): string {
  const shown = points.map((point) => [...shownPoint(point, frame), ...point.slice(2)]);
  return strokePath(shown, aspect, width);
}

/** Where a fingertip finds the line, and the plain line of kinds that are not inked. */
function middleLine(kind: MarkKind, points: Mark['points'], frame: Frame, aspect: number): string {
  const shown = points.map((point) => shownPoint(point, frame));
  const [from, to] = shown;
  if (kind === 'arrow' && from && to) return arrowPath(from, to, aspect);
  return kind === 'outline' ? closedPath(shown, aspect) : openPath(shown, aspect);
}

/** A layer in the box of `shape-path`. */
function Lines({
  aspect,
  passing = false,
  children,
}: {
  aspect: number;
  passing?: boolean;
  children: ReactNode;
}) {
  return (
    <svg
      className={styles.lines}
      data-passing={passing || undefined}
      viewBox={`0 0 ${BOX} ${BOX * aspect}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

interface Drawing {
  kind: MarkKind;
  points: Mark['points'];
  frame: Frame;
  aspect: number;
}

/** A line is inked with the pen's pressure; an arrow and a loop are plain. */
function Drawn({ kind, points, frame, aspect }: Drawing) {
  if (kind === 'stroke') {
    const path = inked(points, frame, aspect);
    return (
      <>
        <path className={styles.inkCasing} d={path} />
        <path className={styles.ink} d={path} />
      </>
    );
  }
  const path = middleLine(kind, points, frame, aspect);
  return (
    <>
      <path className={styles.casing} d={path} />
      <path className={styles.core} d={path} />
    </>
  );
}

interface OneLine {
  mark: MarkView;
  frame: Frame;
  aspect: number;
  chosen: boolean;
  choose(markId: string): void;
}

const MarkLine = memo(function MarkLine({ mark, frame, aspect, chosen, choose }: OneLine) {
  const { kind, points } = mark;
  return (
    <g
      data-chosen={chosen || undefined}
      data-sight={mark.sight === 'shown' ? undefined : mark.sight}
      data-line={mark.id}
    >
      <Drawn {...{ kind, points, frame, aspect }} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys reach the number at its start; the line is a wider place for the hand. */}
      <path
        className={styles.hit}
        d={middleLine(kind, points, frame, aspect)}
        onPointerDown={keepPress}
        onClick={() => choose(mark.id)}
      />
    </g>
  );
});

const DRAWN: ReadonlySet<MarkKind> = new Set<MarkKind>(['stroke', 'arrow', 'outline']);

interface LinesProps {
  marks: readonly MarkView[];
  frame: Frame;
  aspect: number;
  chosenId: string | null;
  /** Presses go through to the picture: the hand draws. */
  passing: boolean;
  choose(markId: string): void;
}

export const MarkLines = memo(function MarkLines(props: LinesProps) {
  const { marks, frame, aspect, chosenId, passing, choose } = props;
  return (
    <Lines aspect={aspect} passing={passing}>
      {marks.map((mark) =>
        DRAWN.has(mark.kind) ? (
          <MarkLine key={mark.id} {...{ mark, frame, aspect, choose }} chosen={mark.id === chosenId} />
        ) : null,
      )}
    </Lines>
  );
});

function Painted({ points, paint, frame, aspect }: Omit<Drawing, 'kind'> & { paint: MarkPaint }) {
  const { hex, opacity, width } = paint;
  // Set here and not in the style sheet: the colour is the person's own.
  return <path style={{ fill: hex, fillOpacity: opacity }} d={inked(points, frame, aspect, width)} />;
}

const SketchStroke = memo(function SketchStroke({
  mark: { id, points, paint, sight },
  frame,
  aspect,
}: Pick<OneLine, 'mark' | 'frame' | 'aspect'>) {
  return (
    <g data-sight={sight === 'shown' ? undefined : sight} data-sketch={id}>
      {paint ? <Painted {...{ points, paint, frame, aspect }} /> : null}
    </g>
  );
});

/** All sketches over one picture, oldest underneath. @param marks Sketches alone. */
export const SketchLayer = memo(function SketchLayer({
  marks,
  frame,
  aspect,
}: Pick<LinesProps, 'marks' | 'frame' | 'aspect'>) {
  if (marks.length === 0) return null;
  return (
    <svg
      className={styles.paint}
      viewBox={`0 0 ${BOX} ${BOX * aspect}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {marks.map((mark) => (
        <SketchStroke key={mark.id} {...{ mark, frame, aspect }} />
      ))}
    </svg>
  );
});

const nothing = () => null;

/** The mark that grows under the hand on this picture. */
export function GrowingMark() {
  const { growing: store } = useMarkDesk();
  const { picture, frame, aspect } = useStage();
  const growing = useSyncExternalStore(store.subscribe, store.get, nothing);
  if (growing?.pictureId !== picture.id) return null;
  const { kind, ahead, drawn, paint } = growing;
  const points = ahead && !drawn ? [...growing.points, ahead] : growing.points;
  if (points.length < 2) {
    const [only] = points;
    if (!only) return null;
    const [x, y] = shownPoint(only, frame);
    return (
      <span className={styles.ring} style={{ left: `${x * 100}%`, top: `${y * 100}%` }} aria-hidden="true" />
    );
  }
  return (
    <Lines aspect={aspect}>
      {paint ? (
        <Painted {...{ points, paint, frame, aspect }} />
      ) : (
        <Drawn {...{ kind, points, frame, aspect }} />
      )}
    </Lines>
  );
}
