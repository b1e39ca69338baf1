/**
 * What is compared between places of a picture: colour of each pixel, texture of each superpixel.
 *
 * In the flow: working copy + superpixels -> [cues] -> region graph, ridges. Texture is measured inside a
 * superpixel only, so that the edge of a ridge is not taken for texture beside it. Pure.
 */
import type { Superpixels } from './superpixels.ts';
import type { WorkingCopy } from './working-copy.ts';

/** L*, a*, b*. */
export const COLOURS = 3;
/** And fine and coarse texture. */
export const CUES = 5;
/** And, for whole regions, the dark channel. */
export const GRAPH_CUES = 6;

/** L*, a*, b* units that one doubling of texture counts as. */
export const TEXTURE_WEIGHT = 4;
/** Units that the dark channel, 0..1 on a scale of cube roots as L* is, is told in: about those of L*. */
const DARK_SCALE = 40;
/** L* of texture that a picture's own noise and rounding make up. */
const TEXTURE_FLOOR = 0.3;

/** Pixels between the places compared for fine and for coarse texture. */
const LAGS = [1, 3] as const;

/**
 * Strength of texture in each superpixel: root mean square of v(x − lag) − 2 v(x) + v(x + lag) over L*, a*, b*, both
 * ways, over √6 (what that makes of independent values); a slope of light has none. −1 where nothing fits in.
 */
function textureOf({ lab, columns }: WorkingCopy, { labels, count }: Superpixels, lag: number): Float64Array {
  const { lightness, a, b } = lab;
  const [squares, places] = [new Float64Array(count), new Float64Array(count)];
  const down = lag * columns;
  const bend = (at: number, stride: number): number => {
    const l =
      (lightness[at - stride] as number) - 2 * (lightness[at] as number) + (lightness[at + stride] as number);
    const p = (a[at - stride] as number) - 2 * (a[at] as number) + (a[at + stride] as number);
    const q = (b[at - stride] as number) - 2 * (b[at] as number) + (b[at + stride] as number);
    return l * l + p * p + q * q;
  };
  for (let at = 0; at < labels.length; at++) {
    const label = labels[at] as number;
    // A superpixel spans less than a row, so what lies a few pixels on in the array and has its number is beside it.
    if (labels[at - lag] === label && labels[at + lag] === label) {
      squares[label] = (squares[label] as number) + bend(at, lag);
      places[label] = (places[label] as number) + 1;
    }
    if (labels[at - down] === label && labels[at + down] === label) {
      squares[label] = (squares[label] as number) + bend(at, down);
      places[label] = (places[label] as number) + 1;
    }
  }
  return squares.map((sum, label) => {
    const found = places[label] as number;
    return found > 0 ? Math.sqrt(sum / found / 6) : -1;
  });
}

/** The cues of every pixel, one grid a cue, all in units of about one dE. */
export function cueGrids(copy: WorkingCopy, superpixels: Superpixels): Float32Array[] {
  const [fine, coarse] = LAGS.map((lag) => textureOf(copy, superpixels, lag)) as [Float64Array, Float64Array];
  const told = (strength: number): number =>
    TEXTURE_WEIGHT * Math.log2(Math.hypot(Math.max(0, strength), TEXTURE_FLOOR));
  const spread = (ofLabel: Float64Array): Float32Array => {
    const grid = new Float32Array(superpixels.labels.length);
    for (let at = 0; at < grid.length; at++) grid[at] = ofLabel[superpixels.labels[at] as number] as number;
    return grid;
  };
  return [
    copy.lab.lightness,
    copy.lab.a,
    copy.lab.b,
    spread(fine.map(told)),
    spread(coarse.map((strength, at) => told(strength < 0 ? (fine[at] as number) : strength))),
  ];
}

/** The dark channel of every pixel in units of about one dE. */
export function darkCue({ dark }: WorkingCopy): Float32Array {
  return dark.map((value) => DARK_SCALE * Math.cbrt(value));
}
