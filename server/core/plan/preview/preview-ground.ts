/**
 * Everything about a picture that its preview needs and no plan changes: soft edges, the calm picture, each plane's cells.
 *
 * In the flow: plate + label map -> [preview-ground] -> lights -> relight. Worked out once; moving a handle only finds new
 * lights. Pure.
 */
import { LINEAR_OF_CODE } from '../../colour/transfer.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { RIM } from '../../measure/measure-planes.ts';
import { cellsByPlane } from '../../measure/plane-cells.ts';
import { prepareMeasurable } from '../../measure/prepare.ts';
import { erodeLabels, labelsOfBlocks } from '../../planes/erode.ts';
import type { PlannedChange } from '../ladder/plan-ladder.ts';
import { calmPicture } from './calm-picture.ts';
import { fitLights, type PlaneCells } from './fit-light.ts';
import { FITTED, type LightFigures, lightFigures } from './light-figures.ts';
import type { PlaneLight } from './plane-light.ts';
import { type SoftPlanes, softPlanes } from './soft-planes.ts';

/** Cells that a light is found from: enough for percentiles within 0.2 L* of all of them. */
const MOST_CELLS = 5000;

interface GroundPlane {
  /** Some of the plane's cells, evenly taken. */
  readonly cells: PlaneCells;
  /** Number of all its cells. */
  readonly count: number;
  /** Figures of all cells, less those of the ones taken. */
  readonly beyond: LightFigures;
}

export interface PreviewGround {
  readonly raster: EncodedRaster;
  readonly soft: SoftPlanes;
  readonly calm: EncodedRaster;
  /** As many as planes; null where nothing of one is left within its rim. */
  readonly planes: readonly (GroundPlane | null)[];
}

function cellsOf(
  { linear, columns, side }: ReturnType<typeof prepareMeasurable>,
  calm: EncodedRaster,
  cells: ArrayLike<number>,
): PlaneCells {
  const found = { linear: new Float32Array(cells.length * 3), calm: new Float32Array(cells.length * 3) };
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at] as number;
    const pixel = Math.floor(cell / columns) * side * calm.widthPx + (cell % columns) * side;
    for (let channel = 0; channel < 3; channel++) {
      found.linear[at * 3 + channel] = linear[cell * 3 + channel] as number;
      found.calm[at * 3 + channel] = LINEAR_OF_CODE[calm.samples[pixel * 3 + channel] as number] as number;
    }
  }
  return found;
}

function evenly(cells: Int32Array): Int32Array {
  if (cells.length <= MOST_CELLS) return cells;
  const every = cells.length / MOST_CELLS;
  return Int32Array.from({ length: MOST_CELLS }, (_, at) => cells[Math.floor(at * every)] as number);
}

function less(all: LightFigures, some: LightFigures): LightFigures {
  const beyond = {} as Record<(typeof FITTED)[number], number>;
  for (const key of FITTED) beyond[key] = all[key] - some[key];
  return beyond;
}

/** @param labels plane of each pixel, far to near, at most twelve; 255 = none. */
export function previewGround(raster: EncodedRaster, labels: Uint8Array, planeCount: number): PreviewGround {
  const { widthPx, heightPx } = raster;
  const prepared = prepareMeasurable({ raster });
  const soft = softPlanes(raster, labels, planeCount);
  const calm = calmPicture(raster, soft, planeCount);
  const eroded = erodeLabels(labels, widthPx, heightPx, RIM * Math.max(widthPx, heightPx));
  const lists = cellsByPlane(labelsOfBlocks(eroded, widthPx, heightPx, prepared.side), planeCount);
  const planes = lists.map((list): GroundPlane | null => {
    if (list.length === 0) return null;
    const cells = cellsOf(prepared, calm, evenly(list));
    const all = cellsOf(prepared, calm, list);
    return { cells, count: list.length, beyond: less(lightFigures(all.linear), lightFigures(cells.linear)) };
  });
  return { raster, soft, calm, planes };
}

/** What a plan wants of one plane. */
export interface WantedLight {
  readonly rung: LightFigures;
  /**
   * The figures that the plan was made from, where they were taken from another copy of the same picture: their
   * difference to this copy's is no plan. Null = this copy's own.
   */
  readonly before: LightFigures | null;
  readonly change: PlannedChange | null;
}

interface Wished {
  readonly place: number;
  readonly plane: GroundPlane;
  readonly wish: WantedLight;
}

/** Planes with one rung are planned as one. */
function isSameRung(one: LightFigures, other: LightFigures): boolean {
  return FITTED.every((key) => one[key] === other[key]);
}

function groupsOf(wished: readonly Wished[]): Wished[][] {
  const groups: Wished[][] = [];
  for (const each of wished) {
    const group = groups.find(([first]) => first && isSameRung(first.wish.rung, each.wish.rung));
    if (group) group.push(each);
    else groups.push([each]);
  }
  return groups;
}

/** The figures that the cells taken shall have, so that all cells have the rung's. */
function aimOf({ plane, wish }: Wished): LightFigures {
  const some = lightFigures(plane.cells.linear);
  const aim = {} as Record<(typeof FITTED)[number], number>;
  for (const key of FITTED) {
    const before = wish.before?.[key] ?? some[key] + plane.beyond[key];
    aim[key] = wish.rung[key] + some[key] - before;
  }
  return aim;
}

function lightsOf(group: readonly Wished[]): PlaneLight[] {
  const [first] = group;
  if (group.length === 1 && first) {
    return fitLights([{ cells: first.plane.cells, change: first.wish.change }], aimOf(first));
  }
  // Together they count by their size.
  const largest = Math.max(...group.map(({ plane }) => plane.count / cellCount(plane.cells)));
  const parts = group.map(({ plane, wish }) => ({
    cells: fewer(plane.cells, plane.count / cellCount(plane.cells) / largest),
    change: wish.change,
  }));
  return fitLights(parts, (first as Wished).wish.rung);
}

function cellCount({ linear }: PlaneCells): number {
  return linear.length / 3;
}

/** @param share above 0 up to 1. */
function fewer(cells: PlaneCells, share: number): PlaneCells {
  const count = Math.max(1, Math.round(cellCount(cells) * share));
  const picked = (values: Float32Array): Float32Array =>
    Float32Array.from({ length: count * 3 }, (_, at) => {
      const cell = Math.floor((Math.floor(at / 3) * cellCount(cells)) / count);
      return values[cell * 3 + (at % 3)] as number;
    });
  return { linear: picked(cells.linear), calm: picked(cells.calm) };
}

/** @param wanted by plane, null = stays as it is. @returns by plane. */
export function previewLights(
  { planes }: PreviewGround,
  wanted: readonly (WantedLight | null)[],
): (PlaneLight | null)[] {
  const lights = planes.map((): PlaneLight | null => null);
  const wished = planes.flatMap((plane, place): Wished[] => {
    const wish = wanted[place];
    return plane && wish ? [{ place, plane, wish }] : [];
  });
  for (const group of groupsOf(wished)) {
    const found = lightsOf(group);
    group.forEach(({ place }, at) => {
      lights[place] = found[at] as PlaneLight;
    });
  }
  return lights;
}
