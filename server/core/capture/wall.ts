/**
 * The wall behind a painting: what has the colour of the photo's rim, evened by a plane, and hangs together with it.
 *
 * In the flow: small photo -> [wall] -> propose-corners. Pure.
 */
import type { LabPlanes } from '../image/light-tables.ts';
import { fitPlane } from '../rectify/fit-plane.ts';

/** Width of the rim that the wall's colour is taken from, as a share of the long side. */
const RIM = 0.05;
/** Every so many rim pixels is looked at. */
const EVERY = 3;
/** Farthest from the wall's colour, dE*ab: this many of its own deviations, within these bounds. */
const DEVIATIONS = 4;
const LEAST = 2.5;
const MOST = 6;
/** Neighbours of 9 that must look like the wall, so that nothing leaks through a gap of one pixel. */
const LIKE_WALL = 7;

interface Level {
  readonly at: number;
  readonly perX: number;
  readonly perY: number;
}

/** Plane through one channel of some pixels, those far off left out in turn; and its deviation. */
function levelOf(values: Float32Array, pixels: number[], columns: number): Level & { deviation: number } {
  let kept = pixels;
  let level: Level & { deviation: number } = { at: 0, perX: 0, perY: 0, deviation: 0 };
  for (let round = 0; round < 4; round++) {
    const samples = kept.map((pixel) => ({
      x: pixel % columns,
      y: Math.floor(pixel / columns),
      value: values[pixel] as number,
      group: 0,
    }));
    const [perX, perY] = fitPlane(samples);
    const heights = samples.map(({ x, y, value }) => value - perX * x - perY * y).sort((p, q) => p - q);
    const at = heights[heights.length >> 1] as number;
    const away = heights.map((height) => Math.abs(height - at)).sort((p, q) => p - q);
    // A normal distribution's deviation from its median absolute one.
    level = { at, perX, perY, deviation: 1.4826 * (away[away.length >> 1] as number) };
    const limit = Math.max(1, 3 * level.deviation);
    const near = kept.filter((_, index) => {
      const { x, y, value } = samples[index] as (typeof samples)[number];
      return Math.abs(value - perX * x - perY * y - at) <= limit;
    });
    if (near.length < pixels.length / 2) break;
    kept = near;
  }
  return level;
}

function rimPixels(columns: number, rows: number): number[] {
  const width = Math.max(2, Math.round(RIM * Math.max(columns, rows)));
  const found: number[] = [];
  for (let pixel = 0; pixel < columns * rows; pixel += EVERY) {
    const [x, y] = [pixel % columns, Math.floor(pixel / columns)];
    if (Math.min(x, y, columns - 1 - x, rows - 1 - y) < width) found.push(pixel);
  }
  return found;
}

/** 1 where a pixel has the colour that the wall would have there. */
function likeWall(lab: LabPlanes, columns: number, rows: number): Uint8Array {
  const rim = rimPixels(columns, rows);
  const channels = [lab.lightness, lab.a, lab.b] as const;
  const levels = channels.map((values) => levelOf(values, rim, columns));
  const deviation = Math.hypot(...levels.map((level) => level.deviation));
  const limit = Math.min(MOST, Math.max(LEAST, DEVIATIONS * deviation));
  const like = new Uint8Array(columns * rows);
  for (let pixel = 0; pixel < like.length; pixel++) {
    const [x, y] = [pixel % columns, Math.floor(pixel / columns)];
    let sum = 0;
    channels.forEach((values, at) => {
      const level = levels[at] as Level;
      sum += ((values[pixel] as number) - level.at - level.perX * x - level.perY * y) ** 2;
    });
    if (sum < limit * limit) like[pixel] = 1;
  }
  return like;
}

/** How many of the 3 × 3 pixels around one look like the wall; beyond the photo counts as wall. */
function alikeAround(like: Uint8Array, pixel: number, columns: number, rows: number): number {
  const [x, y] = [pixel % columns, Math.floor(pixel / columns)];
  let count = 0;
  for (let dy = -1; dy <= 1; dy++) {
    for (let dx = -1; dx <= 1; dx++) {
      const outside = x + dx < 0 || y + dy < 0 || x + dx >= columns || y + dy >= rows;
      if (outside || like[pixel + dy * columns + dx] === 1) count++;
    }
  }
  return count;
}

/** 1 where the wall is: pixels that look like it and hang together with the photo's rim. */
export function wallOf(lab: LabPlanes, columns: number, rows: number): Uint8Array {
  const like = likeWall(lab, columns, rows);
  const wall = new Uint8Array(columns * rows);
  const queue: number[] = [];
  const take = (pixel: number): void => {
    if (wall[pixel] === 1 || like[pixel] !== 1) return;
    wall[pixel] = 1;
    queue.push(pixel);
  };
  for (let x = 0; x < columns; x++) [x, (rows - 1) * columns + x].forEach(take);
  for (let y = 0; y < rows; y++) [y * columns, y * columns + columns - 1].forEach(take);
  for (const pixel of queue) {
    // A pixel at an edge is wall, but nothing is reached through it.
    if (alikeAround(like, pixel, columns, rows) < LIKE_WALL) continue;
    const x = pixel % columns;
    if (x > 0) take(pixel - 1);
    if (x < columns - 1) take(pixel + 1);
    if (pixel >= columns) take(pixel - columns);
    if (pixel + columns < wall.length) take(pixel + columns);
  }
  return wall;
}
