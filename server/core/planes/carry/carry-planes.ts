/**
 * Planes of one picture carried over to a painting of it: placed, moved one by one, fitted to the painting's edges.
 *
 * In the flow: two pictures, outlines -> [carry-planes], in a worker -> outlines on the painting, shown before they
 * are taken. Both pictures squared, all in 0..1. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { checkOutline } from '../check-outline.ts';
import { drawLabelMap } from '../label-map.ts';
import { PAINTING_BOX } from './carried-rings.ts';
import { findMove, STAY } from './find-moves.ts';
import { findPlacement } from './find-placement.ts';
import { type Fitted, fitRidge } from './fit-ridge.ts';
import {
  type Carried,
  type CarriedPlane,
  finishedPlanes,
  layPlanes,
  type Moves,
  type PlaneToCarry,
  ringsOf,
} from './lay-planes.ts';
import { checkPlacement, type Placement, type PlaneMove, placedBack, SAME_PART } from './placement.ts';
import { type TakenApart, takenApart } from './ridge-samples.ts';
import { type RidgeSeen, ridgeSeen } from './ridge-seen.ts';
import { liesOnBox, outlineOf, type RingPoint } from './ring.ts';
import { type Sight, sightOf, softer, toneDeviation } from './sight.ts';
import { HARDLY, STRANGE, tooEven } from './why.ts';

/** Long side of the grid on which ridges are fitted, cells. */
const GRID = 512;
/** L* varies less: nothing to find a place or an edge by. */
const EVEN_TONE = 1;
/** Pictures that agree less than this have nothing in common. */
const COMMON = 0.3;
/** More of all ridges than this unsure: the planes may not belong here. */
const MOSTLY = 0.75;

export interface FoundWhere {
  readonly placement: Placement;
  /** What stood in the way, in a whole sentence; null when the place was found. */
  readonly trouble: string | null;
}

/** Share of all ridges, by length, that is unsure; what runs along the painting's border is no ridge. */
function shareUnsure(planes: readonly CarriedPlane[]): number {
  let [doubt, all] = [0, 0];
  for (const { outline, unsure } of planes) {
    outline.forEach((from, at) => {
      const to = outline[(at + 1) % outline.length] ?? from;
      if (liesOnBox(PAINTING_BOX, from, to)) return;
      const side = Math.hypot(to[0] - from[0], to[1] - from[1]);
      all += side;
      if (unsure[at]) doubt += side;
    });
  }
  return all > 0 ? doubt / all : 0;
}

export class Carrying {
  readonly #planes: readonly PlaneToCarry[];
  readonly #first: Sight;
  readonly #painting: Sight;

  /**
   * @param first, painting any size, squared. @param planes far to near.
   * @throws Problem `outline-invalid` when an outline of the first picture encloses nothing.
   */
  constructor(first: EncodedRaster, painting: EncodedRaster, planes: readonly PlaneToCarry[]) {
    for (const { name, outline } of planes) checkOutline(name, outline);
    this.#planes = planes;
    this.#first = softer(sightOf(first, GRID));
    this.#painting = softer(sightOf(painting, GRID));
  }

  /** Which part of the first picture the painting shows; the same part where that cannot be found. */
  whole(): FoundWhere {
    const tone = toneDeviation(this.#painting);
    if (tone < EVEN_TONE) return { placement: SAME_PART, trouble: tooEven(tone) };
    const outlines = this.#planes.map(({ outline }) => outline);
    const { placement, agreement } = findPlacement(this.#first, outlines, this.#painting);
    if (agreement < COMMON) return { placement: SAME_PART, trouble: STRANGE };
    return { placement, trouble: null };
  }

  /** How single planes were moved beyond that. @throws Problem `setup-invalid`: see `checkPlacement`. */
  moves(placement: Placement): Moves {
    checkPlacement(placement);
    const rings = ringsOf(this.#planes, placement, new Map());
    const labels = this.#labels(rings);
    const { columns, rows } = this.#painting;
    const moves = new Map<string, PlaneMove>();
    rings.forEach((ring, plane) => {
      if (ring.length < 3) return;
      const taken = takenApart(ring, this.#painting);
      const seen = this.#seen(taken, plane, labels, placement, null);
      const { move, about } = findMove(taken.stretches, seen, this.#painting);
      const id = this.#planes[plane]?.id;
      if (move === STAY || id === undefined) return;
      moves.set(id, {
        about: [about[0] / columns, about[1] / rows],
        scale: move.scale,
        shiftX: move.x / columns,
        shiftY: move.y / rows,
      });
    });
    return moves;
  }

  /** The planes as they lie, not fitted. @throws Problem `setup-invalid`: see `checkPlacement`. */
  laid(placement: Placement, moves: Moves): Carried {
    return layPlanes(this.#planes, placement, moves);
  }

  /** The planes fitted to the painting's edges. @throws Problem `setup-invalid`: see `checkPlacement`. */
  fitted(placement: Placement, moves: Moves): Carried {
    checkPlacement(placement);
    const { columns, rows } = this.#painting;
    const rings = ringsOf(this.#planes, placement, moves);
    const labels = this.#labels(rings);
    const nearer: Fitted = { before: [], after: [] };
    const fitted = rings.map((): RingPoint[] => []);
    for (let plane = rings.length - 1; plane >= 0; plane--) {
      const ring = rings[plane] as RingPoint[];
      if (ring.length < 3) continue;
      const taken = takenApart(ring, this.#painting);
      const move = moves.get(this.#planes[plane]?.id ?? '') ?? null;
      const seen = this.#seen(taken, plane, labels, placement, move);
      fitted[plane] = fitRidge(taken, plane, seen, { sight: this.#painting, labels }, nearer);
    }
    const carried = finishedPlanes(this.#planes, fitted, rows / columns);
    return shareUnsure(carried.planes) > MOSTLY ? { ...carried, notes: [...carried.notes, HARDLY] } : carried;
  }

  #labels(rings: readonly (readonly RingPoint[])[]): Uint8Array {
    return drawLabelMap(this.#painting.columns, this.#painting.rows, rings.map(outlineOf));
  }

  #seen(
    taken: TakenApart,
    plane: number,
    labels: Uint8Array,
    placement: Placement,
    move: PlaneMove | null,
  ): RidgeSeen[] {
    const { columns, rows } = this.#painting;
    const back = ([x, y]: FractionPoint): FractionPoint => {
      const at: FractionPoint = [x / columns, y / rows];
      const still: FractionPoint = move
        ? [
            move.about[0] + (at[0] - move.shiftX - move.about[0]) / move.scale,
            move.about[1] + (at[1] - move.shiftY - move.about[1]) / move.scale,
          ]
        : at;
      const there = placedBack(placement, still);
      return [there[0] * this.#first.columns, there[1] * this.#first.rows];
    };
    const seeing = { painting: this.#painting, labels, first: this.#first, back };
    return taken.stretches.map((stretch) => ridgeSeen(stretch, plane, seeing));
  }
}
