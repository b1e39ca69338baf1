/**
 * The plane's own colours at its darks, middle and lights, for drawing its bar. Pure.
 */
import { hexFromLinear } from '../colour/hex.ts';
import type { Prepared } from './prepare.ts';

/** Half width in L* of the window of cells that a drawn colour is the mean of. */
const WINDOW = 1;

/** Mean colour, in linear light, of the cells whose L* is near `lightness`, or of the nearest cell. */
function colourNear(prepared: Prepared, cells: Int32Array, lightness: number): string {
  const { linear, lab } = prepared;
  let [red, green, blue, count] = [0, 0, 0, 0];
  let nearest = cells[0] as number;
  let nearestBy = Number.POSITIVE_INFINITY;
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at] as number;
    const away = Math.abs((lab.lightness[cell] as number) - lightness);
    if (away < nearestBy) {
      nearestBy = away;
      nearest = cell;
    }
    if (away > WINDOW) continue;
    red += linear[cell * 3] as number;
    green += linear[cell * 3 + 1] as number;
    blue += linear[cell * 3 + 2] as number;
    count++;
  }
  if (count > 0) return hexFromLinear(red / count, green / count, blue / count);
  return hexFromLinear(
    linear[nearest * 3] as number,
    linear[nearest * 3 + 1] as number,
    linear[nearest * 3 + 2] as number,
  );
}

/** sRGB hex colours near the 5th, 50th and 95th percentile of L*. @param cells at least one. */
export function swatchesOf(
  prepared: Prepared,
  cells: Int32Array,
  levels: { dark: number; mid: number; light: number },
): { dark: string; mid: string; light: string } {
  return {
    dark: colourNear(prepared, cells, levels.dark),
    mid: colourNear(prepared, cells, levels.mid),
    light: colourNear(prepared, cells, levels.light),
  };
}
