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

/** Lowest bits of the four bytes of a word, all but the lowest, and the highest. */
const ONES = 0x01010101;
const EVEN = 0xfefefefe | 0;
const HIGHS = 0x80808080 | 0;

/**
 * Whether none of the four bytes of a word is 254 or more, or 1 or less. Without its lowest bit such a byte is 0, or is
 * 0 when turned round; a word has a byte of 0 where taking one from every byte borrows from its highest bit.
 */
function isPlain(word: number): boolean {
  const low = word & EVEN;
  const high = low ^ EVEN;
  return ((((low - ONES) & ~low) | ((high - ONES) & ~high)) & HIGHS) === 0;
}

/** Counts of clipped full-size pixels in each cell of the plate's grid. */
class Clipping {
  readonly blown: Uint16Array;
  readonly crushed: Uint16Array;
  readonly columns: Uint32Array;
  readonly rows: Uint32Array;
  high = 0;
  low = 0;
  private readonly full: DecodedPicture;
  private readonly widthPx: number;

  constructor(full: DecodedPicture, widthPx: number, heightPx: number) {
    this.full = full;
    this.widthPx = widthPx;
    this.blown = new Uint16Array(widthPx * heightPx);
    this.crushed = new Uint16Array(widthPx * heightPx);
    this.columns = gridIndexes(full.width, widthPx);
    this.rows = gridIndexes(full.height, heightPx);
  }

  /** Looks at every pixel; four at a time where none of them can be clipped, as is most often so. */
  countAll(): void {
    const { samples, width, height } = this.full;
    const pixels = width * height;
    let pixel = 0;
    if (samples.byteOffset % 4 === 0) {
      const words = new Int32Array(samples.buffer, samples.byteOffset, Math.floor(pixels / 4) * 3);
      for (let at = 0; at < words.length; at += 3, pixel += 4) {
        const plain =
          isPlain(words[at] as number) &&
          isPlain(words[at + 1] as number) &&
          isPlain(words[at + 2] as number);
        if (plain) continue;
        for (let one = pixel; one < pixel + 4; one++) this.count(one);
      }
    }
    for (; pixel < pixels; pixel++) this.count(pixel);
  }

  private count(pixel: number): void {
    const { samples, width } = this.full;
    const at = pixel * 3;
    const [red, green, blue] = [samples[at] as number, samples[at + 1] as number, samples[at + 2] as number];
    const isCrushed = red <= 1 && green <= 1 && blue <= 1;
    if (!isCrushed && red < 254 && green < 254 && blue < 254) return;
    const y = Math.floor(pixel / width);
    const cell = (this.rows[y] as number) * this.widthPx + (this.columns[pixel - y * width] as number);
    const counts = isCrushed ? this.crushed : this.blown;
    counts[cell] = (counts[cell] as number) + 1;
    if (isCrushed) this.low++;
    else this.high++;
  }
}

/**
 * A plate pixel counts as clipped when at least half of the full-size pixels it covers are, as the kind that
 * covers more of it.
 *
 * @param full The file's own samples, upright, full size.
 * @param widthPx, heightPx The plate's grid; at most as large as `full`.
 */
export function clipOnGrid(full: DecodedPicture, widthPx: number, heightPx: number): PlateClipping {
  const clipping = new Clipping(full, widthPx, heightPx);
  clipping.countAll();
  const { blown, crushed, columns, rows, high, low } = clipping;
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
