/**
 * How far one figure of one plane moved between two photographs of a painting, and how far that may be off.
 *
 * In the flow: two documents -> [plane-change] -> moves-made, changes. Another exposure or lamp moves all planes
 * together; what they share is found from the other planes and taken out, so that a relation inside the picture is left
 * (noise.ts, `RELATION`). A shared move larger than the grades allow is taken for paint. Pure.
 */
import { hueDifferenceDeg } from '../../colour/difference.ts';
import type { GapKey, MeasureDocument, PlaneMeasures } from '../../contract/measures.ts';
import { GRADE_SIGMA, HALF_90, RELATION } from '../../doubt/intervals.ts';
import { type Grade, Noise, type NoisyKey } from '../../readings/noise.ts';
import { isLightness } from './figure-of.ts';

export interface PlaneChange {
  readonly from: number;
  /** Later − earlier, in the light of the earlier photograph. */
  readonly by: number;
  /** Standard deviation of `by`. */
  readonly sigma: number;
}

/** Figures whose deviation is of a relation inside one picture already: there is nothing shared to take out. */
const ALONE: readonly GapKey[] = ['airDistance', 'airShare'];
/** Steps in which the shared move is looked for, a deviation of what the grades allow. */
const STEPS = 24;
/** How many deviations of it are looked at. */
const REACH = 2.5;
/** A plane this many of its own deviations away from the shared move was painted and has no say. */
const PAINTED = 3;

type Picture = Pick<MeasureDocument, 'planes' | 'capture'>;

interface Moved {
  readonly from: number;
  readonly by: number;
  /** The part of the deviation that this plane does not share. */
  readonly own: number;
  /** How much a shared change of light of one unit moves this figure. */
  readonly pull: number;
}

const gradeOf = ({ capture }: Picture): Grade => capture.grade ?? 'C';

function ownDeviation(plane: PlaneMeasures, key: GapKey, grade: Grade): number | null {
  const interval = plane.doubt[key];
  if (!interval) return null;
  const whole = (interval[1] - interval[0]) / 2 / HALF_90;
  if (ALONE.includes(key) || key === 'hue' || key === 'share' || key === 'munsellValue') return whole;
  return new Noise(grade).own(plane, key as NoisyKey); // the others of GAP_KEYS
}

/** Light times a factor moves L* + 16 by its cube root's factor: dark planes less than light ones. */
function pullOf(plane: PlaneMeasures, key: GapKey): number {
  if (key === 'spread') return (plane.spread ?? 0) / 66;
  return isLightness(key) ? ((plane[key] ?? 50) + 16) / 66 : 1;
}

function movedOf(earlier: Picture, later: Picture, name: string, key: GapKey): Moved | null {
  const was = earlier.planes.find((plane) => plane.name === name)?.painting;
  const is = later.planes.find((plane) => plane.name === name)?.painting;
  const [from, to] = [was?.[key] ?? null, is?.[key] ?? null];
  if (!was || !is || from === null || to === null) return null;
  const [p, q] = [ownDeviation(was, key, gradeOf(earlier)), ownDeviation(is, key, gradeOf(later))];
  if (p === null || q === null) return null;
  const by = key === 'hue' ? hueDifferenceDeg(to, from) : to - from;
  return { from, by, own: Math.hypot(p, q), pull: pullOf(was, key) };
}

/** Deviation of what all planes of both photographs share. */
function sharedDeviation(earlier: Picture, later: Picture, key: GapKey): number {
  const of = (picture: Picture) => {
    const { L, ab } = GRADE_SIGMA[gradeOf(picture)];
    return (isLightness(key) ? L : ab) * Math.sqrt(1 - RELATION ** 2 / 2);
  };
  return Math.hypot(of(earlier), of(later));
}

interface Shared {
  readonly by: number;
  readonly sigma: number;
}

/** What the other planes moved by together: the likeliest, given what the grades allow; painted ones have no say. */
function sharedMove(others: readonly Moved[], allowed: number): Shared {
  const worthOf = (by: number) => {
    const apart = others.map(({ by: moved, own, pull }) =>
      Math.min(PAINTED, Math.abs(moved - by * pull) / own),
    );
    return (by / allowed) ** 2 + apart.reduce((sum, away) => sum + away ** 2, 0);
  };
  let best = 0;
  const reach = Math.round(REACH * STEPS);
  for (let at = -reach; at <= reach; at++) {
    const by = (at * allowed) / STEPS;
    if (worthOf(by) < worthOf(best)) best = by;
  }
  const heard = others.filter(({ by, own, pull }) => Math.abs(by - best * pull) < PAINTED * own);
  const sure = heard.reduce((sum, { own, pull }) => sum + (pull / own) ** 2, 1 / allowed ** 2);
  return { by: best, sigma: 1 / Math.sqrt(sure) };
}

/** Null where either picture lacks the plane, its figure or its doubt. */
export function planeChange(
  earlier: Picture,
  later: Picture,
  plane: string,
  key: GapKey,
): PlaneChange | null {
  const own = movedOf(earlier, later, plane, key);
  if (!own) return null;
  if (ALONE.includes(key) || key === 'hue') return { from: own.from, by: own.by, sigma: own.own };
  const others = earlier.planes.flatMap(({ name }) => {
    return name === plane ? [] : (movedOf(earlier, later, name, key) ?? []);
  });
  // Detail and edges go with how sharp a photo is; nothing says how far, so the others alone tell.
  const allowed =
    key === 'detail' || key === 'edge' ? Math.max(own.from, own.own) : sharedDeviation(earlier, later, key);
  const shared = sharedMove(others, allowed);
  return {
    from: own.from,
    by: own.by - shared.by * own.pull,
    sigma: Math.hypot(own.own, shared.sigma * own.pull),
  };
}
