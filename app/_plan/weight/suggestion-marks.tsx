'use client';
/**
 * A suggestion on the picture: the contour or the places that it asks to look at.
 *
 * In the flow: suggestion -> [suggestion-marks] -> stage. Drawn dark within light, so that it shows on any colour.
 */
import type { Suggestion, SuggestionKind } from '#server/core/plan/shapes/suggestion.ts';
import { OnStage, useStage } from '../stage/stage-context.tsx';
import styles from './weight.module.css';

/** Suggestions about a line; all others are about places. */
const LINES: ReadonlySet<SuggestionKind> = new Set([
  'horizon-halves',
  'straight-ridge',
  'repeated-ridge',
  'contours-touch',
  'equal-divisions',
]);
/** Places that belong to one another. */
const JOINED: ReadonlySet<SuggestionKind> = new Set(['two-rivals', 'one-level', 'stacked-peaks']);
const RADIUS = 15;

export function SuggestionMarks({ suggestion: { kind, at } }: { suggestion: Suggestion }) {
  const { widthPx, heightPx } = useStage();
  const points = at.map(([x, y]) => ({ x: x * widthPx, y: y * heightPx }));
  const path = points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  const isLine = LINES.has(kind) && points.length > 1;
  return (
    <OnStage>
      <g className={styles.marks} data-kind={kind}>
        {isLine || JOINED.has(kind) ? (
          <>
            <polyline points={path} className={styles.under} />
            <polyline points={path} className={isLine ? styles.over : styles.joined} />
          </>
        ) : null}
        {isLine
          ? null
          : points.map(({ x, y }) => (
              <g key={`${x} ${y}`}>
                <circle cx={x} cy={y} r={RADIUS} className={styles.under} />
                <circle cx={x} cy={y} r={RADIUS} className={styles.over} />
              </g>
            ))}
      </g>
    </OnStage>
  );
}
