/**
 * Finds the light in which a plane has its planned figures.
 *
 * In the flow: colours of a plane + planned rung -> [fit-light] -> relight. Pure. The planned air goes first; what is left
 * to the rung (handles, a ladder without its air) is done by a rising curve each for L* and C*ab and a shift along the
 * warm–cool axis, found by steps, since bending into what a screen shows moves the figures again. Own method, no source.
 */
import { alongWarmth } from '../ladder/handle-plane.ts';
import type { PlannedChange } from '../ladder/plan-ladder.ts';
import { FITTED, type LightFigures, lightFigures, type SeenFigures } from './light-figures.ts';
import { type CurvePoint, monotoneCurve } from './monotone-curve.ts';
import {
  CURVE_STEPS,
  litColour,
  MOST_CHROMA,
  MOST_LIGHTNESS,
  NO_AIR_CHANGE,
  type PlaneLight,
} from './plane-light.ts';

/** Cos and sin of the warmest hue, 50°, as in the warm–cool kernel. */
const WARMEST = [Math.cos((50 * Math.PI) / 180), Math.sin((50 * Math.PI) / 180)] as const;
const MOST_TURNS = 12;
/** Part of what is missing that each turn makes up for: chroma and warmth can pull on one another. */
const STEP = 0.65;
/** Near enough, in L* and C*. */
const NEAR = 0.05;
/** Two figures nearer than this can't be moved apart. */
const APART = 1;
const MOST_SHIFT = 90;
/** No curve is steeper than this beyond the figures. */
const STEEPEST = 2;

/** Colours of a plane within its rim, interleaved linear RGB, and the calm picture at the same places. */
export interface PlaneCells {
  readonly linear: Float32Array;
  readonly calm: Float32Array;
}

export interface LitPart {
  readonly cells: PlaneCells;
  /** What the plan does to the plane's air; null where only the figures are known. */
  readonly change: PlannedChange | null;
}

interface OwnPart extends LitPart {
  readonly detail: number;
  readonly air: PlaneLight['air'];
}

interface Knots {
  dark: number;
  mid: number;
  light: number;
  chroma: number;
  strong: number;
  along: number;
}

/** The L* curve from where the figures are to where they go. */
function lightnessPoints(from: LightFigures, to: Knots): CurvePoint[] {
  const points: CurvePoint[] = [[from.mid, to.mid]];
  let [below, above] = [1, 1];
  if (from.mid - from.dark >= APART) {
    points.unshift([from.dark, Math.min(to.dark, to.mid)]);
    below = Math.min(STEEPEST, Math.max(0, to.mid - to.dark) / (from.mid - from.dark));
  }
  if (from.light - from.mid >= APART) {
    points.push([from.light, Math.max(to.light, to.mid)]);
    above = Math.min(STEEPEST, Math.max(0, to.light - to.mid) / (from.light - from.mid));
  }
  const [first, last] = [points[0] as CurvePoint, points.at(-1) as CurvePoint];
  if (first[0] > NEAR) points.unshift([0, Math.max(0, first[1] - below * first[0])]);
  if (last[0] < 100 - NEAR) points.push([100, Math.min(100, last[1] + above * (100 - last[0]))]);
  return points;
}

