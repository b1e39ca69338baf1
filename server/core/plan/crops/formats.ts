/**
 * Proportions a picture may be framed in: plain formats, and those of real canvases that no plain format has.
 *
 * In the flow: [formats] -> search. Sizes: `rectify/canvas-sizes.ts` (common practice of suppliers and the French
 * series, with their sources). Golden: (1 + sqrt 5) / 2. Pure.
 */
import { CANVAS_SIZES, type CanvasSize } from '../../rectify/canvas-sizes.ts';
import { say, sayValue } from '../../say/say.ts';

export interface Format {
  /** `3:2`, `golden upright`, or a canvas as it is sold, `14 x 11 in`, `30P 65 x 92 cm`. */
  readonly name: string;
  /** Width / height. */
  readonly ratio: number;
  /** How many frames are looked for: three or four in a plain format, one on a canvas of its own proportion. */
  readonly frames: number;
}

const GOLDEN = (1 + Math.sqrt(5)) / 2;
const FRAMES = 4;
/** Factor within which two proportions count as one. */
const SAME = 1.02;
/** Canvases longer than this are too long for a plain landscape, and are left out. */
const LONGEST = 2.5;

const LYING: readonly (readonly [name: string, upright: string, ratio: number])[] = [
  ['3:2', '2:3', 3 / 2],
  ['4:3', '3:4', 4 / 3],
  ['5:4', '4:5', 5 / 4],
  ['golden', 'golden upright', GOLDEN],
  ['2:1', '1:2', 2],
];

const PLAIN: readonly Format[] = [
  { name: 'square', ratio: 1, frames: FRAMES },
  ...LYING.flatMap(([name, upright, ratio]) => [
    { name, ratio, frames: FRAMES },
    { name: upright, ratio: 1 / ratio, frames: FRAMES },
  ]),
];

const same = (one: number, two: number): boolean => Math.max(one / two, two / one) <= SAME;

function canvasName({ name, unit, long, short }: CanvasSize, lying: boolean): string {
  const sides = lying ? `${long} x ${short} ${unit}` : `${short} x ${long} ${unit}`;
  return name === null ? sides : `${name} ${sides}`;
}

/** One canvas for each proportion that the plain formats leave out, lying and standing. */
function canvasFormats(): Format[] {
  const formats: Format[] = [];
  for (const size of CANVAS_SIZES) {
    const ratio = size.long / size.short;
    if (ratio > LONGEST || [...PLAIN, ...formats].some((format) => same(format.ratio, ratio))) continue;
    formats.push(
      { name: canvasName(size, true), ratio, frames: 1 },
      { name: canvasName(size, false), ratio: 1 / ratio, frames: 1 },
    );
  }
  return formats;
}

/** A format or canvas as it is read; its name itself is kept with the frame and stays. @param name of a `Format`. */
export function formatInWords(name: string): string {
  const inches = /^(.+) in$/.exec(name)?.[1];
  return inches === undefined ? sayValue(name) : say`${inches} in`;
}

/** Plain formats first. */
export const FORMATS: readonly Format[] = [...PLAIN, ...canvasFormats()];

export interface CanvasChoice {
  /** As it is sold, lying or standing. */
  readonly name: string;
  /** Width / height. */
  readonly ratio: number;
  /** The format of that proportion. */
  readonly format: string;
}

/** Every usual canvas, lying and standing, square ones once. */
export function canvasChoices(): CanvasChoice[] {
  return CANVAS_SIZES.flatMap((size) => {
    const ratio = size.long / size.short;
    const ways = ratio === 1 ? [true] : [true, false];
    return ways.map((lying) => {
      const own = lying ? ratio : 1 / ratio;
      const name = canvasName(size, lying);
      return { name, ratio: own, format: FORMATS.find((format) => same(format.ratio, own))?.name ?? name };
    });
  });
}

/** Names of real canvases, at most three, that a frame of this proportion fills. @param ratio width / height. */
export function canvasesFor(ratio: number): string[] {
  const long = Math.max(ratio, 1 / ratio);
  return CANVAS_SIZES.filter((size) => Math.abs(size.long / size.short / long - 1) < 0.002)
    .slice(0, 3)
    .map((size) => canvasName(size, ratio >= 1));
}
