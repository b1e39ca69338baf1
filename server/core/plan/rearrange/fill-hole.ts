/**
 * Closes a hole in a picture from its surroundings.
 *
 * In the flow: what motifs leave behind -> [fill-hole] -> rearrange. Pure and repeatable.
 * Source: Wexler, Shechtman & Irani (2007), "Space-time completion of video", IEEE TPAMI 29(3): every patch that touches the
 * hole is made like one of the surroundings, all patches over a pixel have a say in it, coarse before fine; matches after
 * Barnes et al. (2009). The last fine steps only carry the matches on, which is what keeps a full-size plate quick.
 */
import { randomBelow } from '../../doubt/random.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { evenTone } from './even-tone.ts';
import { type FillLevel, fillLevels, placesOf } from './fill-levels.ts';
import {
  improveMatches,
  type Matches,
  RADIUS,
  type Search,
  startMatches,
  weighMatches,
  wholePatches,
} from './nearest-patches.ts';
import { smoothlyClosed } from './smoothly-closed.ts';

/** The hole's narrower side on the coarsest level, pixels. */
const FEWEST = 6;
/** Surroundings on each side, in sides of the hole, and at least this many pixels. */
const AROUND = 0.75;
const LEAST_AROUND_PX = 40;
/** Largest hole that matches are searched for, pixels; larger ones only carry them on. */
const MOST_SEARCHED = 9000;
const TURNS = 4;
const SEED = 20_260_4;

export interface Filled {
  readonly raster: EncodedRaster;
  /** For each pixel where its colour came from: itself outside the hole. */
  readonly from: Int32Array;
}

interface Window {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
}

