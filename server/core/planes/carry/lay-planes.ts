/**
 * Planes laid on a painting as they are placed, before any edge is looked at: quick enough to follow a hand.
 *
 * In the flow: outlines, placement, moves -> [lay-planes] -> screen; and the end of carry-planes. All in 0..1 of the
 * squared pictures. Pure.
 */
import type { Outline } from '../../contract/setup.ts';
import { carriedRing, PAINTING_BOX } from './carried-rings.ts';
import { checkPlacement, type Placement, type PlaneMove } from './placement.ts';
import { areaOf, cutToBox, outlineOf, type RingPoint, withFewerPoints, withoutLoops } from './ring.ts';
import { inPieces, notInPainting } from './why.ts';

export interface PlaneToCarry {
  readonly id: string;
  readonly name: string;
  /** 0..1 of the first picture, squared. */
  readonly outline: Outline;
}

export interface CarriedPlane {
  readonly id: string;
  /** 0..1 of the squared painting. */
  readonly outline: Outline;
  /** For each point: whether the side from it to the next is unsure. */
  readonly unsure: readonly boolean[];
}

export interface Carried {
  /** Far to near; planes that are not in the painting are left out. */
  readonly planes: readonly CarriedPlane[];
  /** Whole sentences: planes left out, and what could not be done. */
  readonly notes: readonly string[];
}

/** By plane id. */
export type Moves = ReadonlyMap<string, PlaneMove>;

/** Outlines depart by no more than this from what was found, in widths of the painting. */
const TOLERANCE = 0.0012;
/** A plane with less of the painting than this is not in it. */
const LEAST_AREA = 0.0015;

export function ringsOf(planes: readonly PlaneToCarry[], placement: Placement, moves: Moves): RingPoint[][] {
  return planes.map(({ id, outline }) => carriedRing(outline, placement, moves.get(id) ?? null));
}

/** Rings cut to the painting, freed of loops, with few points. @param aspect height / width of the painting. */
export function finishedPlanes(
  planes: readonly PlaneToCarry[],
  rings: readonly (readonly RingPoint[])[],
  aspect: number,
): Carried {
  const finished: CarriedPlane[] = [];
  const notes: string[] = [];
  for (const [index, { id, name }] of planes.entries()) {
    const ring = rings[index] ?? [];
    const inside = ring.length < 3 ? [] : cutToBox(ring, PAINTING_BOX);
    if (inside.length < 3 || areaOf(inside) < LEAST_AREA) {
      notes.push(notInPainting(name));
      continue;
    }
    const simple = withoutLoops(withFewerPoints(inside, { tolerance: TOLERANCE, aspect }));
    if (!simple || areaOf(simple) < LEAST_AREA) notes.push(inPieces(name));
    else finished.push({ id, outline: outlineOf(simple), unsure: simple.map(({ unsure }) => unsure) });
  }
  return { planes: finished, notes };
}

/** @throws Problem `setup-invalid`: see `checkPlacement`. */
export function layPlanes(planes: readonly PlaneToCarry[], placement: Placement, moves: Moves): Carried {
  checkPlacement(placement);
  return finishedPlanes(planes, ringsOf(planes, placement, moves), 1);
}