function chromaPoints(from: LightFigures, to: Knots): CurvePoint[] {
  const points: CurvePoint[] = [[0, 0]];
  if (from.chroma >= APART && from.strong - from.chroma >= APART) {
    points.push([from.chroma, Math.min(to.chroma, to.strong)]);
  }
  if (from.strong < APART) return [...points, [MOST_CHROMA, MOST_CHROMA]];
  points.push([from.strong, to.strong]);
  return [...points, [MOST_CHROMA, (to.strong / from.strong) * MOST_CHROMA]];
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** Colours of a plane's cells in a light, written from place `to` on. */
function lightCells({ linear, calm }: PlaneCells, light: PlaneLight, into: Float32Array, to: number): void {
  const [own, seen] = [new Float64Array(3), new Float64Array(3)];
  for (let at = 0; at < linear.length; at += 3) {
    for (let channel = 0; channel < 3; channel++) {
      const level = calm[at + channel] as number;
      own[channel] = level + light.detail * ((linear[at + channel] as number) - level);
    }
    litColour(light, own, 0, seen);
    into.set(seen, to + at);
  }
}

function litCells(parts: readonly LitPart[], lights: readonly PlaneLight[]): Float32Array {
  const lit = new Float32Array(parts.reduce((sum, { cells }) => sum + cells.linear.length, 0));
  let to = 0;
  parts.forEach(({ cells }, at) => {
    lightCells(cells, lights[at] as PlaneLight, lit, to);
    to += cells.linear.length;
  });
  return lit;
}

/** One curve for all parts, each with its own air. */
function lightsWith(parts: readonly OwnPart[], from: LightFigures, to: Knots): PlaneLight[] {
  const lightness = monotoneCurve(lightnessPoints(from, to), MOST_LIGHTNESS, CURVE_STEPS);
  const chroma = monotoneCurve(chromaPoints(from, to), MOST_CHROMA, CURVE_STEPS);
  const shift = [to.along * WARMEST[0], to.along * WARMEST[1]] as const;
  return parts.map(({ detail, air }) => ({ detail, air, lightness, chroma, shift }));
}

/** One step towards the aim. */
function nearer(to: Knots, aim: LightFigures, seen: SeenFigures): Knots {
  const mid = within(to.mid + STEP * (aim.mid - seen.mid), 0, 100);
  const along = alongWarmth(seen.a, seen.b, aim.warmCool - seen.warmCool);
  const strong = within(to.strong + STEP * (aim.strong - seen.strong), 0, MOST_CHROMA);
  return {
    mid,
    dark: within(to.dark + STEP * (aim.dark - seen.dark), 0, mid),
    light: within(to.light + STEP * (aim.light - seen.light), mid, 100),
    strong,
    chroma: within(to.chroma + STEP * (aim.chroma - seen.chroma), 0, strong),
    along: within(to.along + STEP * along, -MOST_SHIFT, MOST_SHIFT),
  };
}

function missing(aim: LightFigures, seen: LightFigures): number {
  return FITTED.reduce((sum, key) => sum + Math.max(0, Math.abs(aim[key] - seen[key]) - NEAR), 0);
}

/** Detail that a plan keeps: as the air takes from it, else as the spread shrinks. Own choice, no source. */
function detailKept(change: PlannedChange | null, own: LightFigures, aim: LightFigures): number {
  if (change) return Math.min(1, change.through);
  const [spread, planned] = [own.light - own.dark, aim.light - aim.dark];
  return spread > APART ? within(planned / spread, 0, 1) : 1;
}

/**
 * The light of each part, so that all together have the figures aimed at. A plan that changes nothing gives lights that
 * change nothing.
 * @param parts one plane, or the planes that are planned as one. @param aim the figures that they shall have together.
 */
export function fitLights(parts: readonly LitPart[], aim: LightFigures): PlaneLight[] {
  const own = lightFigures(joined(parts));
  const airs = parts.map(
    (part): OwnPart => ({
      ...part,
      detail: detailKept(part.change, own, aim),
      air: part.change?.air ?? NO_AIR_CHANGE,
    }),
  );
  let best = lightsWith(airs, own, { ...own, along: 0 });
  const from = lightFigures(litCells(parts, best));
  let to: Knots = { ...from, along: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn <= MOST_TURNS; turn++) {
    const lights = lightsWith(airs, from, to);
    const seen = turn === 0 ? from : lightFigures(litCells(parts, lights));
    const left = missing(aim, seen);
    if (left < least) [best, least] = [lights, left];
    if (left === 0) break;
    to = nearer(to, aim, seen);
  }
  return best;
}

function joined(parts: readonly LitPart[]): Float32Array {
  const all = new Float32Array(parts.reduce((sum, { cells }) => sum + cells.linear.length, 0));
  let to = 0;
  for (const { cells } of parts) {
    all.set(cells.linear, to);
    to += cells.linear.length;
  }
  return all;
}
