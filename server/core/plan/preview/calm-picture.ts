/**
 * The picture without its fine detail, each plane blurred within itself, so that no plane's colour bleeds over a ridge.
 *
 * In the flow: plate + soft planes -> [calm-picture] -> relight, which takes detail back towards it. Pure. Normalised
 * convolution after Knutsson & Westin (1993): blurred weighted light over blurred weights. The blur is the one that
 * detail is measured against.
 */
import { codeOfLinear, LINEAR_OF_CODE } from '../../colour/transfer.ts';
import { blockVariance, gaussianBlur, sigmaLeft } from '../../image/gaussian.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { DETAIL_BLUR } from '../../measure/prepare.ts';
import { BARE, eachPlane, type SoftPlanes } from './soft-planes.ts';

/** Side of the blocks that the blur is taken from, pixels; nothing finer is left by it. */
const BLOCK_PX = 4;
/** Light, light, light, weight. */
const CHANNELS = 4;

interface Coarse {
  readonly columns: number;
  readonly rows: number;
  /** One grid a plane, the last for what is bare. */
  readonly grids: Float32Array[];
}

function blocksOf(raster: EncodedRaster, soft: SoftPlanes, planeCount: number): Coarse {
  const { widthPx, heightPx, samples } = raster;
  const columns = Math.ceil(widthPx / BLOCK_PX);
  const rows = Math.ceil(heightPx / BLOCK_PX);
  const grids = Array.from({ length: planeCount + 1 }, () => new Float32Array(columns * rows * CHANNELS));
  let [pixel, block] = [0, 0];
  // Made once, not for each pixel.
  const addTo = (plane: number, weight: number): void => {
    const grid = grids[plane === BARE ? planeCount : plane] as Float32Array;
    for (let channel = 0; channel < 3; channel++) {
      const light = LINEAR_OF_CODE[samples[pixel * 3 + channel] as number] as number;
      grid[block + channel] = (grid[block + channel] as number) + weight * light;
    }
    grid[block + 3] = (grid[block + 3] as number) + weight;
  };
  for (let y = 0; y < heightPx; y++) {
    const row = Math.floor(y / BLOCK_PX) * columns;
    for (let x = 0; x < widthPx; x++, pixel++) {
      block = (row + Math.floor(x / BLOCK_PX)) * CHANNELS;
      eachPlane(soft, pixel, addTo);
    }
  }
  return { columns, rows, grids };
}

function blurred({ columns, rows, grids }: Coarse, sigmaPx: number): Coarse {
  const least = Math.sqrt(blockVariance(BLOCK_PX));
  const sigma = Math.max(0.5, sigmaLeft(Math.max(sigmaPx, least), blockVariance(BLOCK_PX), BLOCK_PX));
  return {
    columns,
    rows,
    grids: grids.map((samples) => gaussianBlur({ columns, rows, channels: CHANNELS, samples }, sigma)),
  };
}

/** Where a pixel lies between the centres of blocks. */
interface Spot {
  readonly first: number;
  readonly second: number;
  readonly rest: number;
}

function spotOf(pixel: number, count: number): Spot {
  const place = Math.min(count - 1, Math.max(0, (pixel + 0.5) / BLOCK_PX - 0.5));
  const first = Math.floor(place);
  return { first, second: Math.min(count - 1, first + 1), rest: place - first };
}

/** The mean light around a place, read between four blocks; nothing is added where no block has the plane. */
function addCalm(grid: Float32Array, columns: number, across: Spot, down: Spot, into: Float64Array): void {
  const [upper, lower] = [down.first * columns, down.second * columns];
  const nw = (upper + across.first) * CHANNELS;
  const ne = (upper + across.second) * CHANNELS;
  const sw = (lower + across.first) * CHANNELS;
  const se = (lower + across.second) * CHANNELS;
  for (let channel = 0; channel < CHANNELS; channel++) {
    const west = grid[nw + channel] as number;
    const above = west + across.rest * ((grid[ne + channel] as number) - west);
    const far = grid[sw + channel] as number;
    const below = far + across.rest * ((grid[se + channel] as number) - far);
    into[channel] = above + down.rest * (below - above);
  }
}

/** @returns Encoded sRGB, as large as the plate. */
export function calmPicture(raster: EncodedRaster, soft: SoftPlanes, planeCount: number): EncodedRaster {
  const { widthPx, heightPx } = raster;
  const sigmaPx = DETAIL_BLUR * Math.max(widthPx, heightPx);
  const { columns, rows, grids } = blurred(blocksOf(raster, soft, planeCount), sigmaPx);
  const across = Array.from({ length: widthPx }, (_, x) => spotOf(x, columns));
  const samples = new Uint8Array(raster.samples.length);
  const [around, sum] = [new Float64Array(CHANNELS), new Float64Array(3)];
  let [beside, down] = [spotOf(0, columns), spotOf(0, rows)];
  const addFrom = (plane: number, weight: number): void => {
    const grid = grids[plane === BARE ? planeCount : plane] as Float32Array;
    addCalm(grid, columns, beside, down, around);
    for (let channel = 0; channel < 3; channel++) {
      const calm = (around[channel] as number) / (around[3] as number);
      sum[channel] = (sum[channel] as number) + weight * calm;
    }
  };
  for (let y = 0, pixel = 0; y < heightPx; y++) {
    down = spotOf(y, rows);
    for (let x = 0; x < widthPx; x++, pixel++) {
      sum.fill(0);
      beside = across[x] as Spot;
      eachPlane(soft, pixel, addFrom);
      for (let channel = 0; channel < 3; channel++) {
        samples[pixel * 3 + channel] = codeOfLinear(sum[channel] as number);
      }
    }
  }
  return { encoding: 'srgb8', widthPx, heightPx, samples };
}
