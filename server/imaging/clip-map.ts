/**
 * Where the camera ran out of range, told from the full-size picture and brought to the plate's grid.
 *
 * In the flow: decode → [clip-map] → plate. Pure. Blown = any channel at 254 or
 * more, crushed = all channels at 1 or less, in the decoded picture before shrinking.
 */
import { CLIP } from '../core/image/raster.ts';
import type { DecodedPicture } from './decode.ts';

/** Shares of the full-size picture's pixels, 0..1. */
export interface ClippedShares {
  readonly high: number;
  readonly low: number;
}

/** A map on the plate's grid with the shares of the full-size picture. */
export interface PlateClipping {
  /** One `CLIP` value a plate pixel. */
  readonly map: Uint8Array;
  readonly shares: ClippedShares;
}

/**
 * A plate pixel counts as clipped when at least half of the full-size pixels it covers are, as the kind that
 * covers more of it.
 *
 * @param full The file's own samples, upright, full size.
 * @param widthPx, heightPx The plate's grid; at most as large as `full`.
 */
export function clipOnGrid(full: DecodedPicture, widthPx: number, heightPx: number): PlateClipping {
  const cells = widthPx * heightPx;
  const blown = new Uint16Array(cells);
  const crushed = new Uint16Array(cells);
  const columns = gridIndexes(full.width, widthPx);
  const rows = gridIndexes(full.height, heightPx);
  const { samples, width } = full;
  let [high, low] = [0, 0];
  for (let y = 0, at = 0; y < full.height; y++) {
    const row = (rows[y] as number) * widthPx;
    for (let x = 0; x < width; x++, at += 3) {
      const red = samples[at] as number;
      const green = samples[at + 1] as number;
      const blue = samples[at + 2] as number;
      // All bits of the three together: most pixels are neither so high nor so low, and are told by one comparison.
      const bits = red | green | blue;
      if (bits > 1 && bits < 254) continue;
      const cell = row + (columns[x] as number);
      if (bits <= 1) {
        crushed[cell] = (crushed[cell] as number) + 1;
        low++;
      } else if (red >= 254 || green >= 254 || blue >= 254) {
        blown[cell] = (blown[cell] as number) + 1;
        high++;
      }
    }
  }
  const pixels = full.width * full.height;
  return {
    map: decide(blown, crushed, countEach(columns, widthPx), countEach(rows, heightPx)),
    shares: { high: high / pixels, low: low / pixels },
  };
}

/** @param across, down How many full-size columns and rows each grid column and row covers. */
function decide(
  blown: Uint16Array,
  crushed: Uint16Array,
  across: Uint32Array,
  down: Uint32Array,
): Uint8Array {
  const map = new Uint8Array(blown.length);
  for (let cell = 0; cell < map.length; cell++) {
    const high = blown[cell] as number;
    const low = crushed[cell] as number;
    if (high + low === 0) continue;
    const column = cell % across.length;
    const covered = (across[column] as number) * (down[(cell - column) / across.length] as number);
    if ((high + low) * 2 >= covered) map[cell] = high >= low ? CLIP.blown : CLIP.crushed;
  }
  return map;
}

function countEach(indexes: Uint32Array, grid: number): Uint32Array {
  const counts = new Uint32Array(grid);
  for (const index of indexes) counts[index] = (counts[index] as number) + 1;
  return counts;
}

/** For each full-size index the grid index that its pixel's centre falls into. */
function gridIndexes(full: number, grid: number): Uint32Array {
  const indexes = new Uint32Array(full);
  for (let index = 0; index < full; index++) {
    indexes[index] = Math.min(grid - 1, Math.floor(((index + 0.5) * grid) / full));
  }
  return indexes;
}
