/**
 * From what should be seen where to the outlines that show it, changing them no further than asked.
 *
 * In the flow: regions -> [relabel] -> live outlines. Pure.
 */
import { type Layers, movedZone, type Ring, targetOf } from './layers.ts';
import { ringAround } from './ring-around.ts';
import { settled } from './settle.ts';

export interface Relabelled {
  /** New rings by plane; planes that are not named keep theirs. */
  readonly rings: ReadonlyMap<number, Ring>;
  /** What is seen where, as it came out, before lines were tidied. */
  readonly seen: Uint8Array;
  /** Cells that did not become what was asked, because a ring is in one piece and has no holes. */
  readonly refused: { readonly apart: number; readonly inside: number };
  /** Cells of each plane that were cut off from it and went to a neighbour. */
  readonly cutOff: readonly number[];
}

/**
 * Rings that show what is wanted, as nearly as rings can.
 *
 * @param wanted the plane that should be seen at each cell, or `NO_PLANE`.
 */
export function relabelled(layers: Layers, wanted: Uint8Array): Relabelled {
  const outcome = settled(layers, wanted);
  const zone = movedZone(layers, outcome.seen);
  const changed = new Map<number, Ring>();
  layers.rings.forEach((ring, plane) => {
    const target = targetOf(plane, layers, outcome.seen, zone);
    if (!target) return;
    const mask = layers.masks[plane] ?? target;
    const next = ringAround(target, outcome.seen, plane, layers.grid, ring ? [{ ring, mask }] : []);
    if (next) changed.set(plane, next);
  });
  return { rings: changed, ...outcome };
}
