/**
 * The plane's own colours at its darks, middle and lights, for drawing its bar. Pure.
 */
import { hexFromLinear } from '../colour/hex.ts';
import type { Prepared } from './prepare.ts';

/** Half width in L* of the window of cells that a drawn colour is the mean of. */
const WINDOW = 1;

/** The mean of the cells near one lightness, and the nearest of all in case that none is near. */
class Swatch {
  private readonly lightness: number;
  private red = 0;
  private green = 0;
  private blue = 0;
  private count = 0;
  private nearest = 0;
  private nearestBy = Number.POSITIVE_INFINITY;

  constructor(lightness: number) {
    this.lightness = lightness;
  }

  look(cell: number, lightness: number, linear: Float32Array): void {
    const away = Math.abs(lightness - this.lightness);
    if (away < this.nearestBy) {
      this.nearestBy = away;
      this.nearest = cell;
    }
    if (away > WINDOW) return;
    this.red += linear[cell * 3] as number;
    this.green += linear[cell * 3 + 1] as number;
    this.blue += linear[cell * 3 + 2] as number;
    this.count++;
  }

  hex(linear: Float32Array): string {
    const { red, green, blue, count, nearest } = this;
    if (count > 0) return hexFromLinear(red / count, green / count, blue / count);
    return hexFromLinear(
      linear[nearest * 3] as number,
      linear[nearest * 3 + 1] as number,
      linear[nearest * 3 + 2] as number,
    );
  }
}

/** sRGB hex colours near the 5th, 50th and 95th percentile of L*, in linear-light means. @param cells at least one. */
export function swatchesOf(
  { linear, lab }: Prepared,
  cells: Int32Array,
  levels: { dark: number; mid: number; light: number },
): { dark: string; mid: string; light: string } {
  const [dark, mid, light] = [new Swatch(levels.dark), new Swatch(levels.mid), new Swatch(levels.light)];
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at] as number;
    const lightness = lab.lightness[cell] as number;
    dark.look(cell, lightness, linear);
    mid.look(cell, lightness, linear);
    light.look(cell, lightness, linear);
  }
  return { dark: dark.hex(linear), mid: mid.hex(linear), light: light.hex(linear) };
}
