/**
 * Where everything on the ladder stands, in shares of its plot. Nothing here knows pixels.
 *
 * In the flow: measures -> [geometry] -> chart, sheet. x runs 0 (left, far) to 1 (right, near); y runs 0 (value 10,
 * white) to 1 (value 0, black). The value axis is a tenth of L*, as the measuring page fixes it. Pure.
 */

import type { MeasureDocument, PlaneMeasures, PlaneResult } from '../contract/measures.ts';

/** How far the two bars of one column stand from its middle, in shares of the column. */
const BAR_OFFSET = 0.15;

/** A plane of one single lightness still shows as a sliver this high, in shares of the plot. */
const LEAST_HEIGHT = 0.012;

/** Doubt under 0.8 L* would be a line as thick as the bar's own rim. */
const LEAST_DOUBT = 0.008;

/**
 * The ten greys of the axis, dark to light: L* 5, 15 … 95 (D65), the middle of each tenth, as sRGB.
 * Source: CIE 15 and IEC 61966-2-1; the test lays them against culori's `lab65`.
 */
export const AXIS_GREYS = [
  ...['#111111', '#262626', '#3b3b3b', '#525252', '#6a6a6a'],
  ...['#848484', '#9e9e9e', '#b9b9b9', '#d4d4d4', '#f1f1f1'],
] as const;

export interface LadderBar {
  /** Middle of the bar, share of the plot's width. */
  x: number;
  /** Upper end (the lights) and height, shares of the plot. */
  top: number;
  height: number;
  /** Where the middle stands, share of the plot; null when it was not taken. */
  middle: number | null;
  /** Where the middle stands inside the bar, 0 (top) to 1; 0.5 when it was not taken. */
  middleWithin: number;
  colours: PlaneMeasures['colours'];
  /** How far beyond lights and darks the plane may truly reach, shares of the plot; null where that is too little to see. */
  above: LadderSpan | null;
  below: LadderSpan | null;
  /** Where the middle may truly stand; null as above. */
  around: LadderSpan | null;
}

/** A piece of the plot's height: its upper end and its length, shares of the plot. */
export interface LadderSpan {
  top: number;
  height: number;
}

export interface LadderColumn {
  name: string;
  /** The target is shown but not to be gone by. */
  quietTarget: boolean;
  /** 1 = the farthest. */
  number: number;
  target: LadderBar | null;
  painting: LadderBar | null;
}

export interface LadderPoint {
  x: number;
  y: number;
}

export interface LadderGeometry {
  columns: LadderColumn[];
  /** Runs of neighbouring middles; a plane without one breaks the line. Runs of one point are left out. */
  targetLines: LadderPoint[][];
  paintingLines: LadderPoint[][];
}

/** @param lightness L*; held to 0..100. @returns Share of the plot's height from its top. */
export function heightOfLightness(lightness: number): number {
  return 1 - Math.min(100, Math.max(0, lightness)) / 100;
}

/** A piece between two lightnesses, or null when it is shorter than can be seen. @param from the lighter, L*. */
function spanBetween(from: number, to: number): LadderSpan | null {
  const top = heightOfLightness(from);
  const height = heightOfLightness(to) - top;
  return height < LEAST_DOUBT ? null : { top, height };
}

/** What a bar is drawn from. */
type Drawn = Pick<PlaneMeasures, 'dark' | 'mid' | 'light' | 'doubt' | 'colours'>;

/** What the painting is held against at one plane: its rung of the plan where that is the target, else the reference. */
function drawnTarget({ reference, planned }: PlaneResult): Drawn | null {
  return planned === undefined ? reference : planned && { ...planned, doubt: {} };
}

/** The outer halves of the 90 % intervals of lights and darks, and the whole one of the middle. */
function doubtOf({ dark, light, doubt }: Drawn): Pick<LadderBar, 'above' | 'below' | 'around'> {
  const { dark: darks, mid, light: lights } = doubt;
  return {
    above: lights && light !== null ? spanBetween(lights[1], light) : null,
    below: darks && dark !== null ? spanBetween(dark, darks[0]) : null,
    around: mid ? spanBetween(mid[1], mid[0]) : null,
  };
}

/** The bar of one plane at `x`, or null when darks or lights were not taken. */
function barOf(measures: Drawn | null, x: number): LadderBar | null {
  if (!measures || measures.dark === null || measures.light === null) return null;
  const trueTop = heightOfLightness(measures.light);
  const trueHeight = heightOfLightness(measures.dark) - trueTop;
  const height = Math.max(trueHeight, LEAST_HEIGHT);
  const top = Math.min(Math.max(0, trueTop - (height - trueHeight) / 2), 1 - height);
  const middle = measures.mid === null ? null : heightOfLightness(measures.mid);
  const middleWithin = middle === null ? 0.5 : Math.min(1, Math.max(0, (middle - top) / height));
  return { x, top, height, middle, middleWithin, colours: measures.colours, ...doubtOf(measures) };
}

/** The middles of one picture's bars, joined where neighbours both have one. */
function linesThrough(bars: (LadderBar | null)[]): LadderPoint[][] {
  const runs: LadderPoint[][] = [[]];
  for (const bar of bars) {
    if (bar && bar.middle !== null) runs.at(-1)?.push({ x: bar.x, y: bar.middle });
    else runs.push([]);
  }
  return runs.filter((run) => run.length > 1);
}

/**
 * @param planes Results far to near, as in the measure document; an empty list gives an empty ladder.
 * A plane without darks or lights keeps its column and has no bar.
 * @param unreliable By column: the reference is not to be trusted there, so the target's line leaves it out.
 */
export function ladderGeometry(
  planes: MeasureDocument['planes'],
  unreliable: readonly boolean[] = [],
): LadderGeometry {
  const width = 1 / Math.max(1, planes.length);
  const hasTarget = planes.some((plane) => drawnTarget(plane) !== null);
  const offset = hasTarget ? BAR_OFFSET * width : 0;
  const columns = planes.map((plane, index): LadderColumn => {
    const centre = (index + 0.5) * width;
    return {
      name: plane.name,
      number: index + 1,
      quietTarget: unreliable[index] ?? false,
      target: barOf(drawnTarget(plane), centre - offset),
      painting: barOf(plane.painting, centre + offset),
    };
  });
  return {
    columns,
    targetLines: linesThrough(columns.map(({ target, quietTarget }) => (quietTarget ? null : target))),
    paintingLines: linesThrough(columns.map((column) => column.painting)),
  };
}
