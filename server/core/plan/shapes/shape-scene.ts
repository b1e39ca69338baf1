/**
 * What the rules about shapes look at: contours of the planes, what weighs, the focus.
 *
 * In the flow: planes + weighed picture -> [shape-scene] -> rules. Pure.
 */
import type { FractionPoint, PlaneKind } from '../../contract/setup.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { drawLabelMap } from '../../planes/label-map.ts';
import { shortName } from '../../readings/words.ts';
import type { Weighed } from '../weight/balance.ts';
import { type LabelGrid, type RidgeLine, ridgeLine } from './ridge-lines.ts';

/** Long side of the grid on which contours are compared, cells. */
const LONG_SIDE = 600;
/** Share of the columns in which a contour must show to count as a ridge. */
const LEAST_SHOWN = 0.1;

export interface OutlinedPlane {
  readonly name: string;
  readonly kind: PlaneKind;
  /** 0..1 of the picture; nearer planes cover it. */
  readonly outline: readonly FractionPoint[];
}

export interface ShapeScene extends LabelGrid {
  /** Far to near. */
  readonly planes: readonly OutlinedPlane[];
  /** Ridges far to near; the sky and whatever lies behind everything have none. */
  readonly ridges: readonly RidgeLine[];
  readonly weighed: Weighed;
  /** Marked by the painter, 0..1; null where none is. */
  readonly focus: FractionPoint | null;
  readonly picture: EncodedRaster;
  /** Name of a plane as it stands in a sentence. */
  label(plane: number): string;
  /** A place on the grid, cells, as 0..1 of the picture. */
  place(x: number, y: number): FractionPoint;
}

/** @param planes far to near, outlines checked before. */
export function shapeScene(
  picture: EncodedRaster,
  planes: readonly OutlinedPlane[],
  weighed: Weighed,
  focus: FractionPoint | null,
): ShapeScene {
  const { widthPx, heightPx } = picture;
  const shrink = LONG_SIDE / Math.max(widthPx, heightPx);
  const columns = Math.max(1, Math.round(widthPx * shrink));
  const rows = Math.max(1, Math.round(heightPx * shrink));
  const labels = drawLabelMap(
    columns,
    rows,
    planes.map(({ outline }) => outline),
  );
  const grid = { columns, rows, labels };
  const ridges = planes.flatMap((plane, at) => {
    if (at === 0 || plane.kind === 'sky') return [];
    const line = ridgeLine(grid, at, plane);
    const shown = line.heights.reduce((sum, height) => sum + (height > 0 ? 1 : 0), 0);
    return shown >= LEAST_SHOWN * columns ? [line] : [];
  });
  return {
    ...grid,
    planes,
    ridges,
    weighed,
    focus,
    picture,
    label: (plane) => shortName(planes[plane]?.name ?? '', plane),
    place: (x, y) => [x / columns, y / rows],
  };
}

/** Points along a contour between two columns, at most 40, for drawing. */
export function pointsAlong(
  { heights }: RidgeLine,
  scene: ShapeScene,
  from = 0,
  to = heights.length - 1,
): FractionPoint[] {
  const step = Math.max(1, Math.floor((to - from) / 39));
  const points: FractionPoint[] = [];
  for (let x = from; x <= to; x += step) {
    const y = heights[x] as number;
    if (!Number.isNaN(y)) points.push(scene.place(x + 0.5, y));
  }
  return points;
}
