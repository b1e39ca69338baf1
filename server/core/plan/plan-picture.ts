/**
 * The whole plan of one photograph, in one call: frames, balance, ridges, suggestions, a planned ladder.
 *
 * In the flow: plate + setup -> [plan-picture] -> the plan command. Without a setup the planes are proposed. Pure.
 */
import type { PlannedPlane, Setup } from '../contract/setup.ts';
import type { MeasurablePlate } from '../image/raster.ts';
import { measurePlanes } from '../measure/measure-planes.ts';
import { prepareMeasurable } from '../measure/prepare.ts';
import { proposePlanes } from '../planes/propose/propose.ts';
import { type Crop, proposeCrops } from './crops/propose-crops.ts';
import { pictureToPlan } from './ladder/picture-to-plan.ts';
import { planLadder } from './ladder/plan-ladder.ts';
import { type RidgeFacts, ridgeFacts } from './shapes/ridges.ts';
import { type OutlinedPlane, shapeScene } from './shapes/shape-scene.ts';
import { suggestionsOf } from './shapes/suggest.ts';
import type { Suggestion } from './shapes/suggestion.ts';
import { type Balance, weighPicture } from './weight/balance.ts';

export interface PicturePlan {
  /** The best first. */
  readonly crops: readonly Crop[];
  readonly balance: Balance;
  /** Far to near. */
  readonly ridges: readonly RidgeFacts[];
  /** Suggestions about shapes; muted ones last. */
  readonly readings: readonly Suggestion[];
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
  const why = chosen.note ?? 'The photograph shows no planes behind one another.';
  return { planes: chosen.planes, notes: [`${why} Frames and balance are given all the same.`] };
}

/**
 * @param setup planes as outlined on the photograph, focus, conditions, air; null = planes are proposed.
 * @throws Problem `outline-invalid`, naming the plane.
 */
export function planPicture(plate: MeasurablePlate, setup: Setup | null): PicturePlan {
  const { planes, notes } = planesOf(plate, setup);
  const prepared = prepareMeasurable(plate);
  const measured = measurePlanes(prepared, planes, setup?.air?.reference ?? null);
  const weighed = weighPicture(plate.raster);
  const scene = shapeScene(plate.raster, planes, weighed, setup?.focus ?? null);
  const { crops, notes: cropNotes } = proposeCrops(scene);
  const planned = planLadder(pictureToPlan(prepared, measured, planes), {
    conditions: setup?.conditions ?? [],
  });
  return {
    crops,
    balance: weighed.balance,
    ridges: ridgeFacts(scene),
    readings: suggestionsOf(scene, setup?.meant ?? []),
    ladder: planned.ladder,
    notes: [...notes, ...cropNotes, ...planned.notes],
  };
}
