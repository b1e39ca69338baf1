/**
 * A planned ladder: from the measured planes of one photograph, a plan that goes back into the air.
 *
 * In the flow: picture-to-plan + wishes -> [plan-ladder] -> the `plan` of a setup, which paintings are held against. Pure.
 * Each plane's own pixels are taken out of the photograph's air and seen through the planned one (Koschmieder 1924);
 * nothing is added as a constant unless a person does so by hand.
 */
import type { PlaneHandle } from '../../contract/plan-wishes.ts';
import type { LabColour, PlannedPlane } from '../../contract/setup.ts';
import { Problem } from '../../problem.ts';
import { say } from '../../say/say.ts';
import type { AirChange } from '../air/through-air.ts';
import { type Airs, plannedThrough } from './amounts.ts';
import { type Group, groupPlanes, type Member, setsDarks } from './group-planes.ts';
import type { PictureToPlan, PlaneToPlan } from './picture-to-plan.ts';
import { groupName, type Planned, planNotes } from './plan-notes.ts';
import { plannedAir } from './planned-air.ts';
import { changeOf, type Rung, rungOf } from './rungs.ts';
import { type SceneEffects, sceneEffects } from './scene-conditions.ts';
import { transmissionsOf } from './transmissions.ts';
import { type LadderWishes, USUAL_WISHES } from './wishes.ts';

export interface LadderPlan {
  /** One rung a measured plane, far to near, under its own name; planes grouped into one share their figures. */
  readonly ladder: PlannedPlane[];
  /** Whole sentences: what was decided and why, and what does not recede. */
  readonly notes: string[];
  /** Those of them that say what does not recede, or no screen shows. */
  readonly amiss: string[];
  /** The air that is planned with. */
  readonly air: LabColour | null;
  /** Which rungs are planned as one plane: the group's number, in the ladder's order. */
  readonly together: number[];
  /** For drawing, in the ladder's order. */
  readonly colours: Rung['colours'][];
  /** What the plan does to the light of each rung's plane before anything done by hand; in the ladder's order. */
  readonly changes: PlannedChange[];
}

export interface PlannedChange {
  readonly air: AirChange;
  /** Planned t over the photograph's, above 0; 1 for the sky. */
  readonly through: number;
}

function checkWishes({ strength, handles }: LadderWishes): void {
  if (!(Number.isFinite(strength) && strength >= 0)) {
    throw new Problem('setup-invalid', say`The strength of the planned air is 0 or more, not ${strength}.`);
  }
  for (const [name, handle] of Object.entries(handles)) {
    const odd = Object.values(handle).find((figure) => !Number.isFinite(figure));
    if (odd !== undefined)
      throw new Problem('setup-invalid', say`What is set by hand for '${name}' is a number, not ${odd}.`);
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
    (group) => say`The ${groupName(group.members.map(({ plane }) => plane.name))} are planned as one plane.`,
  );
  if (count !== null && groups.length !== count) {
    const why =
      groups.length < count
        ? say`The photograph has no more: divide a plane, or add one.`
        : say`Sky and land are never planned as one.`;
    notes.push(say`Planes in the plan: ${groups.length} instead of ${count}. ${why}`);
  }
  return { groups, notes };
}

/** What a handle of the plane is kept under. */
function keyOf({ key, name }: PlaneToPlan): string {
  return key ?? name;
}

function handleOf(group: Group, handles: LadderWishes['handles']): PlaneHandle | null {
  const found = group.members.find(({ plane }) => Object.hasOwn(handles, keyOf(plane)));
  return (found && handles[keyOf(found.plane)]) ?? null;
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
    const t = through[land.indexOf(group)] ?? 1;
    return {
      name: groupName(group.members.map(({ plane }) => plane.name)),
      isSky: group.isSky,
      setsDarks: setsDarks(group),
      rung: rungOf(group, t, airs, handle),
      handle,
      through: t,
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

/** What happens to the light of each plane, in the ladder's order. */
function changesOf(groups: readonly Group[], planned: readonly Planned[], airs: Airs): PlannedChange[] {
  return groups.flatMap(({ members }, at) => {
    const { through } = planned[at] as Planned;
    return members.map((member) => ({
      air: changeOf(member, through, airs),
      through: member.through === null ? 1 : through / (airs.photo ? member.through : 1),
    }));
  });
}

/** What the plan leaves out, and wishes that meet nothing. */
function leftOut(picture: PictureToPlan, { handles }: LadderWishes): string[] {
  const keys = new Set(picture.planes.map(keyOf));
  return [
    ...picture.planes
      .filter(({ measures }) => measures.mid === null)
      .map(({ name, measures }) =>
        `${say`The plan leaves out the ${name}.`} ${measures.notes[0] ?? ''}`.trim(),
      ),
    ...Object.keys(handles)
      .filter((key) => !keys.has(key))
      .map((key) => say`No plane is called '${key}', so what was set by hand for it changes nothing.`),
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
      ...{ ladder: [], changes: [], amiss: [], air: picture.air, together: [], colours: [] },
      notes: [
        say`No ladder is planned: no plane of the photograph could be measured. Outline its planes first.`,
        ...leftOut(picture, all),
      ],
    };
  }
  const effects = sceneEffects(all.conditions);
  const land = planes.filter(({ kind }) => kind !== 'sky');
  const { air, notes: ofAir, amiss: notShown } = plannedAir(picture.air, all);
  const { through, notes: ofAmounts } = transmissionsOf(land, picture.air);
  const { groups, notes: ofGroups } = grouped(membersOf(planes, through), all, effects);
  const airs = { photo: picture.air, planned: air };
  const planned = plannedGroups(groups, airs, all, effects);
  const amiss = [...notShown, ...planNotes(planned, air, effects)];
  return {
    ladder: ladderOf(groups, planned),
    changes: changesOf(groups, planned, airs),
    ...{ amiss, air, together: groups.flatMap(({ members }, at) => members.map(() => at)) },
    colours: groups.flatMap(({ members }, at) => members.map(() => (planned[at] as Planned).rung.colours)),
    notes: [...ofAir, ...ofAmounts, ...effects.notes, ...ofGroups, ...amiss, ...leftOut(picture, all)],
  };
}
