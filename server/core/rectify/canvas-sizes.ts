/**
 * Usual sizes of canvases, to choose from where a painter does not type one.
 *
 * In the flow: corners -> [canvas-sizes] -> chooser -> size of the photo correction; only the proportion counts. Pure.
 * Source: inches, common practice of suppliers, several public listings, some from memory; centimetres, the
 * nineteenth-century French series figure (F), paysage (P) and marine (M), from an encyclopedia and a public price
 * table. Not a standard.
 */

/** [long side, short side] in inches. */
const INCHES: readonly (readonly [long: number, short: number])[] = [
  [6, 4],
  [7, 5],
  [8, 6],
  [10, 8],
  [12, 9],
  [14, 10],
  [20, 10],
  [14, 11],
  [16, 12],
  [18, 12],
  [24, 12],
  [48, 12],
  [18, 14],
  [20, 16],
  [24, 16],
  [24, 18],
  [24, 20],
  [30, 20],
  [28, 22],
  [30, 24],
  [36, 24],
  [48, 24],
  [40, 30],
  [48, 30],
  [48, 36],
  [60, 40],
  [60, 48],
  [72, 48],
  [6, 6],
  [8, 8],
  [10, 10],
  [12, 12],
  [20, 20],
  [24, 24],
  [30, 30],
  [36, 36],
];

/** [number, long side, short side of F, of P, of M] in centimetres: F, P and M of one number share the long side. */
const FRENCH_CM: readonly (readonly [number: number, long: number, f: number, p: number, m: number])[] = [
  [0, 18, 14, 12, 10],
  [1, 22, 16, 14, 12],
  [2, 24, 19, 16, 14],
  [3, 27, 22, 19, 16],
  [4, 33, 24, 22, 19],
  [5, 35, 27, 24, 22],
  [6, 41, 33, 27, 24],
  [8, 46, 38, 33, 27],
  [10, 55, 46, 38, 33],
  [12, 61, 50, 46, 38],
  [15, 65, 54, 50, 46],
  [20, 73, 60, 54, 50],
  [25, 81, 65, 60, 54],
  [30, 92, 73, 65, 60],
  [40, 100, 81, 73, 65],
  [50, 116, 89, 81, 73],
  [60, 130, 97, 89, 81],
  [80, 146, 114, 97, 89],
  [100, 162, 130, 114, 97],
  [120, 195, 130, 114, 97],
];

export interface CanvasSize {
  /** `20F` in the French series; null for sizes in inches, which have no names. */
  readonly name: string | null;
  readonly unit: 'in' | 'cm';
  readonly long: number;
  readonly short: number;
}

/** Smallest first in each family: inches, then the French series. */
export const CANVAS_SIZES: readonly CanvasSize[] = [
  ...INCHES.map(([long, short]) => ({ name: null, unit: 'in' as const, long, short })).sort(
    (one, other) => one.long - other.long || one.short - other.short,
  ),
  ...FRENCH_CM.flatMap(([number, long, ...shorts]) =>
    shorts.map((short, at) => ({ name: `${number}${'FPM'[at]}`, unit: 'cm' as const, long, short })),
  ),
];

/** Farthest that a side ratio read from corners may lie from that of a size that fits, as a factor. */
const FITS = 1.035;

/** Width and height of a size that lies or stands as the painting does. @param ratio width / height seen. */
export function turnedLike({ long, short }: CanvasSize, ratio: number): [width: number, height: number] {
  return ratio >= 1 ? [long, short] : [short, long];
}

/**
 * Sizes whose proportion fits, the nearest first and smaller before larger.
 * @param ratio width / height of the painting as its corners show it, above 0.
 */
export function sizesThatFit(ratio: number): CanvasSize[] {
  const wanted = Math.max(ratio, 1 / ratio);
  const away = ({ long, short }: CanvasSize): number => Math.abs(Math.log(long / short / wanted));
  return CANVAS_SIZES.filter((size) => away(size) <= Math.log(FITS)).sort(
    (one, other) => away(one) - away(other) || one.long - other.long,
  );
}
