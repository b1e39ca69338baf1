/**
 * Planes grouped until there are as many as wished: the neighbours that differ least become one.
 *
 * In the flow: measured planes + transmissions -> [group-planes] -> amounts, rungs. Pure. That planes which a photograph
 * does not separate are grouped is common practice, no source.
 */
import { difference1976 } from '../../colour/difference.ts';
import type { LabColour } from '../../contract/setup.ts';
import type { PlaneToPlan } from './picture-to-plan.ts';

export interface Member {
  readonly plane: PlaneToPlan;
  /** Share of its own light that comes through the photograph's air, 0.1 to 1; null for the sky. */
  readonly through: number | null;
}

/** Planes that are planned as one, far to near. */
export interface Group {
  readonly isSky: boolean;
  readonly members: readonly Member[];
}

/** Whether a nearer plane's darks say how deep darks may be there: snow has none of its own, water mirrors the sky's light. */
export function setsDarks({ members }: Group): boolean {
  return !members.every(({ plane: { kind } }) => kind === 'snow' || kind === 'water');
}

function middleOf({ members }: Group): LabColour {
  const sum = { L: 0, a: 0, b: 0 };
  let weight = 0;
  for (const { plane } of members) {
    const { share, mid, a, b } = plane.measures;
    weight += share;
    sum.L += share * (mid ?? 0);
    sum.a += share * (a ?? 0);
    sum.b += share * (b ?? 0);
  }
  return { L: sum.L / weight, a: sum.a / weight, b: sum.b / weight };
}

/** Place of the farther of the two neighbours that differ least, or −1 where no two may be joined. */
function mostAlike(groups: readonly Group[]): number {
  let [best, least] = [-1, Number.POSITIVE_INFINITY];
  for (let at = 0; at + 1 < groups.length; at++) {
    const [far, near] = [groups[at] as Group, groups[at + 1] as Group];
    if (far.isSky !== near.isSky) continue;
    const apart = difference1976(middleOf(far), middleOf(near));
    if (apart < least) [best, least] = [at, apart];
  }
  return best;
}

/** @param count planes wished for, sky included. Sky never joins land. */
export function groupPlanes(members: readonly Member[], count: number): Group[] {
  const groups: Group[] = members.map((member) => ({ isSky: member.through === null, members: [member] }));
  while (groups.length > count) {
    const at = mostAlike(groups);
    if (at < 0) break;
    const [far, near] = [groups[at] as Group, groups[at + 1] as Group];
    groups.splice(at, 2, { isSky: far.isSky, members: [...far.members, ...near.members] });
  }
  return groups;
}