/** The hole and what lies around it, or null where there is none. */
function windowOf(hole: Uint8Array, widthPx: number): Window | null {
  const heightPx = hole.length / widthPx;
  let [left, right, top, bottom] = [widthPx, -1, heightPx, -1];
  for (let at = 0; at < hole.length; at++) {
    if (!hole[at]) continue;
    const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  if (right < 0) return null;
  const around = Math.max(LEAST_AROUND_PX, Math.round(AROUND * Math.max(right - left, bottom - top)));
  left = Math.max(0, left - around);
  top = Math.max(0, top - around);
  return {
    left,
    top,
    columns: Math.min(widthPx, right + around + 1) - left,
    rows: Math.min(heightPx, bottom + around + 1) - top,
  };
}

function levelOf(raster: EncodedRaster, hole: Uint8Array, { left, top, columns, rows }: Window): FillLevel {
  const level: FillLevel = {
    columns,
    rows,
    colours: new Float32Array(columns * rows * 3),
    hole: new Uint8Array(columns * rows),
  };
  for (let row = 0; row < rows; row++) {
    const start = (top + row) * raster.widthPx + left;
    level.hole.set(hole.subarray(start, start + columns), row * columns);
    level.colours.set(raster.samples.subarray(start * 3, (start + columns) * 3), row * columns * 3);
  }
  return level;
}

/** Colour of one pixel by the patches over it: three sums and their weight. */
function sayOf(
  level: FillLevel,
  matches: Matches,
  weights: Float32Array,
  pixel: number,
): [number, number, number] {
  const { columns, colours } = level;
  const said: [number, number, number, number] = [0, 0, 0, 0];
  for (const shift of shiftsWithin(level, pixel)) {
    const other = matches.place[pixel + shift.dy * columns + shift.dx] as number;
    if (other < 0) continue;
    const weight = weights[other] as number;
    const source = ((matches.from[other] as number) - shift.dy * columns - shift.dx) * 3;
    said[0] += weight * (colours[source] as number);
    said[1] += weight * (colours[source + 1] as number);
    said[2] += weight * (colours[source + 2] as number);
    said[3] += weight;
  }
  return [said[0] / said[3], said[1] / said[3], said[2] / said[3]];
}

const SHIFTS = Array.from({ length: (2 * RADIUS + 1) ** 2 }, (_, at) => ({
  dx: (at % (2 * RADIUS + 1)) - RADIUS,
  dy: Math.floor(at / (2 * RADIUS + 1)) - RADIUS,
}));

/** Steps from a pixel to those around it that lie in the window. */
function shiftsWithin({ columns, rows }: FillLevel, pixel: number): typeof SHIFTS {
  const [x, y] = [pixel % columns, Math.floor(pixel / columns)];
  if (x >= RADIUS && y >= RADIUS && x < columns - RADIUS && y < rows - RADIUS) return SHIFTS;
  return SHIFTS.filter(({ dx, dy }) => x + dx >= 0 && x + dx < columns && y + dy >= 0 && y + dy < rows);
}

/** Of each match, by how like its patches are. */
function weightsOf({ cost }: Matches): Float32Array {
  const sorted = cost.slice().sort();
  const spread = Math.max(1, sorted[Math.floor(sorted.length * 0.75)] as number);
  return cost.map((each) => Math.max(1e-12, Math.exp(-each / spread)));
}

/** Every pixel of the hole becomes what the patches over it say, the likest with the greatest weight. */
function vote(level: FillLevel, matches: Matches): void {
  const { pixels } = matches;
  const weights = weightsOf(matches);
  const next = new Float32Array(pixels.length * 3);
  pixels.forEach((pixel, at) => {
    next.set(sayOf(level, matches, weights, pixel), at * 3);
  });
  pixels.forEach((pixel, at) => {
    level.colours.set(next.subarray(at * 3, at * 3 + 3), pixel * 3);
  });
}

/** Matches of a level carried to the next finer one: each pixel goes on from the one it was part of. */
function carried(coarse: FillLevel, matches: Matches, fine: FillLevel): Int32Array {
  return placesOf(fine.hole).map((pixel) => {
    const [x, y] = [pixel % fine.columns, Math.floor(pixel / fine.columns)];
    const at = matches.place[(y >> 1) * coarse.columns + (x >> 1)] as number;
    const from = matches.from[at] as number;
    const [u, v] = [(from % coarse.columns) * 2 + (x & 1), Math.floor(from / coarse.columns) * 2 + (y & 1)];
    return v < fine.rows && u < fine.columns ? v * fine.columns + u : -1;
  });
}

/** Searches and votes in turn. */
function settle(search: Search, matches: Matches): void {
  if (matches.pixels.length > MOST_SEARCHED) return;
  for (let turn = 0; turn < TURNS; turn++) {
    weighMatches(search.level, matches);
    improveMatches(search, matches, true);
    improveMatches(search, matches, false);
    vote(search.level, matches);
  }
}

/** @returns the matches on the finest level, its colours filled; null where the surroundings hold no whole patch. */
function fillLevel(finest: FillLevel): Matches | null {
  const random = randomBelow(SEED);
  let coarse: { level: FillLevel; matches: Matches } | null = null;
  for (const level of fillLevels(finest, FEWEST).reverse()) {
    const search = { level, whole: wholePatches(level), random };
    if (!search.whole.includes(1)) continue;
    if (!coarse) smoothlyClosed(level);
    const start: Int32Array | null = coarse && carried(coarse.level, coarse.matches, level);
    const matches = startMatches(search, start);
    if (start) vote(level, matches);
    settle(search, matches);
    coarse = { level, matches };
  }
  return coarse?.matches ?? null;
}

/** @param hole 1 a pixel that is to be filled. Where nothing at all is left around it, the picture stays as it is. */
export function fillHole(raster: EncodedRaster, hole: Uint8Array): Filled {
  const from = new Int32Array(hole.length);
  for (let at = 0; at < from.length; at++) from[at] = at;
  const window = windowOf(hole, raster.widthPx);
  if (!window) return { raster, from };
  const level = levelOf(raster, hole, window);
  const matches = fillLevel(level);
  if (!matches) smoothlyClosed(level);
  else {
    const weights = weightsOf(matches);
    evenTone(level, (pixel) => sayOf(level, matches, weights, pixel));
  }
  const samples = new Uint8Array(raster.samples);
  const inPicture = (at: number): number =>
    (window.top + Math.floor(at / level.columns)) * raster.widthPx + window.left + (at % level.columns);
  for (let at = 0; at < level.hole.length; at++) {
    if (!level.hole[at]) continue;
    const pixel = inPicture(at);
    for (let channel = 0; channel < 3; channel++) {
      samples[pixel * 3 + channel] = Math.round(level.colours[at * 3 + channel] as number);
    }
    if (matches) from[pixel] = inPicture(matches.from[matches.place[at] as number] as number);
  }
  return { raster: { ...raster, samples }, from };
}
