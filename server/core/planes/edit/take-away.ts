/**
 * Where patches go that are taken away from a plane: each to the plane beside it that it is most like.
 *
 * In the flow: regions -> [take-away] -> relabel. Patches at the edge go first, those within follow them. Pure.
 */
import { NO_PLANE } from '../label-map.ts';
import { eachBeside } from './grid.ts';
import type { Layers } from './layers.ts';
import type { Patches, Stroke } from './patches.ts';

/** A picture with more of it bare than this share is still being outlined: what is taken away may go to no plane. */
const STILL_BARE = 0.02;
/** Difference in colour, CIE 1976, that counts as none beside a border's length. */
const NO_DIFFERENCE = 4;

/** The cells of each picked patch that show the plane. */
function openPatches(
  { seen }: Layers,
  { labels }: Patches,
  { plane, picked }: Stroke,
): Map<number, number[]> {
  const open = new Map<number, number[]>();
  for (let cell = 0; cell < labels.length; cell++) {
    const patch = labels[cell] as number;
    if (seen[cell] !== plane || !picked.has(patch)) continue;
    const cells = open.get(patch);
    if (cells) cells.push(cell);
    else open.set(patch, [cell]);
  }
  return open;
}

/** What should be seen where; patches that no other plane can be reached from stay. */
export function takenAway(layers: Layers, patches: Patches, stroke: Stroke): Uint8Array {
  const wanted = layers.seen.slice();
  const bare = layers.seen.reduce((count, label) => count + (label === NO_PLANE ? 1 : 0), 0);
  const mayBare = bare > STILL_BARE * layers.seen.length;
  const open = openPatches(layers, patches, stroke);
  for (let left = open.size + 1; left !== open.size; ) {
    left = open.size;
    // All of a round first, so that the order of patches does not matter.
    const hosts = [...open].map(([patch, cells]) => {
      return { patch, cells, host: likest(cells, patch, stroke.plane, wanted, patches, mayBare) };
    });
    for (const { patch, cells, host } of hosts) {
      if (host === null) continue;
      for (const cell of cells) wanted[cell] = host;
      open.delete(patch);
    }
  }
  return wanted;
}

/** The plane beside these cells with the longest border and the likest colour; null when there is none yet. */
function likest(
  cells: readonly number[],
  patch: number,
  plane: number,
  wanted: Uint8Array,
  patches: Patches,
  mayBare: boolean,
): number | null {
  const worth = new Map<number, number>();
  for (const cell of cells) {
    eachBeside(patches.grid, cell, (other) => {
      const label = wanted[other] as number;
      if (label === plane || (label === NO_PLANE && !mayBare)) return;
      const unlike = difference(patches, patch, patches.labels[other] as number);
      worth.set(label, (worth.get(label) ?? 0) + 1 / (NO_DIFFERENCE + unlike));
    });
  }
  return [...worth].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

function difference({ colours }: Patches, one: number, other: number): number {
  const apart = (channel: number) =>
    (colours[one * 3 + channel] as number) - (colours[other * 3 + channel] as number);
  return Math.hypot(apart(0), apart(1), apart(2));
}
