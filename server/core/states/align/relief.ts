/**
 * What of a picture survives another light, another lens and another exposure: how each place stands out from its
 * surroundings.
 *
 * In the flow: squared plate -> [relief] -> refine, agreement. Lightness less its local mean, over its local deviation,
 * so that fall-off, cast and tone curve drop out. Pure.
 */
import { shrunkLinear } from '../../capture/shrunk-linear.ts';
import { gaussianBlur } from '../../image/gaussian.ts';
import { labPlanesFromLinear } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';

/** Reach of the surroundings, as a share of the long side. */
const AROUND = 0.045;
/** Deviation in L* below which a place is taken as even: grain of the photo must not look like paint. */
const EVEN = 1.8;

/** L* on a grid. */
export interface Lightness {
  readonly columns: number;
  readonly rows: number;
  readonly lightness: Float32Array;
}

export interface Relief {
  readonly columns: number;
  readonly rows: number;
  /** Standing out: about −3..3, 0 where it is even. */
  readonly samples: Float32Array;
  /** Local deviation of L* of each cell. */
  readonly deviation: Float32Array;
}

/** @param longSide of the grid, cells; a smaller picture keeps its size. */
export function lightnessOf(raster: EncodedRaster, longSide: number): Lightness {
  const { linear, columns, rows } = shrunkLinear(raster, longSide);
  return { columns, rows, lightness: labPlanesFromLinear(linear).lightness };
}

/** The same on another grid, read between the cells; made smaller it is blurred first. */
export function onGrid({ columns, rows, lightness }: Lightness, across: number, down: number): Lightness {
  if (across === columns && down === rows) return { columns, rows, lightness };
  const shrink = Math.max(columns / across, rows / down);
  const grid = { columns, rows, channels: 1, samples: lightness };
  const from = shrink > 1.2 ? gaussianBlur(grid, 0.45 * shrink) : lightness;
  const result = new Float32Array(across * down);
  for (let row = 0, to = 0; row < down; row++) {
    const y = ((row + 0.5) * rows) / down - 0.5;
    for (let column = 0; column < across; column++, to++) {
      result[to] = readBetween(from, columns, rows, ((column + 0.5) * columns) / across - 0.5, y);
    }
  }
  return { columns: across, rows: down, lightness: result };
}

/** A value between four cells, held at the border. @param x, y in cells, 0 = the middle of the first. */
export function readBetween(
  samples: Float32Array,
  columns: number,
  rows: number,
  x: number,
  y: number,
): number {
  const px = Math.min(columns - 1, Math.max(0, x));
  const py = Math.min(rows - 1, Math.max(0, y));
  const [left, top] = [px | 0, py | 0];
  const [along, below] = [px - left, py - top];
  const at = top * columns + left;
  const right = left + 1 < columns ? 1 : 0;
  const under = top + 1 < rows ? at + columns : at;
  const upper = (samples[at] as number) * (1 - along) + (samples[at + right] as number) * along;
  const lower = (samples[under] as number) * (1 - along) + (samples[under + right] as number) * along;
  return upper + below * (lower - upper);
}

export function reliefOf({ columns, rows, lightness }: Lightness): Relief {
  const sigma = Math.max(1.5, AROUND * Math.max(columns, rows));
  const blurred = (samples: Float32Array) => gaussianBlur({ columns, rows, channels: 1, samples }, sigma);
  const mean = blurred(lightness);
  const away = lightness.map((value, cell) => value - (mean[cell] as number));
  const deviation = blurred(away.map((value) => value * value)).map(Math.sqrt);
  const samples = away.map((value, cell) => value / Math.hypot(deviation[cell] as number, EVEN));
  return { columns, rows, samples, deviation };
}
