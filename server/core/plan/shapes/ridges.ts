/**
 * K4: ridges that run straight from edge to edge, repeat one another, or stack their peaks.
 *
 * In the flow: ridges -> [ridges] -> suggestions, and the plan's list of ridges. Source: Poore 1903, Appendix ("Don'ts":
 * lines parallel to the bottom edge, a line that repeats another); stacked peaks: common practice, no source. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { say } from '../../say/say.ts';
import { type RidgeLine, shownColumns, smoothed, straightThrough } from './ridge-lines.ts';
import { pointsAlong, type ShapeScene } from './shape-scene.ts';
import { type Seen, severityOf } from './suggestion.ts';

/** Share of the width that a straight run spans, and the widest break in it. */
const RUN = 0.85;
const BREAK = 0.03;
const LEVEL_DEG = 2;
/** Share of the height by which nearly all of a run may leave its straight line. */
const OFF_LINE = 0.012;
/** Share of the columns that must keep to it. */
const KEPT = 0.95;
/** Likeness of two profiles, as they are and with their slopes taken out. */
const REPEATS = { whole: 0.85, bent: 0.75 };
/** Share of the width in which both must show, and of the height by which both must bend. */
const BOTH_SHOWN = 0.6;
const BENDS = 0.012;
/** Width, as a share, by which two peaks may stand apart and still be stacked. */
const STACKED = 0.03;
/** How far a peak must stand out, of the picture's height, and beside the ridge's highest. */
const PEAK = 0.03;
const PEAK_BESIDE = 0.6;
/** Columns, as a share, over which a contour is smoothed before its peaks are sought. */
const SMOOTH = 0.008;

export interface RidgeFacts {
  readonly name: string;
  /** Share of the width in which it shows. */
  readonly span: number;
  /** Slope of the straight line through it, degrees; + falls to the right. */
  readonly slopeDeg: number;
  /** Tops that stand out, 0..1 of the picture. */
  readonly peaks: readonly FractionPoint[];
  readonly points: readonly FractionPoint[];
}

function lineThrough(ridge: RidgeLine): { xs: number[]; ys: number[]; slope: number; start: number } {
  const xs = shownColumns(ridge);
  const ys = xs.map((x) => ridge.heights[x] as number);
  return { xs, ys, ...straightThrough(xs, ys) };
}

function widestBreak(xs: readonly number[]): number {
  return xs.slice(1).reduce((widest, x, at) => Math.max(widest, x - (xs[at] as number) - 1), 0);
}

function straightRun(scene: ShapeScene, ridge: RidgeLine): Seen[] {
  if (ridge.kind === 'water') return [];
  const { xs, ys, slope, start } = lineThrough(ridge);
  const span = xs.length / scene.columns;
  const degrees = Math.abs((Math.atan(slope) * 180) / Math.PI);
  if (span < RUN || degrees >= LEVEL_DEG || widestBreak(xs) >= BREAK * scene.columns) return [];
  const kept = ys.filter(
    (y, at) => Math.abs(y - start - slope * (xs[at] as number)) <= OFF_LINE * scene.rows,
  );
  if (kept.length < KEPT * ys.length) return [];
  return [
    {
      id: 'K4',
      kind: 'straight-ridge',
      planes: [ridge.name],
      severity: severityOf(1 - degrees / LEVEL_DEG),
      sentence: say`Look at the ${scene.label(ridge.plane)}: it runs straight from edge to edge. Try breaking or varying it.`,
      why: say`A level line across the whole picture bars the way in like a fence.`,
      source: say`Poore 1903, Appendix (Don'ts)`,
      at: pointsAlong(ridge, scene),
    },
  ];
}

function likeness(one: readonly number[], two: readonly number[]): number {
  const mean = (of: readonly number[]): number => of.reduce((sum, value) => sum + value, 0) / of.length;
  const [m, n] = [mean(one), mean(two)];
  let [p, q, both] = [0, 0, 0];
  one.forEach((value, at) => {
    const [u, v] = [value - m, (two[at] as number) - n];
    p += u * u;
    q += v * v;
    both += u * v;
  });
  return p > 0 && q > 0 ? both / Math.sqrt(p * q) : 0;
}

/** A profile with its straight line taken out. */
function bent(xs: readonly number[], ys: readonly number[]): number[] {
  const { slope, start } = straightThrough(xs, ys);
  return ys.map((y, at) => y - start - slope * (xs[at] as number));
}

const deviation = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

