/**
 * A painting's own colours by area, as a painter would scrape them onto a strip.
 *
 * Pixels are gathered into cells of CIELAB, the cells into at most eight colours by k-means (Lloyd 1982, "Least squares
 * quantization in PCM", doi 10.1109/TIT.1982.1056489), begun without chance: each new colour is the cell that the ones
 * before serve worst (after Gonzalez 1985, "Clustering to minimize the maximum intercluster distance", weighted by area).
 * Colours that the eye takes for one are then joined. In the flow: squared painting + planes -> [palette] -> strip. Pure.
 */

import { difference2000 } from '../colour/difference.ts';
import { hexFromLinear } from '../colour/hex.ts';
import { rgbFromLab } from '../colour/lab.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { LabColour } from '../contract/setup.ts';
import { labPlanesFromLinear } from '../image/light-tables.ts';
import type { EncodedRaster } from '../image/raster.ts';
import { NO_PLANE } from '../planes/label-map.ts';

/** As many colours as a strip shows. */
export const MOST_COLOURS = 8;
/** Colours nearer than this are one on a strip, CIEDE2000: common practice of mixing by eye, no source. */
const ONE_COLOUR = 5;
/** Side of a cell in L*, a* and b*. */
const CELL = 4;
const CELLS_AB = 64;
const MOST_ROUNDS = 40;

export interface PaletteColour {
  /** Mean of its pixels. */
  lab: LabColour;
  /** `#rrggbb`. */
  hex: string;
  /** Part of the painting, 0..1; those of a palette add up to 1. */
  share: number;
  /** Mean place of its pixels among the planes, 0 = the farthest, 1 = the nearest; null where no plane holds any. */
  depth: number | null;
}

/** Where the planes are. */
export interface Planes {
  /** One byte a pixel: index far to near, or `NO_PLANE`. */
  labels: Uint8Array;
  count: number;
}

interface Cell extends LabColour {
  /** Pixels. */
  weight: number;
  /** Sum of the places of those that lie in a plane, and how many do. */
  depths: number;
  inPlanes: number;
}

/** The colours of a painting, the largest first. @param planes Null where there are none. */
export function paletteOf(painting: EncodedRaster, planes: Planes | null): PaletteColour[] {
  const cells = cellsOf(painting, planes);
  const total = cells.reduce((sum, { weight }) => sum + weight, 0);
  return joined(clusters(cells)).map(({ weight, depths, inPlanes, L, a, b }) => ({
    lab: { L, a, b },
    hex: hexFromLinear(...rgbFromLab({ L, a, b })),
    share: weight / total,
    depth: inPlanes === 0 ? null : depths / inPlanes,
  }));
}

/** Lightest first. */
export function byValue(colours: readonly PaletteColour[]): PaletteColour[] {
  return [...colours].sort((one, other) => other.lab.L - one.lab.L);
}

/** Farthest first, colours of no plane at the end, those of one depth by value. */
export function byDepth(colours: readonly PaletteColour[]): PaletteColour[] {
  return byValue(colours).sort((one, other) => (one.depth ?? 2) - (other.depth ?? 2));
}

/** Pixels by cells of CIELAB; each cell has the mean of what is in it. */
function cellsOf({ samples, widthPx, heightPx }: EncodedRaster, planes: Planes | null): Cell[] {
  const linear = Float32Array.from(samples, (code) => LINEAR_OF_CODE[code] as number);
  const { lightness, a, b } = labPlanesFromLinear(linear);
  const cells = new Map<number, Cell>();
  for (let pixel = 0; pixel < widthPx * heightPx; pixel++) {
    const [l, p, q] = [lightness[pixel] as number, a[pixel] as number, b[pixel] as number];
    const key =
      (Math.floor(l / CELL) * CELLS_AB + Math.floor(p / CELL + 32)) * CELLS_AB + Math.floor(q / CELL + 32);
    let cell = cells.get(key);
    if (!cell) {
      cell = { L: 0, a: 0, b: 0, weight: 0, depths: 0, inPlanes: 0 };
      cells.set(key, cell);
    }
    cell.L += l;
    cell.a += p;
    cell.b += q;
    cell.weight++;
    const label = planes ? (planes.labels[pixel] as number) : NO_PLANE;
    if (planes && label !== NO_PLANE) {
      cell.depths += planes.count > 1 ? label / (planes.count - 1) : 0;
      cell.inPlanes++;
    }
  }
  return [...cells.values()].map((cell) => meanOf(cell));
}

