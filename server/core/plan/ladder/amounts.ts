/**
 * How much air a plan puts before each plane.
 *
 * In the flow: groups + planned air + strength -> [amounts] -> rungs. Pure. In depths (−ln t, which add up along the way:
 * Koschmieder 1924) at strength s: planned = photograph's + the larger of s · 0.22 · place (another fifth of its own
 * light for every plane, counted from the nearest), and min(1, s) · what its darks need to be no darker than those of
 * the plane before it that is neither snow nor water (at most half its light). Never less than that of a nearer plane. The fifth and the half are our
 * own choice; that darks climb from plane to plane is common practice, no source.
 */
import { luminanceFromLightness } from '../../colour/lab.ts';
import type { LabColour } from '../../contract/setup.ts';
import { LEAST_THROUGH } from '../air/through-air.ts';
import { type Group, setsDarks } from './group-planes.ts';

/** Depth that the usual air adds from plane to plane: a fifth of the light. */
const USUAL_STEP = -Math.log(0.8);
/** Most depth that is added for the sake of the darks: half the light. */
const MOST_FOR_DARKS = Math.LN2;

export interface Airs {
  /** Null where the photograph's own air is not known. */
  readonly photo: LabColour | null;
  readonly planned: LabColour;
}

interface Own {
  /** −ln t in the photograph. */
  readonly depth: number;
  /** Luminance of the darks as they would be without air, Y/Yn; may lie under 0. */
  readonly darks: number;
}

/** Means over the group's members, weighted by the area they take. */
function ownOf({ members }: Group, photo: LabColour | null): Own {
  const airLight = photo ? luminanceFromLightness(photo.L) : 0;
  let [depth, darks, weight] = [0, 0, 0];
  for (const { plane, through } of members) {
    const { share, dark } = plane.measures;
    const own = Math.max(LEAST_THROUGH, through ?? 1);
    weight += share;
    depth -= share * Math.log(own);
    darks += (share * (luminanceFromLightness(dark ?? 0) - airLight * (1 - own))) / own;
  }
  return { depth: depth / weight, darks: darks / weight };
}

/** Depth at which darks have the light of `wanted`; 0 where no amount of this air would lift them there. */
function depthForDarks(darks: number, wanted: number, airLight: number): number {
  if (airLight <= wanted || darks >= wanted) return 0;
  return -Math.log((airLight - wanted) / (airLight - darks));
}

export interface Wanted {
  readonly strength: number;
  /** Factor on the usual air. */
  readonly airFactor: number;
  /** False where the scene lets darks turn back. */
  readonly darksClimb: boolean;
}

/** @param land groups of land, far to near. @returns planned t of each, above 0 up to 1. */
export function plannedThrough(
  land: readonly Group[],
  airs: Airs,
  { strength, airFactor, darksClimb }: Wanted,
): number[] {
  const airLight = luminanceFromLightness(airs.planned.L);
  const through = land.map(() => 1);
  let [least, darksBefore]: [number, number | null] = [0, null];
  for (let at = land.length - 1; at >= 0; at--) {
    const group = land[at] as Group;
    const own = ownOf(group, airs.photo);
    const usual = strength * airFactor * USUAL_STEP * (land.length - 1 - at);
    const needed = darksBefore !== null && darksClimb ? depthForDarks(own.darks, darksBefore, airLight) : 0;
    const forDarks = Math.min(1, strength) * Math.min(MOST_FOR_DARKS, Math.max(0, needed - own.depth));
    const depth = Math.max(own.depth + Math.max(usual, forDarks), least);
    through[at] = Math.exp(-depth);
    least = depth;
    if (setsDarks(group)) darksBefore = own.darks * Math.exp(-depth) + airLight * (1 - Math.exp(-depth));
  }
  return through;
}
