/**
 * Outlines drawn by hand miss the ridge by a pixel or two: what lies on an outline goes to the plane that it looks like.
 *
 * In the flow: label map -> [snapped-labels] -> soft planes. Pure. Only the narrow band along outlines is asked, by its
 * distance (CIELAB) to the mean colours of the planes around it; without a clear answer a pixel stays. Own method, no source.
 */
import { labFromRgb } from '../../colour/lab.ts';
import { LINEAR_OF_CODE } from '../../colour/transfer.ts';
import type { LabColour } from '../../contract/setup.ts';
import { gaussianBlur } from '../../image/gaussian.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { erodeLabels } from '../../planes/erode.ts';
import { NO_PLANE } from '../../planes/label-map.ts';

/** Half the width of the band, as a share of the long side. */
const BAND = 0.0025;
/** Side of the blocks that mean colours are taken over, pixels, and the blur over them in blocks. */
const BLOCK_PX = 8;
const SPREAD_BLOCKS = 1.5;
/** Another plane has to be nearer than this share of the own plane's distance, and the own farther than this, dE*ab. */
const MUCH_NEARER = 0.5;
const STRANGE = 5;
/** L*, a*, b*, weight. */
const CHANNELS = 4;
const LEAST_WEIGHT = 1e-4;

interface Means {
  readonly columns: number;
  readonly grids: Float32Array[];
}

function labAt({ samples }: EncodedRaster, pixel: number): LabColour {
  const at = pixel * 3;
  return labFromRgb([
    LINEAR_OF_CODE[samples[at] as number] as number,
    LINEAR_OF_CODE[samples[at + 1] as number] as number,
    LINEAR_OF_CODE[samples[at + 2] as number] as number,
  ]);
}

/** From every other pixel of every other row: a mean colour needs no more. */
function meansOf(raster: EncodedRaster, inner: Uint8Array, planeCount: number): Means {
  const { widthPx, heightPx } = raster;
  const [columns, rows] = [Math.ceil(widthPx / BLOCK_PX), Math.ceil(heightPx / BLOCK_PX)];
  const grids = Array.from({ length: planeCount }, () => new Float32Array(columns * rows * CHANNELS));
  for (let y = 0; y < heightPx; y += 2) {
    const row = Math.floor(y / BLOCK_PX) * columns;
    for (let x = 0; x < widthPx; x += 2) {
      const at = y * widthPx + x;
      const grid = grids[inner[at] as number];
      if (!grid) continue;
      const block = (row + Math.floor(x / BLOCK_PX)) * CHANNELS;
      const { L, a, b } = labAt(raster, at);
      grid[block] = (grid[block] as number) + L;
      grid[block + 1] = (grid[block + 1] as number) + a;
      grid[block + 2] = (grid[block + 2] as number) + b;
      grid[block + 3] = (grid[block + 3] as number) + 1;
    }
  }
  const blurred = grids.map((samples) =>
    gaussianBlur({ columns, rows, channels: CHANNELS, samples }, SPREAD_BLOCKS),
  );
  return { columns, grids: blurred };
}

/** dE*ab from a colour to a plane's mean colour around it; infinite where the plane isn't near. */
function distance({ L, a, b }: LabColour, grid: Float32Array | undefined, block: number): number {
  const weight = grid?.[block + 3] ?? 0;
  if (!grid || weight < LEAST_WEIGHT) return Number.POSITIVE_INFINITY;
  const [l, p, q] = [grid[block], grid[block + 1], grid[block + 2]] as [number, number, number];
  return Math.hypot(L - l / weight, a - p / weight, b - q / weight);
}

/** What surely belongs to its plane: off the band, and not closed from a gap. */
function innerOf({ widthPx, heightPx }: EncodedRaster, labels: Uint8Array, drawn: Uint8Array): Uint8Array {
  const bandPx = Math.max(1.2, BAND * Math.max(widthPx, heightPx));
  const inner = erodeLabels(labels, widthPx, heightPx, bandPx);
  for (let at = 0; at < inner.length; at++) if (drawn[at] === NO_PLANE) inner[at] = NO_PLANE;
  return inner;
}

/**
 * @param labels plane of each pixel with gaps closed, 255 = none. @param drawn the same as it was outlined.
 * @returns a new map.
 */
export function snappedLabels(
  raster: EncodedRaster,
  labels: Uint8Array,
  drawn: Uint8Array,
  planeCount: number,
): Uint8Array {
  const { widthPx } = raster;
  const inner = innerOf(raster, labels, drawn);
  const { columns, grids } = meansOf(raster, inner, planeCount);
  const snapped = labels.slice();
  for (let at = 0; at < labels.length; at++) {
    const own = labels[at] as number;
    if (own === NO_PLANE || inner[at] === own) continue;
    const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
    const block = (Math.floor(y / BLOCK_PX) * columns + Math.floor(x / BLOCK_PX)) * CHANNELS;
    const colour = labAt(raster, at);
    const away = distance(colour, grids[own], block);
    if (away < STRANGE || away === Number.POSITIVE_INFINITY) continue;
    let least = away * MUCH_NEARER;
    for (let plane = 0; plane < planeCount; plane++) {
      const other = plane === own ? away : distance(colour, grids[plane], block);
      if (other >= least) continue;
      least = other;
      snapped[at] = plane;
    }
  }
  return snapped;
}
