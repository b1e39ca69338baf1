/**
 * The planes of one picture as rings and as cells, and what a ring must hold so that the right plane is seen.
 *
 * In the flow: rings -> [layers] -> settle, relabel. Where rings overlap the nearer plane wins; a farther one runs on a
 * little under a nearer one wherever the border between them moved, so that no bare sliver opens between two lines
 * that were tidied apart. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { drawLabelMap, NO_PLANE } from '../label-map.ts';
import { type Grid, type Mask, ringMask, widened } from './grid.ts';

/** How far a farther plane runs on under a nearer one, cells. */
export const UNDER = 3;

export type Ring = readonly FractionPoint[];

/** The planes of one picture, far to near; null where a plane has no outline. */
export interface Layers {
  readonly grid: Grid;
  readonly rings: readonly (Ring | null)[];
  /** Cells inside each ring; empty where there is none. */
  readonly masks: readonly Mask[];
  /** The plane seen at each cell, or `NO_PLANE`. */
  readonly seen: Uint8Array;
}

export function layersOf(rings: readonly (Ring | null)[], grid: Grid): Layers {
  return {
    grid,
    rings,
    masks: rings.map((ring) => ringMask(ring ?? [], grid)),
    seen: drawLabelMap(
      grid.columns,
      grid.rows,
      rings.map((ring) => ring ?? []),
    ),
  };
}

/** Place of a label far to near; what belongs to no plane lies behind all. */
const rankOf = (label: number) => (label === NO_PLANE ? -1 : label);

/** The cells near which something else is seen than before. */
export function movedZone({ seen, grid }: Layers, wanted: Uint8Array): Mask {
  const moved = new Uint8Array(seen.length);
  for (let cell = 0; cell < moved.length; cell++) moved[cell] = seen[cell] === wanted[cell] ? 0 : 1;
  return widened(moved, grid, UNDER + 1);
}

/**
 * The cells that a plane's ring should hold: those where it is to be seen, hidden ones as before, and some more under
 * borders that moved. @returns Null when it may hold what it holds.
 */
export function targetOf(plane: number, layers: Layers, wanted: Uint8Array, zone: Mask): Mask | null {
  const mask = layers.masks[plane] as Mask;
  const target = mask.slice();
  let shown = false;
  let changed = false;
  const last = zone.lastIndexOf(1);
  for (let cell = zone.indexOf(1); cell >= 0 && cell <= last; cell++) {
    if (zone[cell] === 0) continue;
    const rank = rankOf(wanted[cell] as number);
    if (rank > plane) continue;
    if (rank === plane) shown = true;
    target[cell] = rank === plane ? 1 : 0;
    if (target[cell] !== mask[cell]) changed = true;
  }
  if (shown && runOnUnder(target, plane, layers.grid, wanted, zone)) changed = true;
  return changed ? target : null;
}

/** Lets a plane run on under nearer ones beside where it is seen. @returns Whether that added cells. */
function runOnUnder(target: Mask, plane: number, grid: Grid, wanted: Uint8Array, zone: Mask): boolean {
  const [first, last] = [zone.indexOf(1), zone.lastIndexOf(1)];
  const shown = new Uint8Array(zone.length);
  for (let cell = first; cell <= last; cell++) {
    if (zone[cell] === 1 && wanted[cell] === plane) shown[cell] = 1;
  }
  const around = widened(shown, grid, UNDER);
  let added = false;
  for (let cell = first; cell <= last; cell++) {
    if (around[cell] === 0 || zone[cell] === 0 || target[cell] === 1) continue;
    if (rankOf(wanted[cell] as number) <= plane) continue;
    target[cell] = 1;
    added = true;
  }
  return added;
}
