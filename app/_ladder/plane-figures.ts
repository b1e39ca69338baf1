/**
 * The few figures under each plane of the ladder, as text with units.
 *
 * In the flow: measures -> [figures] -> ladder's feet. Value in steps (10 L*) to a tenth, chroma and warm–cool
 * to whole units: no more digits than an uncorrected photo can carry. Pure.
 */

import { ladderWords } from '#app/_words/en-ladder.ts';
import { figure, NO_FIGURE, signedFigure, signedSteps } from '#app/_words/figures.ts';
import type { PlaneResult } from '#server/core/contract/measures.ts';

export interface FigureRow {
  label: string;
  /** With its unit; a dash when it could not be taken. */
  text: string;
}

/** Differences from the target when there is one, else the painting's own figures. Lights first, as on the bar. */
export function planeFigures(plane: PlaneResult): FigureRow[] {
  const { rows } = ladderWords;
  const { gap } = plane;
  if (gap) {
    return [
      { label: rows.light, text: signedSteps(gap.light) },
      { label: rows.mid, text: signedSteps(gap.mid) },
      { label: rows.dark, text: signedSteps(gap.dark) },
      { label: rows.chroma, text: withUnit(signedFigure(gap.chroma, 0), 'C*') },
      { label: rows.warmCool, text: signedFigure(gap.warmCool, 0) },
    ];
  }
  const own = plane.painting;
  return [
    { label: rows.light, text: ownValue(own.light) },
    { label: rows.mid, text: ownValue(own.mid) },
    { label: rows.dark, text: ownValue(own.dark) },
    { label: rows.chroma, text: withUnit(figure(own.chroma, 0), 'C*') },
    { label: rows.warmCool, text: signedFigure(own.warmCool, 0) },
  ];
}

function withUnit(text: string, unit: string): string {
  return text === NO_FIGURE ? text : `${text} ${unit}`;
}

/** A lightness on the ladder's axis. @param lightness L*. */
function ownValue(lightness: number | null): string {
  return lightness === null ? NO_FIGURE : `value ${figure(lightness / 10, 1)}`;
}
