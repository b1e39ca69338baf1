/**
 * What frames are judged by: which plane lies where, what weighs where, what matters most.
 *
 * In the flow: shape scene -> [crop-scene] -> search, score, reasons. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { skyline } from '../shapes/horizon.ts';
import { pullsOf, thingsOf } from '../shapes/pull.ts';
import type { ShapeScene } from '../shapes/shape-scene.ts';
import type { WeighedPatch } from '../weight/balance.ts';

/** Places at which the skyline is kept: frames are judged by the thousand. */
const SKYLINE_PLACES = 150;

/** x0, y0, x1, y1 in 0..1 of the picture. */
export type Box = readonly [x0: number, y0: number, x1: number, y1: number];

export interface CropScene {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Cells of the sky and of the nearest plane above and left of each corner of the grid; (columns + 1) a row. */
  readonly sky: Uint32Array;
  readonly foreground: Uint32Array;
  readonly columns: number;
  readonly rows: number;
  /** Lower end of the sky at places spread evenly over the width, 0..1; empty where there is no sky. */
  readonly skyline: Float64Array;
  /** Those that weigh anything. */
  readonly patches: readonly WeighedPatch[];
  readonly things: readonly WeighedPatch[];
  /** The marked focus, or else the place that pulls most; null where nothing does. */
  readonly focus: FractionPoint | null;
  readonly marked: boolean;
}

/** How many cells of one plane lie above and left of each corner of the grid. */
function sumsOf({ columns, rows, labels }: ShapeScene, is: (label: number) => boolean): Uint32Array {
  const wide = columns + 1;
  const sums = new Uint32Array(wide * (rows + 1));
  for (let y = 0; y < rows; y++) {
    let row = 0;
    for (let x = 0; x < columns; x++) {
      if (is(labels[y * columns + x] as number)) row++;
      sums[(y + 1) * wide + x + 1] = (sums[y * wide + x + 1] as number) + row;
    }
  }
  return sums;
}

/** Label of the nearest plane where it can be told from what lies behind it; −1 where it cannot. */
export function nearestPlane({ planes }: ShapeScene): number {
  const last = planes.length - 1;
  return last > 0 && planes[last]?.kind !== 'sky' ? last : -1;
}

/** Every so many columns of a skyline, at most `SKYLINE_PLACES` of them. */
function spread(line: readonly number[]): Float64Array {
  const step = Math.max(1, Math.ceil(line.length / SKYLINE_PLACES));
  return Float64Array.from({ length: Math.floor(line.length / step) }, (_, at) => {
    return line[Math.floor((at + 0.5) * step)] as number;
  });
}

export function cropScene(scene: ShapeScene): CropScene {
  const { columns, rows, planes, weighed, picture, focus } = scene;
  const nearest = nearestPlane(scene);
  const things = thingsOf(weighed.patches);
  const pull = pullsOf(things, rows / columns)[0];
  return {
    widthPx: picture.widthPx,
    heightPx: picture.heightPx,
    columns,
    rows,
    sky: sumsOf(scene, (label) => planes[label]?.kind === 'sky'),
    foreground: sumsOf(scene, (label) => label === nearest),
    skyline: spread(skyline(scene)).map((y) => y / rows),
    patches: weighed.patches.filter(({ weight }) => weight > 0),
    things,
    focus: focus ?? pull?.at ?? null,
    marked: focus !== null,
  };
}

/** Share of a frame that a plane takes, from sums of its cells; to about half a cell. */
export function shareIn({ columns, rows }: CropScene, sums: Uint32Array, [x0, y0, x1, y1]: Box): number {
  const [left, right] = [Math.round(x0 * columns), Math.round(x1 * columns)];
  const [top, bottom] = [Math.round(y0 * rows), Math.round(y1 * rows)];
  const wide = columns + 1;
  const at = (x: number, y: number): number => sums[y * wide + x] as number;
  const cells = at(right, bottom) - at(left, bottom) - at(right, top) + at(left, top);
  return cells / Math.max(1, (right - left) * (bottom - top));
}
