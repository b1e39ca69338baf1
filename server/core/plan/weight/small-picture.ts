/**
 * The small copy of a picture on which weight is told: CIELAB on at most 256 cells a side.
 *
 * In the flow: plate -> [small-picture] -> patches -> balance. Each cell is the mean of L*, a*, b* over exactly its part
 * of the picture, pixels on its border counted by their share: a mirrored picture gives the mirrored copy, and sums of
 * area times lightness, which weight is made of, are kept. Pure.
 */
import { LINEAR_OF_CODE } from '../../colour/transfer.ts';
import { type LabPlanes, labPlanesFromLinear } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';

/** Long side of the copy, cells; a smaller picture keeps its size. */
const LONG_SIDE = 256;

export interface SmallPicture {
  readonly columns: number;
  readonly rows: number;
  readonly lab: LabPlanes;
}

/** Which pixels make up each cell along one side, and by what share. */
interface Spans {
  readonly first: Int32Array;
  readonly shares: readonly Float64Array[];
}

function spansOf(pixels: number, cells: number): Spans {
  const size = pixels / cells;
  const first = Int32Array.from({ length: cells }, (_, cell) => Math.floor(cell * size));
  const shares = Array.from({ length: cells }, (_, cell) => {
    const [from, to] = [cell * size, (cell + 1) * size];
    const start = first[cell] as number;
    const count = Math.min(pixels, Math.ceil(to - 1e-9)) - start;
    return Float64Array.from({ length: count }, (_, at) => {
      const inside = Math.min(to, start + at + 1) - Math.max(from, start + at);
      return Math.max(0, inside) / size;
    });
  });
  return { first, shares };
}

type Triplet = [Float64Array, Float64Array, Float64Array];

/** L*, a*, b* of one row of pixels. */
function labOfRow({ widthPx, samples }: EncodedRaster, y: number): LabPlanes {
  const start = y * widthPx * 3;
  const linear = Float32Array.from(
    { length: widthPx * 3 },
    (_, at) => LINEAR_OF_CODE[samples[start + at] as number] as number,
  );
  return labPlanesFromLinear(linear);
}

/** One channel of a row gathered into cells, and added to a row of the copy by its share. */
function addRow(values: Float32Array, across: Spans, share: number, sums: Float64Array, start: number): void {
  across.shares.forEach((shares, cell) => {
    const from = across.first[cell] as number;
    let sum = 0;
    for (let at = 0; at < shares.length; at++) sum += (shares[at] as number) * (values[from + at] as number);
    sums[start + cell] = (sums[start + cell] as number) + share * sum;
  });
}

/** @param raster a plate of any size. */
export function smallPicture(raster: EncodedRaster): SmallPicture {
  const { widthPx, heightPx } = raster;
  const shrink = Math.min(1, LONG_SIDE / Math.max(widthPx, heightPx));
  const columns = Math.max(1, Math.round(widthPx * shrink));
  const rows = Math.max(1, Math.round(heightPx * shrink));
  const [across, down] = [spansOf(widthPx, columns), spansOf(heightPx, rows)];
  const [L, a, b] = [0, 1, 2].map(() => new Float64Array(columns * rows)) as Triplet;
  down.shares.forEach((shares, row) => {
    shares.forEach((share, at) => {
      const line = labOfRow(raster, (down.first[row] as number) + at);
      addRow(line.lightness, across, share, L, row * columns);
      addRow(line.a, across, share, a, row * columns);
      addRow(line.b, across, share, b, row * columns);
    });
  });
  const lab = { lightness: Float32Array.from(L), a: Float32Array.from(a), b: Float32Array.from(b) };
  return { columns, rows, lab };
}