/** From sums of L*, a* and b* to means. */
function meanOf(sums: Cell): Cell {
  return { ...sums, L: sums.L / sums.weight, a: sums.a / sums.weight, b: sums.b / sums.weight };
}

function squaredDistance(one: LabColour, other: LabColour): number {
  return (one.L - other.L) ** 2 + (one.a - other.a) ** 2 + (one.b - other.b) ** 2;
}

/** The heaviest cell, then always that whose area times squared distance to what is chosen is largest. */
function beginnings(cells: readonly Cell[]): Cell[] {
  const worst = new Float64Array(cells.length).fill(Number.POSITIVE_INFINITY);
  const chosen: Cell[] = [];
  let next = cells.reduce<Cell | undefined>(
    (most, cell) => (most && most.weight >= cell.weight ? most : cell),
    undefined,
  );
  while (next && chosen.length < MOST_COLOURS) {
    const latest: Cell = next;
    chosen.push(latest);
    next = undefined;
    let largest = 0;
    cells.forEach((cell, at) => {
      worst[at] = Math.min(worst[at] as number, squaredDistance(cell, latest));
      const served = (worst[at] as number) * cell.weight;
      if (served > largest) [largest, next] = [served, cell];
    });
  }
  return chosen;
}

/** Index of the nearest of the centres. */
function nearest(centres: readonly LabColour[], cell: LabColour): number {
  let [best, bestDistance] = [0, Number.POSITIVE_INFINITY];
  centres.forEach((centre, at) => {
    const distance = squaredDistance(centre, cell);
    if (distance < bestDistance) [best, bestDistance] = [at, distance];
  });
  return best;
}

/** Cells gathered round their centres until none changes its centre any more. */
function clusters(cells: readonly Cell[]): Cell[] {
  let centres = beginnings(cells);
  const belongs = new Int16Array(cells.length).fill(-1);
  for (let round = 0, moved = true; moved && round < MOST_ROUNDS; round++) {
    moved = false;
    const members = centres.map((): Cell[] => []);
    cells.forEach((cell, at) => {
      const to = nearest(centres, cell);
      if (belongs[at] !== to) [belongs[at], moved] = [to, true];
      members[to]?.push(cell);
    });
    centres = members.flatMap((each) => (each.length > 0 ? [together(each)] : []));
  }
  return centres;
}

/** Several cells as one, with the mean of all their pixels. */
function together(cells: readonly Cell[]): Cell {
  const sum: Cell = { L: 0, a: 0, b: 0, weight: 0, depths: 0, inPlanes: 0 };
  for (const { L, a, b, weight, depths, inPlanes } of cells) {
    sum.L += L * weight;
    sum.a += a * weight;
    sum.b += b * weight;
    sum.weight += weight;
    sum.depths += depths;
    sum.inPlanes += inPlanes;
  }
  return meanOf(sum);
}

/** The two most alike are joined as long as the eye takes them for one; the largest come first. */
function joined(colours: readonly Cell[]): Cell[] {
  const kept = [...colours];
  for (let pair = alike(kept); pair; pair = alike(kept)) {
    const [one, other] = pair;
    kept.splice(kept.indexOf(other), 1);
    kept.splice(kept.indexOf(one), 1, together([one, other]));
  }
  return kept.sort((one, other) => other.weight - one.weight);
}

function alike(colours: readonly Cell[]): [Cell, Cell] | null {
  let found: [Cell, Cell] | null = null;
  let least = ONE_COLOUR;
  colours.forEach((one, at) => {
    for (const other of colours.slice(at + 1)) {
      const apart = difference2000(one, other);
      if (apart < least) [least, found] = [apart, [one, other]];
    }
  });
  return found;
}
