/**
 * The cells of each plane, after the rim is taken off.
 *
 * In the flow: eroded grid -> [plane-cells] -> figures. Pure.
 */

/** Indices of the grid's cells by label 0..planes − 1, in row order. */
export function cellsByPlane(kept: Uint8Array, planes: number): Int32Array[] {
  const counts = new Uint32Array(256);
  for (let cell = 0; cell < kept.length; cell++) {
    const label = kept[cell] as number;
    counts[label] = (counts[label] as number) + 1;
  }
  const lists = Array.from({ length: planes }, (_, label) => new Int32Array(counts[label] as number));
  const filled = new Uint32Array(256);
  for (let cell = 0; cell < kept.length; cell++) {
    const label = kept[cell] as number;
    const list = lists[label];
    if (!list) continue;
    const place = filled[label] as number;
    list[place] = cell;
    filled[label] = place + 1;
  }
  return lists;
}

/** The values of some cells, in their order. */
export function valuesOf(values: Float32Array, cells: Int32Array): Float32Array {
  const result = new Float32Array(cells.length);
  for (let at = 0; at < cells.length; at++) result[at] = values[cells[at] as number] as number;
  return result;
}
