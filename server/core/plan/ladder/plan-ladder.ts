/**
 * A planned ladder: from the measured planes of one photograph, a plan that goes back into the air.
 *
 * In the flow: picture-to-plan + wishes -> [plan-ladder] -> the `plan` of a setup, which paintings are held against. Pure.
 * Each plane's own pixels are taken out of the photograph's air and seen through the planned one (Koschmieder 1924);
 * nothing is added as a constant unless a person does so by hand.
 */
import type { PlannedPlane } from '../../contract/setup.ts';
import { Problem } from '../../problem.ts';
import { type Airs, plannedThrough } from './amounts.ts';
import { type Group, groupPlanes, type Member } from './group-planes.ts';
import type { PictureToPlan, PlaneToPlan } from './picture-to-plan.ts';
import { groupName, type Planned, planNotes } from './plan-notes.ts';
import { plannedAir } from './planned-air.ts';
import { rungOf } from './rungs.ts';
import { type SceneEffects, sceneEffects } from './scene-conditions.ts';
import { transmissionsOf } from './transmissions.ts';
import { type LadderWishes, type PlaneHandle, USUAL_WISHES } from './wishes.ts';

export interface LadderPlan {
  /** One rung a measured plane, far to near, under its own name; planes grouped into one share their figures. */
  readonly ladder: PlannedPlane[];
  /** Whole sentences: what was decided and why, and what does not recede. */
  readonly notes: string[];
}

function checkWishes({ strength, handles }: LadderWishes): void {
  if (!(Number.isFinite(strength) && strength >= 0)) {
    throw new Problem('setup-invalid', `The strength of the planned air is 0 or more, not ${strength}.`);
  }
  for (const [name, handle] of Object.entries(handles)) {
    const odd = Object.values(handle).find((figure) => !Number.isFinite(figure));
    if (odd !== undefined)
      throw new Problem('setup-invalid', `What is set by hand for '${name}' is a number, not ${odd}.`);
  }
}

function membersOf(planes: readonly PlaneToPlan[], through: readonly number[]): Member[] {
  let land = 0;
  return planes.map((plane) => ({
    plane,
    through: plane.kind === 'sky' ? null : (through[land++] as number),
  }));
}

function grouped(
  members: readonly Member[],
  { count }: LadderWishes,
  { mostLand }: SceneEffects,
): { groups: Group[]; notes: string[] } {
  const skies = members.filter(({ through }) => through === null).length;
  const usual = mostLand === null ? members.length : Math.min(members.length, skies + mostLand);
  const groups = groupPlanes(members, Math.max(1, count ?? usual));
  const joined = groups.filter((group) => group.members.length > 1);
  const notes = joined.map(
    (group) => `The ${groupName(group.members.map(({ plane }) => plane.name))} are planned as one plane.`,
  );
  if (count !== null && groups.length !== count) {
    const why =
      groups.length < count
        ? 'The photograph has no more: divide a plane, or add one.'
        : 'Sky and land are never planned as one.';
    notes.push(`Planes in the plan: ${groups.length} instead of ${count}. ${why}`);
  }
  return { groups, notes };
}

function handleOf(group: Group, handles: LadderWishes['handles']): PlaneHandle | null {
  const found = group.members.find(({ plane }) => Object.hasOwn(handles, plane.name));
  return (found && handles[found.plane.name]) ?? null;
}

function plannedGroups(
  groups: readonly Group[],
  airs: Airs,
  wishes: LadderWishes,
  effects: SceneEffects,
): Planned[] {
  const land = groups.filter(({ isSky }) => !isSky);
  const through = plannedThrough(land, airs, {
    strength: wishes.strength,
    airFactor: effects.airFactor,
    darksClimb: effects.darksMayTurn === null,
  });
  return groups.map((group) => {
    const handle = handleOf(group, wishes.handles);
    return {
      name: groupName(group.members.map(({ plane }) => plane.name)),
      isSky: group.isSky,
      rung: rungOf(group, through[land.indexOf(group)] ?? 1, airs, handle),
      handle,
    };
  });
}

/** The rungs as a setup takes them: one a plane, in its order. */
function ladderOf(groups: readonly Group[], planned: readonly Planned[]): PlannedPlane[] {
  return groups.flatMap(({ members }, at) => {
    const { dark, mid, light, chroma, strong, warmCool, airDistance } = (planned[at] as Planned).rung;
    return members.map(({ plane: { name } }) => ({
      name,
      dark,
      mid,
      light,
      chroma,
      strong,
      warmCool,
      airDistance,
    }));
  });
}

/** What the plan leaves out, and wishes that meet nothing. */
function leftOut(picture: PictureToPlan, { handles }: LadderWishes): string[] {
  const names = new Set(picture.planes.map(({ name }) => name));
  return [
    ...picture.planes
      .filter(({ measures }) => measures.mid === null)
      .map(({ name, measures }) => `The plan leaves out the ${name}. ${measures.notes[0] ?? ''}`.trim()),
    ...Object.keys(handles)
      .filter((name) => !names.has(name))
      .map((name) => `No plane is called '${name}', so what was set by hand for it changes nothing.`),
  ];
}

/**
 * Plans a ladder. At strength 0 with the photograph's own air it is the photograph, plane by plane.
 * @throws Problem `setup-invalid` for a strength under 0 or a number that is none.
 */
export function planLadder(picture: PictureToPlan, wishes: Partial<LadderWishes> = {}): LadderPlan {
  const all: LadderWishes = { ...USUAL_WISHES, ...wishes };
  checkWishes(all);
  const planes = picture.planes.filter(({ measures }) => measures.mid !== null);
  if (planes.length === 0) {
    return {
      ladder: [],
      notes: [
        'No ladder is planned: no plane of the photograph could be measured. Outline its planes first.',
        ...leftOut(picture, all),
      ],
    };
  }
  const effects = sceneEffects(all.conditions);
  const land = planes.filter(({ kind }) => kind !== 'sky');
  const { air, notes: ofAir } = plannedAir(picture.air, all);
  const { through, notes: ofAmounts } = transmissionsOf(land, picture.air);
  const { groups, notes: ofGroups } = grouped(membersOf(planes, through), all, effects);
  const planned = plannedGroups(groups, { photo: picture.air, planned: air }, all, effects);
  return {
    ladder: ladderOf(groups, planned),
    notes: [
      ...ofAir,
      ...ofAmounts,
      ...effects.notes,
      ...ofGroups,
      ...planNotes(planned, air, effects),
      ...leftOut(picture, all),
    ],
  };
}
