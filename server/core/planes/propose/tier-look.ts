/**
 * What a tier looks like as a whole, and whether that may be sky.
 *
 * In the flow: tiers -> [tier-look] -> tier tree, describe. Rules of thumb (common practice, no source). Pure.
 */
import type { Columns } from './columns.ts';
import { COLOURS, TEXTURE_WEIGHT } from './cues.ts';
import { bottomOf, type Tops } from './tiers.ts';

export interface TierLook {
  /** Means over the tier; L*, a*, b*. */
  readonly lightness: number;
  readonly a: number;
  readonly b: number;
  /** Strength of fine texture, dE. */
  readonly texture: number;
  /** Mean height in the picture, 0 top to 1 bottom. */
  readonly height: number;
  /** How much its ridge rises and falls: standard deviation as a share of the picture's height. */
  readonly relief: number;
}

/** Texture above which nothing is taken for sky, dE; clouds have less. */
const SKY_TEXTURE = 1.6;
/** L* by which a sky may darken downwards; a range of mountains is darker than that. */
const SKY_DARKENS = 3;

function meanOf(values: Float32Array, { count, rows }: Columns, tops: Tops, k: number): number {
  let [sum, pixels] = [0, 0];
  for (let column = 0; column < count; column++) {
    const end = column * rows + bottomOf(tops, k, column, rows);
    for (let at = column * rows + ((tops[k] as Int16Array)[column] as number); at < end; at++, pixels++) {
      sum += values[at] as number;
    }
  }
  return pixels > 0 ? sum / pixels : 0;
}

/** Mean height of a tier, and the deviation of its ridge, both as shares of the picture's height. */
function shapeOf({ count, rows }: Columns, tops: Tops, k: number): { height: number; relief: number } {
  let [moment, pixels, sum, squares, shown] = [0, 0, 0, 0, 0];
  for (let column = 0; column < count; column++) {
    const top = (tops[k] as Int16Array)[column] as number;
    const bottom = bottomOf(tops, k, column, rows);
    if (bottom <= top) continue;
    moment += ((bottom - top) * (top + bottom)) / 2;
    pixels += bottom - top;
    sum += top;
    squares += top * top;
    shown++;
  }
  const places = Math.max(1, shown);
  return {
    height: moment / Math.max(1, pixels) / rows,
    relief: Math.sqrt(Math.max(0, squares / places - (sum / places) ** 2)) / rows,
  };
}

export function tierLook(columns: Columns, tops: Tops, k: number): TierLook {
  const [lightness, a, b, texture] = columns.cues
    .slice(0, COLOURS + 1)
    .map((cue) => meanOf(cue, columns, tops, k)) as [number, number, number, number];
  return { lightness, a, b, texture: 2 ** (texture / TEXTURE_WEIGHT), ...shapeOf(columns, tops, k) };
}

/** Smooth, not dark, and neither green nor brown. */
function isSkyLike({ lightness, a, b, texture }: TierLook): boolean {
  return texture < SKY_TEXTURE && lightness > 35 && (b < 4 || lightness > 70) && a > -14;
}

/** How many tiers from the top on are sky: each smooth and pale or blue, and hardly darker than the one above. */
export function skiesAmong(looks: readonly TierLook[]): number {
  const end = looks.findIndex((look, k) => {
    const above = looks[k - 1];
    const darkens = above !== undefined && look.lightness < above.lightness - SKY_DARKENS;
    return !isSkyLike(look) || darkens;
  });
  return end < 0 ? looks.length : end;
}
