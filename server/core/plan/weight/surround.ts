/**
 * How far each patch stands out in lightness from the ground it lies on.
 *
 * In the flow: patch figures -> [surround] -> balance. The surround of a patch is what lies within a band around it and
 * belongs to larger patches: a thing lies on a ground, a ground does not lie on its things. A patch with none but
 * smaller ones around it is ground and stands out of nothing. Own definition: the trade says "surround" and no more.
 * Pure.
 */
import type { PatchFigures } from './patch-figures.ts';
import type { PatchMap } from './patches.ts';
import type { SmallPicture } from './small-picture.ts';

/** Width of the band, as a share of the long side. */
const BAND = 0.025;

/** Times as large as a patch from which another is wholly its ground: own estimate. */
const GROUND = 1.5;

/** Share of the picture's width that a patch reaches across, never less than a hundredth. */
function across({ box: [x0, , x1] }: PatchFigures): number {
  return Math.max(0.01, x1 - x0);
}

/**
 * How far a patch lies on another as a thing on its ground, 0..1: wholly where the other is at least 1.5 times as large,
 * not at all the other way round, and in between by the logarithm, so that a hair's breadth never swaps the two. How far
 * each reaches across the picture counts as its size does: a sky beside a dark wood of its own size is still the ground,
 * and what goes from side to side pulls to neither.
 */
function liesOn(own: PatchFigures, other: PatchFigures): number {
  const larger = Math.log(other.size / own.size) + Math.log(across(other) / across(own));
  return Math.min(1, Math.max(0, 0.5 + larger / (2 * Math.log(GROUND))));
}

/** Cells of another patch within the band, unmixed where there are any: number and sum of L*, by the other's number. */
type Around = Map<number, { cells: number; sumL: number; pure: boolean }>;

/** Lists of cells by patch. */
function cellsOf({ labels, count }: PatchMap): number[][] {
  const cells = Array.from({ length: count }, (): number[] => []);
  for (let cell = 0; cell < labels.length; cell++) (cells[labels[cell] as number] as number[]).push(cell);
  return cells;
}

/** Calls `see` for each cell beside one, within the grid. */
function beside(cell: number, columns: number, cells: number, see: (next: number) => void): void {
  const x = cell % columns;
  if (x > 0) see(cell - 1);
  if (x + 1 < columns) see(cell + 1);
  if (cell >= columns) see(cell - columns);
  if (cell + columns < cells) see(cell + columns);
}

/** Walks outwards from a patch, one cell a round, and gathers what is met. */
function lookAround(
  own: number,
  cells: readonly number[],
  { labels, core }: PatchMap,
  { columns, lab }: SmallPicture,
  depth: number,
  seen: Int32Array,
): Around {
  const around: Around = new Map();
  let front: readonly number[] = cells;
  for (let round = 0; round < depth; round++) {
    const next: number[] = [];
    for (const cell of front) {
      beside(cell, columns, labels.length, (other) => {
        const label = labels[other] as number;
        if (label === own || seen[other] === own) return;
        seen[other] = own;
        next.push(other);
        const pure = core[other] === 1;
        const known = around.get(label);
        if (known?.pure && !pure) return;
        const met = known && known.pure === pure ? known : { cells: 0, sumL: 0, pure };
        met.cells++;
        met.sumL += lab.lightness[other] as number;
        around.set(label, met);
      });
    }
    front = next;
  }
  return around;
}

/** |dL*| to the surround, times how far the patch lies on it; 0 for ground. */
function contrastOf(own: PatchFigures, around: Around, figures: readonly PatchFigures[]): number {
  let [weights, differences, most] = [0, 0, 0];
  for (const [other, { cells, sumL }] of around) {
    const on = liesOn(own, figures[other] as PatchFigures);
    weights += on * cells;
    differences += on * cells * Math.abs(own.lightness - sumL / cells);
    most = Math.max(most, on);
  }
  return weights > 0 ? (most * differences) / weights : 0;
}

/** |dL*| of every patch to its surround, L* units, by the patch's number. */
export function contrastsToSurround(
  picture: SmallPicture,
  patches: PatchMap,
  figures: readonly PatchFigures[],
): number[] {
  const depth = Math.max(1, Math.round(BAND * Math.max(picture.columns, picture.rows)));
  const seen = new Int32Array(patches.labels.length).fill(-1);
  return cellsOf(patches).map((cells, own) =>
    contrastOf(figures[own] as PatchFigures, lookAround(own, cells, patches, picture, depth, seen), figures),
  );
}