function repeats(scene: ShapeScene, far: RidgeLine, near: RidgeLine): Seen[] {
  const xs = shownColumns(far).filter((x) => !Number.isNaN(near.heights[x]));
  if (xs.length < BOTH_SHOWN * scene.columns) return [];
  const [one, two] = [far, near].map(({ heights }) => xs.map((x) => heights[x] as number)) as [
    number[],
    number[],
  ];
  const [bend, other] = [bent(xs, one), bent(xs, two)];
  if (Math.min(deviation(bend), deviation(other)) < BENDS * scene.rows) return [];
  const alike = likeness(one, two);
  if (alike < REPEATS.whole || likeness(bend, other) < REPEATS.bent) return [];
  return [
    {
      id: 'K4',
      kind: 'repeated-ridge',
      planes: [far.name, near.name],
      severity: severityOf((alike - REPEATS.whole) / (1 - REPEATS.whole)),
      sentence: say`Look at the ${scene.label(near.plane)}: it repeats the shape of the ${scene.label(far.plane)} behind it. Try varying one.`,
      why: say`Two contours of one shape read as one form drawn twice, and the depth between them goes.`,
      source: say`Poore 1903, Appendix (Don'ts)`,
      at: pointsAlong(near, scene),
    },
  ];
}

/** Rows by which a top stands above the higher of the two valleys that part it from anything higher. */
function standsOut(heights: Float64Array, x: number): number {
  const top = heights[x] as number;
  const valley = (step: 1 | -1): number => {
    let lowest = top;
    for (let at = x + step; at >= 0 && at < heights.length; at += step) {
      const y = heights[at] as number;
      if (Number.isNaN(y)) continue;
      if (y < top) return lowest;
      lowest = Math.max(lowest, y);
    }
    return lowest;
  };
  return Math.min(valley(-1), valley(1)) - top;
}

/** Columns of the tops that stand out; flat tops count once, in their middle; none at the picture's sides. */
function peakColumns(scene: ShapeScene, ridge: RidgeLine): number[] {
  const heights = smoothed(ridge.heights, Math.max(1, Math.round(SMOOTH * scene.columns)));
  const tops: { x: number; out: number }[] = [];
  for (let x = 1; x + 1 < heights.length; x++) {
    if (!((heights[x - 1] as number) > (heights[x] as number))) continue;
    let end = x;
    while (heights[end + 1] === heights[x]) end++;
    if ((heights[end + 1] as number) > (heights[x] as number)) {
      tops.push({ x: Math.round((x + end) / 2), out: standsOut(heights, x) });
    }
    x = end;
  }
  const most = Math.max(0, ...tops.map(({ out }) => out));
  return tops.filter(({ out }) => out >= PEAK * scene.rows && out >= PEAK_BESIDE * most).map(({ x }) => x);
}

function stacks(scene: ShapeScene, far: RidgeLine, near: RidgeLine): Seen[] {
  const farTops = peakColumns(scene, far);
  const pairs = peakColumns(scene, near)
    .flatMap((x) => farTops.map((over) => ({ x, over, apart: Math.abs(x - over) / scene.columns })))
    .filter(({ apart }) => apart <= STACKED)
    .sort((one, two) => one.apart - two.apart);
  const [pair] = pairs;
  if (!pair) return [];
  return [
    {
      id: 'K4',
      kind: 'stacked-peaks',
      planes: [far.name, near.name],
      severity: severityOf(1 - pair.apart / STACKED),
      sentence: say`Look at the peaks: one of the ${scene.label(near.plane)} stands right under one of the ${scene.label(far.plane)}. Try moving one aside.`,
      why: say`Peak over peak makes a tower of two distances.`,
      source: say`common practice, no source`,
      at: [
        scene.place(pair.over + 0.5, far.heights[pair.over] as number),
        scene.place(pair.x + 0.5, near.heights[pair.x] as number),
      ],
    },
  ];
}

/** K4. Ridges that repeat one another stack their peaks too; that is said once. */
export function ridgeShapes(scene: ShapeScene): Seen[] {
  const straight = scene.ridges.flatMap((ridge) => straightRun(scene, ridge));
  const pairs = scene.ridges.slice(1).flatMap((near, at) => {
    const far = scene.ridges[at] as RidgeLine;
    const repeated = repeats(scene, far, near);
    return repeated.length > 0 ? repeated : stacks(scene, far, near);
  });
  return [...straight, ...pairs];
}

/** What is known of each ridge, far to near. */
export function ridgeFacts(scene: ShapeScene): RidgeFacts[] {
  return scene.ridges.map((ridge) => {
    const { xs, slope } = lineThrough(ridge);
    return {
      name: ridge.name,
      span: xs.length / scene.columns,
      slopeDeg: (Math.atan(slope) * 180) / Math.PI,
      peaks: peakColumns(scene, ridge).map((x) => scene.place(x + 0.5, ridge.heights[x] as number)),
      points: pointsAlong(ridge, scene),
    };
  });
}
