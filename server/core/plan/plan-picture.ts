/**
 * The whole plan of one photograph, in one call: frames, balance, ridges, suggestions, a planned ladder.
 *
 * In the flow: plate + setup -> [plan-picture] -> the plan command. Without a setup the planes are proposed. Pure.
 */
import type { PlanWishes } from '../contract/plan-wishes.ts';
import type { PlannedPlane, Setup } from '../contract/setup.ts';
import type { MeasurablePlate } from '../image/raster.ts';
import { measurePlanes } from '../measure/measure-planes.ts';
import { prepareMeasurable } from '../measure/prepare.ts';
import { proposePlanes } from '../planes/propose/propose.ts';
import { say } from '../say/say.ts';
import { type Crop, proposeCrops } from './crops/propose-crops.ts';
import { pictureToPlan } from './ladder/picture-to-plan.ts';
import { planLadder } from './ladder/plan-ladder.ts';
import type { LadderWishes } from './ladder/wishes.ts';
import type { OutlinedPlane } from './shapes/shape-scene.ts';
import { type Looked, weighAndLook } from './weigh-and-look.ts';

export interface PicturePlan extends Looked {
  /** The best first. */
  readonly crops: readonly Crop[];
  /** Far to near, one rung a measured plane. */
  readonly ladder: readonly PlannedPlane[];
  /** Whole sentences: what could not be planned, and what the ladder decided. */
  readonly notes: readonly string[];
}

interface Planes {
  readonly planes: readonly OutlinedPlane[];
  readonly notes: readonly string[];
}

function planesOf(plate: MeasurablePlate, setup: Setup | null): Planes {
  if (setup) {
    const planes = setup.planes.map(({ name, kind, reference }) => ({ name, kind, outline: reference }));
    return { planes, notes: [] };
  }
  const { chosen } = proposePlanes(plate.raster);
  if (chosen.planes.length > 1) return { planes: chosen.planes, notes: [] };
  const why = chosen.note ?? say`The photograph shows no planes behind one another.`;
  return { planes: chosen.planes, notes: [say`${why} Frames and balance are given all the same.`] };
}

/** Wishes that were given; what is left out is planned as usual. */
function givenWishes(wishes: PlanWishes): Partial<LadderWishes> {
  return Object.fromEntries(Object.entries(wishes).filter(([, wish]) => wish !== undefined));
}

/**
 * @param setup planes as outlined on the photograph, focus, conditions, air; null = planes are proposed.
 * @param longSidePx of the photograph itself, where it is larger than its plate: pixels left are counted in it.
 * @param wishes of the ladder; those of the setup where none are given.
 * @throws Problem `outline-invalid`, naming the plane.
 */
export function planPicture(
  plate: MeasurablePlate,
  setup: Setup | null,
  longSidePx?: number,
  wishes: PlanWishes = setup?.wishes ?? {},
): PicturePlan {
  const { planes, notes } = planesOf(plate, setup);
  const prepared = prepareMeasurable(plate);
  const measured = measurePlanes(prepared, planes, setup?.air?.reference ?? null);
  const { scene, ...looked } = weighAndLook(plate.raster, {
    planes,
    focus: setup?.focus ?? null,
    meant: setup?.meant ?? [],
  });
  const { crops, notes: cropNotes } = proposeCrops(scene, longSidePx);
  const planned = planLadder(pictureToPlan(prepared, measured, planes), {
    ...givenWishes(wishes),
    conditions: setup?.conditions ?? [],
  });
  return {
    crops,
    ...looked,
    ladder: planned.ladder,
    notes: [...notes, ...cropNotes, ...planned.notes],
  };
}
