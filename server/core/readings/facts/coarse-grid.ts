/**
 * The grid that the facts look at: fine enough for the smallest accent, coarse enough to be quick.
 *
 * In the flow: prepared plate + eroded labels -> [coarse-grid] -> facts. A coarse cell has the mean colour of the
 * cells in it, and the plane of the one in its middle. Pure.
 */
import type { Prepared } from '../../measure/prepare.ts';
import type { LabGrid } from './lab-grid.ts';

/** Long side of the grid, cells, at least; a smaller picture keeps its own. */
const SIDE = 340;

function meansOf(
  values: Float32Array,
  columns: number,
  side: number,
  wide: number,
  high: number,
): Float32Array {
  const means = new Float32Array(wide * high);
  for (let y = 0; y < high * side; y++) {
    const row = Math.floor(y / side) * wide;
    for (let x = 0; x < wide * side; x++) {
      const to = row + Math.floor(x / side);
      means[to] = (means[to] as number) + (values[y * columns + x] as number);
    }
  }
  for (let to = 0; to < means.length; to++) means[to] = (means[to] as number) / (side * side);
  return means;
}

/** @param kept plane of each cell of the prepared plate, 255 = none. @param names by label. */
export function coarseGrid(prepared: Prepared, kept: Uint8Array, names: readonly string[]): LabGrid {
  const { columns, rows, lab } = prepared;
  const side = Math.max(1, Math.floor(Math.max(columns, rows) / SIDE));
  if (side === 1) return { columns, rows, L: lab.lightness, a: lab.a, b: lab.b, labels: kept, names };
  const [wide, high] = [Math.floor(columns / side), Math.floor(rows / side)];
  const middle = Math.floor(side / 2);
  const labels = Uint8Array.from(
    { length: wide * high },
    (_, at) =>
      kept[(Math.floor(at / wide) * side + middle) * columns + (at % wide) * side + middle] as number,
  );
  const mean = (values: Float32Array): Float32Array => meansOf(values, columns, side, wide, high);
  return { columns: wide, rows: high, L: mean(lab.lightness), a: mean(lab.a), b: mean(lab.b), labels, names };
}
