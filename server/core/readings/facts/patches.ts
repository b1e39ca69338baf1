/**
 * Connected patches of equal class on a grid (4 neighbours).
 *
 * In the flow: value map, accents -> [patches]. Linear in cells. Pure.
 */
export interface Patch {
  /** Class of its cells. */
  value: number;
  /** Number of cells. */
  size: number;
  /** Index of its cells, in no order. */
  cells: number[];
}

/** Cells above, below and beside one, within the grid. */
function neighboursOf(cell: number, columns: number, cells: number): number[] {
  const x = cell % columns;
  const beside = [x > 0 ? cell - 1 : -1, x < columns - 1 ? cell + 1 : -1, cell - columns, cell + columns];
  return beside.filter((next) => next >= 0 && next < cells);
}

function grow(classes: Uint8Array, columns: number, seen: Uint8Array, start: number): number[] {
  const cells: number[] = [start];
  seen[start] = 1;
  for (let at = 0; at < cells.length; at++) {
    for (const next of neighboursOf(cells[at] as number, columns, classes.length)) {
      if (seen[next] || classes[next] !== classes[start]) continue;
      seen[next] = 1;
      cells.push(next);
    }
  }
  return cells;
}

/** @param classes one value a cell; cells of class `ignored` belong to no patch. */
export function patchesOf(classes: Uint8Array, columns: number, ignored: number): Patch[] {
  const seen = new Uint8Array(classes.length);
  const patches: Patch[] = [];
  for (let start = 0; start < classes.length; start++) {
    const value = classes[start] as number;
    if (seen[start] || value === ignored) continue;
    const cells = grow(classes, columns, seen, start);
    patches.push({ value, size: cells.length, cells });
  }
  return patches;
}

/** Middle of a patch, 0..1 of the picture. */
export function middleOf(patch: Patch, columns: number, rows: number): [number, number] {
  let [x, y] = [0, 0];
  for (const cell of patch.cells) {
    x += (cell % columns) + 0.5;
    y += Math.floor(cell / columns) + 0.5;
  }
  return [x / patch.size / columns, y / patch.size / rows];
}
