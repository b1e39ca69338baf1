/**
 * How much of each plane's own light comes through the photograph's air, against the nearest plane.
 *
 * In the flow: measured planes + air -> [transmissions] -> planned ladder. Pure. Three signs fall in proportion to
 * the transmission (Koschmieder 1924, I/A = t J/A + 1 − t): 1 − airShare (dark channel, He, Sun & Tang 2009), the
 * contrast of the darks to the air, and the difference between the channels of I/A. Each rests on the two planes being
 * of like stuff, so they are held against one another; none of them can tell pale rock from haze.
 */
import { luminanceFromLightness, rgbFromLab } from '../../colour/lab.ts';
import type { LabColour } from '../../contract/setup.ts';
import { percentiles } from '../../image/percentiles.ts';
import { shortName } from '../../readings/words.ts';
import { say } from '../../say/say.ts';
import { LEAST_THROUGH } from '../air/through-air.ts';
import type { PlaneToPlan } from './picture-to-plan.ts';
import { risingRow } from './pool-adjacent.ts';

/** A sign that is weaker than this in the nearest plane says nothing about the others. */
const LEAST_SIGN = 0.15;
const DARKEST_AIR = 0.02;
const TINT_RANGE = { least: 0, most: 8 };
/** Signs that differ by more than this, in ln t, contradict one another. */
const MOST_DISAGREEMENT = 0.5;
/** Weight of a plane whose signs contradict one another, against one whose agree. */
const DOUBTFUL_WEIGHT = 0.25;
/** ln t of the farthest plane under which the photograph shows hardly any air. */
const HARDLY_ANY = 0.1;

interface Signs {
  readonly share: number | null;
  readonly darks: number | null;
  readonly tint: number | null;
}

/** Difference between the channels of I/A, 90th percentile over the plane. */
function tintOf(linear: Float32Array, air: LabColour): number {
  const [red, green, blue] = rgbFromLab(air).map((channel) => Math.max(channel, DARKEST_AIR)) as [
    number,
    number,
    number,
  ];
  const tints = new Float32Array(linear.length / 3);
  for (let cell = 0, at = 0; cell < tints.length; cell++, at += 3) {
    const r = (linear[at] as number) / red;
    const g = (linear[at + 1] as number) / green;
    const b = (linear[at + 2] as number) / blue;
    tints[cell] = Math.max(r, g, b) - Math.min(r, g, b);
  }
  return percentiles(tints, [0.9], TINT_RANGE)[0] as number;
}

function signsOf({ measures, linear }: PlaneToPlan, air: LabColour): Signs {
  const skyLight = Math.max(luminanceFromLightness(air.L), DARKEST_AIR);
  const { airShare, dark } = measures;
  return {
    share: airShare === null ? null : 1 - airShare,
    darks: dark === null ? null : 1 - luminanceFromLightness(dark) / skyLight,
    tint: linear.length === 0 ? null : tintOf(linear, air),
  };
}

/** −ln t by one sign; null where it says nothing. More light than the nearest plane's counts as no air. */
function depthBy(far: number | null, near: number | null): number | null {
  if (far === null || near === null || near < LEAST_SIGN) return null;
  return -Math.log(Math.min(1, Math.max(LEAST_THROUGH, far / near)));
}

interface Seen {
  /** −ln t, 0 or more; null where nothing tells. */
  readonly depth: number | null;
  /** Whether the signs agree. */
  readonly sure: boolean;
}

function seen(far: PlaneToPlan, near: PlaneToPlan, air: LabColour): Seen {
  const [there, here] = [signsOf(far, air), signsOf(near, air)];
  const share = depthBy(there.share, here.share);
  const others = [depthBy(there.darks, here.darks), depthBy(there.tint, here.tint)];
  const all = [share, ...others].filter((depth) => depth !== null);
  if (all.length === 0) return { depth: null, sure: false };
  const sure = all.length > 1 && Math.max(...all) - Math.min(...all) <= MOST_DISAGREEMENT;
  const mean = all.reduce((sum, depth) => sum + depth, 0) / all.length;
  // The dark channel speaks for itself between planes of one kind; else it is one sign among three.
  return { depth: share !== null && far.kind === near.kind ? share : mean, sure };
}

export interface Transmissions {
  /** t of each plane, far to near, 0.1 to 1; the nearest is 1 and none is smaller than a farther one's. */
  readonly through: number[];
  readonly notes: string[];
}

function doubts(land: readonly PlaneToPlan[], depths: readonly Seen[], deepest: number): string[] {
  const unsure = land
    .filter((_, at) => !(depths[at] as Seen).sure)
    .map(({ name }, at) => say`the ${shortName(name, at)}`);
  if (deepest < HARDLY_ANY && land.length > 0) {
    return [
      say`The photograph shows hardly any air between its planes, so the plan goes by their order. Move a plane if it stands elsewhere.`,
    ];
  }
  return unsure.length === 0
    ? []
    : [say`The photograph doesn't tell for sure how much air lies before ${unsure.join(', ')}.`];
}

/** @param land measured planes that are not sky, far to near. @param air null = no air was seen, so all are 1. */
export function transmissionsOf(land: readonly PlaneToPlan[], air: LabColour | null): Transmissions {
  const near = land.at(-1);
  if (!near || !air) return { through: land.map(() => 1), notes: [] };
  const others = land.slice(0, -1);
  const depths = others.map((far) => seen(far, near, air));
  // Near to far, so that the row rises. Where nothing tells, a plane takes the air of the one before it.
  const order = others.map((_, at) => others.length - 1 - at);
  const telling = order.filter((at) => (depths[at] as Seen).depth !== null);
  const rising = risingRow(
    telling.map((at) => (depths[at] as Seen).depth as number),
    telling.map((at) => ((depths[at] as Seen).sure ? 1 : DOUBTFUL_WEIGHT)),
  );
  const through = land.map(() => 1);
  let depth = 0;
  for (const at of order) {
    const place = telling.indexOf(at);
    if (place >= 0) depth = rising[place] as number;
    through[at] = Math.exp(-depth);
  }
  return { through, notes: doubts(others, depths, depth) };
}
