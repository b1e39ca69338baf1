'use client';
/**
 * Everything that is marked on one picture: sketches, lines, and the numbers and words that can be chosen.
 *
 * In the flow: marks as this screen shows them -> [mark-layer] -> screen; a mark chosen here opens in the talk. Redrawn
 * only when a mark, the chosen one or the frame changes; panning moves the whole layer.
 */
import { type KeyboardEvent, memo, useMemo } from 'react';
import type { Frame } from '#app/_easel/frame.ts';
import type { MarkView } from '#app/_live/mark-types.ts';
import { markWords as words } from '#words/marks.ts';
import { keepPress, MarkLines, SketchLayer, shownPoint } from './mark-lines.tsx';
import styles from './marks.module.css';

interface OneSpot {
  mark: MarkView;
  frame: Frame;
  /** What it is, whose, where and what it says, for those who listen. */
  label: string;
  chosen: boolean;
  /** Whether the tab key comes to it; the arrow keys go on from there. */
  first: boolean;
  choose(markId: string): void;
}

const CLASS: Partial<Record<MarkView['kind'], string | undefined>> = {
  pin: styles.pin,
  text: styles.words,
};

/** Words that stand further right than this end at their place instead of beginning there. */
const ENDS_FROM = 0.6;

const Spot = memo(function Spot({ mark, frame, label, chosen, first, choose }: OneSpot) {
  const { kind, number, sight } = mark;
  const [point] = mark.points;
  if (!point) return null;
  const [x, y] = shownPoint(point, frame);
  const at = { left: `${x * 100}%`, top: `${y * 100}%` };
  return (
    <>
      {kind === 'patch' ? <span className={styles.ring} style={at} aria-hidden="true" /> : null}
      <button
        type="button"
        className={CLASS[kind] ?? styles.number}
        data-chosen={chosen || undefined}
        data-beside={kind === 'patch' || undefined}
        data-ends={x > ENDS_FROM || undefined}
        data-sight={sight === 'shown' ? undefined : sight}
        data-mark={mark.id}
        style={at}
        aria-label={label}
        aria-pressed={chosen}
        tabIndex={first ? 0 : -1}
        onPointerDown={keepPress}
        onClick={() => choose(mark.id)}
      >
        {kind === 'text' ? <span>{number}</span> : number}
        {kind === 'text' ? mark.text : null}
      </button>
    </>
  );
});

/** Arrow keys go from mark to mark, in their order; Home and End to the first and the last. */
function goAlong(event: KeyboardEvent<HTMLElement>) {
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  const spots = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-mark]')];
  const at = event.target instanceof HTMLElement ? spots.indexOf(event.target) : -1;
  const next = step ? spots[at + step] : { Home: spots[0], End: spots.at(-1) }[event.key];
  if (at < 0 || !next) return;
  event.preventDefault();
  next.focus();
}

interface MarkLayerProps {
  /** Sketches and numbered marks of this picture, as this screen shows them. */
  marks: readonly MarkView[];
  frame: Frame;
  aspect: number;
  kind: 'reference' | 'painting';
  chosenId: string | null;
  /** Presses go through to the picture: the hand draws, and a line may begin on a number. */
  passing: boolean;
  labelOf(mark: MarkView): string;
  choose(markId: string): void;
}

export const MarkLayer = memo(function MarkLayer(props: MarkLayerProps) {
  const { marks, frame, aspect, kind, chosenId, passing, labelOf, choose } = props;
  const sketches = useMemo(() => marks.filter((mark) => mark.kind === 'sketch'), [marks]);
  const spots = marks.filter(({ number }) => number !== null);
  const first = spots.some(({ id }) => id === chosenId) ? chosenId : spots[0]?.id;
  return (
    <>
      <SketchLayer marks={sketches} frame={frame} aspect={aspect} />
      <MarkLines {...{ marks, frame, aspect, chosenId, passing, choose }} />
      {spots.length > 0 ? (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are places on a picture.
        <div
          className={styles.spots}
          role="group"
          aria-label={words.onPicture[kind]}
          data-passing={passing || undefined}
          onKeyDown={goAlong}
        >
          {spots.map((mark) => (
            <Spot
              key={mark.id}
              {...{ mark, frame, choose }}
              label={labelOf(mark)}
              chosen={mark.id === chosenId}
              first={mark.id === first}
            />
          ))}
        </div>
      ) : null}
    </>
  );
});
