/**
 * What is said at once about a planned ladder: planes that merge, darks that turn back, colours no screen shows.
 *
 * In the flow: planned rungs -> [plan-notes] -> notes of the plan. Pure. Limits: those of readings V2 and V5 (common
 * practice, no source: half a step is the smallest difference that a painter mixes on purpose).
 */
import { difference1976 } from '../../colour/difference.ts';
import { luminanceFromLightness } from '../../colour/lab.ts';
import type { PlaneHandle } from '../../contract/plan-wishes.ts';
import type { LabColour } from '../../contract/setup.ts';
import { amountInWords, shortName } from '../../readings/words.ts';
import { say } from '../../say/say.ts';
import type { Rung } from './rungs.ts';
import type { SceneEffects } from './scene-conditions.ts';

const MERGED_L = 4;
const MERGED_DE = 7;
const TURNED_L = 5;
/** Share of a plane that may be bent into what a screen shows without a word. */
const WORTH_SAYING = 0.02;

/** A group of planes with its planned figures, far to near. */
export interface Planned {
  readonly name: string;
  readonly isSky: boolean;
  /** False for snow and water: their darks ask nothing of the planes behind. */
  readonly setsDarks: boolean;
  readonly rung: Rung;
  /** Null = nothing was done by hand. */
  readonly handle: PlaneHandle | null;
  /** t in the plan; counts for nothing with the sky. */
  readonly through: number;
}

function colourOf({ mid, a, b }: Rung): LabColour {
  return { L: mid, a, b };
}

function merged(far: Planned, near: Planned, effects: SceneEffects): string[] {
  const apartL = Math.abs(far.rung.mid - near.rung.mid);
  if (apartL >= MERGED_L || difference1976(colourOf(far.rung), colourOf(near.rung)) >= MERGED_DE) return [];
  return [
    effects.planesMayMerge
      ? say`The ${far.name} and the ${near.name} come out with almost the same value and colour. Kept: ${effects.planesMayMerge}`
      : say`The ${far.name} and the ${near.name} come out with almost the same value and colour: group them, or move one by half a step.`,
  ];
}

function touchesDarks(handle: PlaneHandle | null): boolean {
  return handle !== null && (handle.dark !== undefined || (handle.mid ?? 0) !== 0);
}

function turned(far: Planned, near: Planned, effects: SceneEffects): string[] {
  const back = near.rung.dark - far.rung.dark;
  if (back <= TURNED_L || !near.setsDarks) return [];
  const amount = amountInWords(back, 'A') ?? '';
  const stands = say`The darks of the ${far.name} are about ${amount} darker than those of the ${near.name} before it.`;
  if (touchesDarks(far.handle) || touchesDarks(near.handle)) return [say`${stands} Kept as you set it.`];
  if (effects.darksMayTurn) return [say`${stands} Kept: ${effects.darksMayTurn}`];
  return [say`${stands} Lift them, group the two, or say why it is so.`];
}

/** A dark air can't lift darks: they sink into it. */
function darkAir(land: readonly Planned[], air: LabColour): string[] {
  const lightest = land.reduce<Planned | null>(
    (best, plane) => (plane.rung.dark > (best?.rung.dark ?? -1) ? plane : best),
    null,
  );
  return lightest && luminanceFromLightness(air.L) < luminanceFromLightness(lightest.rung.dark)
    ? [
        say`The planned air (L* ${air.L.toFixed(0)}) is darker than the darks of the ${lightest.name}, so more of it lowers them instead of lifting them.`,
      ]
    : [];
}

function beyondScreens({ name, rung }: Planned): string[] {
  return rung.outside > WORTH_SAYING
    ? [
        say`In the ${name}, ${Math.round(rung.outside * 100)} % would lie outside what a screen shows; it is planned as near to that as can be.`,
      ]
    : [];
}

/** One name for planes that are planned as one. */
export function groupName(names: readonly string[]): string {
  return names.map((name, at) => shortName(name, at)).reduce((far, near) => say`${far} with the ${near}`);
}

/** @param planned far to near. */
export function planNotes(planned: readonly Planned[], air: LabColour, effects: SceneEffects): string[] {
  const land = planned.filter(({ isSky }) => !isSky);
  const pairs = (planes: readonly Planned[]): [Planned, Planned][] =>
    planes.slice(1).map((near, at) => [planes[at] as Planned, near]);
  return [
    ...pairs(planned).flatMap(([far, near]) => merged(far, near, effects)),
    ...pairs(land).flatMap(([far, near]) => turned(far, near, effects)),
    ...darkAir(land, air),
    ...planned.flatMap(beyondScreens),
  ];
}
