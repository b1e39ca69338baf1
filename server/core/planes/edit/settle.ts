/**
 * What can be seen where, given that every plane has one ring in one piece and without holes.
 *
 * In the flow: relabel -> [settle]. Cells asked for that hang on nothing go back to what they were; cells that were cut
 * off from their plane go to a neighbour; what is shut in becomes what shuts it in. Pure.
 */
import { NO_PLANE } from '../label-map.ts';
import { cellsInside, contourOf } from './contour.ts';
import { eachBeside, type Grid, type Mask, piecesOf } from './grid.ts';
import { type Layers, movedZone, targetOf } from './layers.ts';
import { mainPiece } from './ring-around.ts';

/** Each round mends what the one before broke; two are usual. */
const ROUNDS = 5;

export interface Settled {
  readonly seen: Uint8Array;
  readonly refused: { apart: number; inside: number };
  readonly cutOff: number[];
}

/** @param wanted the plane that should be seen at each cell, or `NO_PLANE`. */
export function settled(layers: Layers, wanted: Uint8Array): Settled {
  const seen = wanted.slice();
  const outcome: Settled = {
    seen,
    refused: { apart: 0, inside: 0 },
    cutOff: layers.rings.map(() => 0),
  };
  for (let round = 0; round < ROUNDS; round++) {
    const zone = movedZone(layers, seen);
    let mended = 0;
    layers.rings.forEach((_, plane) => {
      mended += settlePlane(layers, plane, zone, outcome);
    });
    if (mended === 0) break;
  }
  return outcome;
}

/** @returns How many cells became something else. */
function settlePlane(layers: Layers, plane: number, zone: Mask, outcome: Settled): number {
  const target = targetOf(plane, layers, outcome.seen, zone);
  const piece = target && mainPiece(target, outcome.seen, plane, layers.grid);
  if (!piece) return 0;
  const filled = cellsInside(contourOf(piece, layers.grid), layers.grid);
  return leftOut(layers, plane, filled, outcome) + shutIn(layers, plane, filled, outcome);
}

/** Cells that should show the plane and are not in its ring: back to what they were, or to a neighbour. */
function leftOut(layers: Layers, plane: number, ring: Mask, { seen, refused, cutOff }: Settled): number {
  const homeless = new Uint8Array(seen.length);
  let returned = 0;
  for (let cell = 0; cell < seen.length; cell++) {
    if (seen[cell] !== plane || ring[cell] === 1) continue;
    const before = layers.seen[cell] as number;
    if (before === plane) {
      homeless[cell] = 1;
      continue;
    }
    seen[cell] = before;
    returned++;
  }
  refused.apart += returned;
  if (!homeless.includes(1)) return returned;
  const rehoused = rehouse(homeless, plane, seen, layers.grid);
  cutOff[plane] = (cutOff[plane] ?? 0) + rehoused;
  return returned + rehoused;
}

/** Cells in the ring that should show what is farther: a ring has no holes. */
function shutIn(layers: Layers, plane: number, ring: Mask, { seen, refused }: Settled): number {
  let filled = 0;
  for (let cell = 0; cell < seen.length; cell++) {
    const label = seen[cell] as number;
    if (ring[cell] === 0 || (label >= plane && label !== NO_PLANE)) continue;
    if (layers.seen[cell] === plane) refused.inside++;
    seen[cell] = plane;
    filled++;
  }
  return filled;
}

/** Gives every piece of the mask to the plane that most of its sides touch. @returns How many cells. */
function rehouse(homeless: Mask, plane: number, seen: Uint8Array, grid: Grid): number {
  const { numbers, sizes } = piecesOf(homeless, grid);
  const touching = sizes.map(() => new Map<number, number>());
  let count = 0;
  for (let cell = 0; cell < homeless.length; cell++) {
    if (homeless[cell] === 0) continue;
    count++;
    const sides = touching[numbers[cell] as number];
    eachBeside(grid, cell, (other) => {
      const label = seen[other] as number;
      if (label !== plane && label !== NO_PLANE) sides?.set(label, (sides.get(label) ?? 0) + 1);
    });
  }
  const hosts = touching.map((sides) => [...sides].sort((a, b) => b[1] - a[1])[0]?.[0] ?? NO_PLANE);
  for (let cell = 0; cell < homeless.length; cell++) {
    if (homeless[cell] === 1) seen[cell] = hosts[numbers[cell] as number] ?? NO_PLANE;
  }
  return count;
}
