/**
 * New stretches of an outline: from the sides of cells to a calm line of few points.
 *
 * In the flow: keep-stretches -> [tidy-line]. Along the picture's border the line stays exactly on it. Pure.
 * Simplifying: Douglas & Peucker 1973, "Algorithms for the reduction of the number of points".
 */
import { type Contour, leftOf, STEP_X, STEP_Y } from './contour.ts';
import type { Grid } from './grid.ts';

/** Columns and rows of the grid's lines, fractions of a cell allowed. */
export type GridPoint = readonly [x: number, y: number];

interface Sides {
  readonly first: number;
  readonly count: number;
}

/** Points of a run: middles of its sides, and corners where it meets or runs along the picture's border. */
function rawLine(
  contour: Contour,
  grid: Grid,
  { first, count }: Sides,
): { point: GridPoint; fixed: boolean }[] {
  const line: { point: GridPoint; fixed: boolean }[] = [];
  for (let step = 0; step < count; step++) {
    const side = (first + step) % contour.length;
    const [x, y, heading] = [
      contour.x[side] as number,
      contour.y[side] as number,
      contour.heading[side] as number,
    ];
    const [toX, toY] = [x + (STEP_X[heading] ?? 0), y + (STEP_Y[heading] ?? 0)];
    if (leftOf(grid, x, y, heading) < 0) {
      line.push({ point: [x, y], fixed: true }, { point: [toX, toY], fixed: true });
    } else {
      const [fromBorder, toBorder] = [onBorder(grid, x, y), onBorder(grid, toX, toY)];
      if (fromBorder) line.push({ point: [x, y], fixed: true });
      line.push({ point: [(x + toX) / 2, (y + toY) / 2], fixed: false });
      if (toBorder) line.push({ point: [toX, toY], fixed: true });
    }
  }
  return line;
}

const onBorder = ({ columns, rows }: Grid, x: number, y: number) =>
  x === 0 || y === 0 || x === columns || y === rows;

/** Each point to the mean of its neighbours, reach shortened at both ends. */
function averaged(line: readonly GridPoint[], reach: number): GridPoint[] {
  return line.map((_, at) => {
    const near = Math.min(reach, at, line.length - 1 - at);
    let [x, y] = [0, 0];
    for (let other = at - near; other <= at + near; other++) {
      const point = line[other] as GridPoint;
      [x, y] = [x + point[0], y + point[1]];
    }
    return [x / (2 * near + 1), y / (2 * near + 1)];
  });
}

function distanceFrom([px, py]: GridPoint, [ax, ay]: GridPoint, [bx, by]: GridPoint): number {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / length));
  return Math.hypot(px - ax - along * dx, py - ay - along * dy);
}

/** The points that keep an open line within `tolerance` of every point left out. */
function simplified(line: readonly GridPoint[], tolerance: number): GridPoint[] {
  if (line.length < 3) return [...line];
  const kept = new Uint8Array(line.length);
  kept[0] = 1;
  kept[line.length - 1] = 1;
  const spans: [number, number][] = [[0, line.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [first, last] = span;
    const [a, b] = [line[first] as GridPoint, line[last] as GridPoint];
    let [farthest, most] = [-1, tolerance];
    for (let at = first + 1; at < last; at++) {
      const off = distanceFrom(line[at] as GridPoint, a, b);
      if (off > most) [farthest, most] = [at, off];
    }
    if (farthest < 0) continue;
    kept[farthest] = 1;
    spans.push([first, farthest], [farthest, last]);
  }
  return line.filter((_, at) => kept[at] === 1);
}

/**
 * The line of a run of sides.
 *
 * @param before, after the old stretches' ends that it joins; left out where it joins none.
 */
export function tidyLine(
  contour: Contour,
  grid: Grid,
  run: Sides,
  { reach, tolerance }: { reach: number; tolerance: number },
  before?: GridPoint,
  after?: GridPoint,
): GridPoint[] {
  const raw = rawLine(contour, grid, run);
  const open = run.count < contour.length;
  const line = [
    ...(before && open ? [{ point: before, fixed: true }] : []),
    ...raw,
    ...(after && open ? [{ point: after, fixed: true }] : []),
  ];
  // Round and round without a beginning: the first point serves as both ends.
  const [first] = raw;
  if (!open && first) line.push(first);
  const result: GridPoint[] = [];
  let loose: GridPoint[] = [];
  line.forEach(({ point, fixed }, at) => {
    loose.push(point);
    if (at > 0 && !fixed && at < line.length - 1) return;
    result.push(...simplified(averaged(loose, reach), tolerance));
    loose = [point];
  });
  return simplified(result, 1e-9);
}
